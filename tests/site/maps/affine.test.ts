import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { transform } from "../../../src/geodesy/transform.ts";
import { type Affine, applyAffine, fitAffine } from "../../../src/site/maps/affine.ts";
import { buildAtlasMap } from "../../../src/site/maps/atlas-map.ts";
import { toUnits } from "../../../src/site/maps/frame.ts";
import { britainAndIreland, landOverview } from "../../support/map-fixture.ts";

describe("examples", () => {
  it("applies a matrix", () => {
    expect(applyAffine([2, 0, 0, 2, 10, 0], 3, 4)).toEqual([16, 8]);
  });
  it("fits three pairs exactly", () => {
    const { matrix } = fitAffine([
      { from: [0, 0], to: [5, 5] },
      { from: [1, 0], to: [7, 5] },
      { from: [0, 1], to: [5, 7] },
    ]);
    matrix.forEach((value, i) => expect(value).toBeCloseTo([2, 0, 0, 2, 5, 5][i] ?? 0, 12));
  });
  it("says that points on one line fit nothing", () => {
    expect(fitAffine([0, 1, 2].map((x) => ({ from: [x, x] as const, to: [x, 0] as const }))).error).toBe(
      Number.POSITIVE_INFINITY,
    );
  });
});

it("finds the matrix that moved the points", () => {
  const number = fc.double({ min: -3, max: 3, noNaN: true });
  fc.assert(
    fc.property(fc.tuple(number, number, number, number, number, number), (numbers) => {
      const matrix: Affine = numbers;
      const pairs = [
        [0, 0],
        [400, 0],
        [0, 400],
        [400, 400],
      ].map(([x = 0, y = 0]) => ({ from: [x, y] as const, to: applyAffine(matrix, x, y) }));
      const fit = fitAffine(pairs);
      expect(fit.error).toBeLessThan(1e-9);
      fit.matrix.forEach((value, i) => expect(value).toBeCloseTo(matrix[i] ?? 0, 9));
    }),
  );
});

describe("the grids of Britain, Ireland and the Channel Islands on one map", () => {
  const { atlas, hectads } = britainAndIreland();
  const map = buildAtlasMap({ atlas, hectads, transform, grids: [], land: landOverview() });
  const of = (grid: string) => map.placements.find((placement) => placement.grid === grid);

  it("keeps British squares upright and whole units apart", () => {
    const [a, b, c, d, e, f] = of("british")?.matrix ?? [];
    expect([a, b, c, d].map((value) => Number(value?.toFixed(9)))).toEqual([1, 0, 0, 1]);
    expect([e, f].map((value) => Number((value ?? 0).toFixed(6)) % 1)).toEqual([0, 0]);
  });

  it("misses no corner of an Irish square by more than .3 unit (750 m), of a Channel Islands square by .01 unit", () => {
    expect(of("irish")?.error).toBeLessThan(0.3);
    expect(of("channel-islands")?.error).toBeLessThan(0.01);
  });

  /* PROJ 9.1.1, cs2cs with the seven-parameter shifts EPSG:1954 and EPSG:1314 written out: Irish Grid to British National Grid, metres. */
  const irish: [number, number, number, number][] = [
    [310_000, 230_000, 110_295.2, 387_960.1],
    [10_000, 90_000, -200_957.4, 273_223.7],
    [270_000, 450_000, 89_125.9, 610_697.6],
    [150_000, 30_000, -65_988.0, 201_679.3],
  ];
  it.each(irish)(
    "puts the Irish corner %i %i where PROJ does, within .3 unit",
    (easting, northing, britishEasting, britishNorthing) => {
      const placement = of("irish");
      if (!placement) throw new Error("no Irish placement");
      const [x, y] = applyAffine(
        placement.matrix,
        ((easting - placement.west) / 10_000) * 4,
        ((placement.north - northing) / 10_000) * 4,
      );
      const [wantedX, wantedY] = toUnits(map.frame, britishEasting, britishNorthing);
      expect(Math.hypot(x - wantedX, y - wantedY)).toBeLessThan(0.3);
    },
  );
});
