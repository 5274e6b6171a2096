import { describe, expect, it } from "vitest";
import { transform } from "../../../src/geodesy/transform.ts";
import type { GridId } from "../../../src/grids/grid.ts";
import { gridNamed } from "../../../src/grids/index.ts";
import { type AtlasMap, buildAtlasMap } from "../../../src/site/maps/atlas-map.ts";
import { boxAround, FRAME_WIDTH, frameAround } from "../../../src/site/maps/frame.ts";
import { roundBelow } from "../../../src/site/maps/furniture.ts";
import { cellCorners, cellOf, type PlacedHectad } from "../../../src/site/maps/placement.ts";
import { britainAndIreland, hectadOf, landOverview, landRows } from "../../support/map-fixture.ts";
import { readPath } from "../../support/path-reader.ts";

const grids = (["british", "irish", "channel-islands"] as const).map((id) => gridNamed(id));

function corners(map: AtlasMap): [number, number][] {
  return map.hectads.flatMap((hectad) => {
    const at = map.locate(hectad.square, 10_000);
    return at ? cellCorners(at.placement, at.cell) : [];
  });
}

/** Hectads of a block of a metric grid, `columns` by `rows`, with its south-west corner at metres east and north. */
function block(grid: GridId, crs: string, east: number, north: number, columns: number, rows: number): PlacedHectad[] {
  return Array.from({ length: columns * rows }, (_, i) => {
    const [easting, northing] = [east + (i % columns) * 10_000, north + Math.floor(i / columns) * 10_000];
    const square = gridNamed(grid).format({ grid, crs, easting, northing, size: 10_000 });
    return { square, grid, territory: "all", crs, easting, northing, on_land: true };
  });
}

describe("a map of Britain, Ireland and the Channel Islands", () => {
  const { atlas, hectads } = britainAndIreland();
  const map = buildAtlasMap({ atlas, hectads, transform, grids, land: landOverview() });

  it("has a unit of 2.5 km, so that a square is 4 units", () => {
    expect(map.frame.metresPerUnit).toBe(2500);
    expect(map.frame.width).toBe(346);
  });

  it("shows every square whole, but for what turned corners may stand out by 2 units", () => {
    const { left, top, right, bottom } = boxAround(corners(map));
    expect([left > -2, top > 0, right < FRAME_WIDTH + 2, bottom < map.frame.height]).toEqual([true, true, true, true]);
  });

  it("moves the inset without changing its scale, clear of all other squares", () => {
    const [inset] = map.insets;
    if (!inset) throw new Error("no inset");
    const inside = map.hectads
      .filter(({ territory }) => territory !== "channel-islands")
      .flatMap(({ square }) => {
        const at = map.locate(square, 10_000);
        return at ? cellCorners(at.placement, at.cell) : [];
      });
    expect(
      inside.some(([x, y]) => x > inset.box.left && x < inset.box.right && y > inset.box.top && y < inset.box.bottom),
    ).toBe(false);
    const matrix = map.placements.find((placement) => placement.inset)?.matrix;
    expect(Math.hypot(matrix?.[0] ?? 0, matrix?.[1] ?? 0)).toBeCloseTo(1, 3);
    const at = boxAround(
      hectads
        .filter(({ territory }) => territory === "channel-islands")
        .flatMap(({ square }) => {
          const cell = map.locate(square, 10_000);
          return cell ? cellCorners(cell.placement, cell.cell) : [];
        }),
    );
    expect(
      at.left > inset.box.left && at.right < inset.box.right && at.top > inset.box.top && at.bottom < inset.box.bottom,
    ).toBe(true);
  });

  it("keeps the coast short: under 8 kB of path, and no outline of fewer than three points", () => {
    expect(map.land.length).toBeLessThan(8_000);
    expect(map.land.length).toBeGreaterThan(5_000);
    expect(readPath(map.land).every(({ points, closed }) => closed && points.length >= 3)).toBe(true);
    expect(map.coarseLand.length).toBeLessThan(3_500);
  });

  it("paints the coast's whole area as land, since the atlas covers it", () => {
    expect(map.landCells).toBe(false);
  });

  it("puts a tetrad in its hectad, on the right grid", () => {
    const tetrad = map.locate("NZ27Y", 2_000);
    const hectad = map.locate("NZ27", 10_000);
    expect(tetrad?.placement).toBe(hectad?.placement);
    /* Y is the fifth column from the west and the fourth row from the south of its hectad (DINTY letters). */
    expect([tetrad?.cell.column, tetrad?.cell.row]).toEqual([
      (hectad?.cell.column ?? 0) * 5 + 4,
      (hectad?.cell.row ?? 0) * 5 + 1,
    ]);
    expect(map.locate("O13A", 2_000)?.placement.grid).toBe("irish");
    expect(map.locate("nowhere", 2_000)).toBeUndefined();
  });
});

describe("maps of other grounds", () => {
  const base = { periods: [], compared: null };
  it("fills the frame with a small country of the European grid", () => {
    const hectads = block("laea", "EPSG:3035", 3_790_000, 2_940_000, 28, 23);
    const map = buildAtlasMap({
      atlas: { ...base, map: { crs: "EPSG:3035", insets: [] } },
      hectads,
      transform,
      grids: [],
    });
    expect(map.frame.metresPerUnit).toBeLessThan(1_000);
    const { left, right } = boxAround(corners(map));
    expect(right - left).toBeGreaterThan(0.85 * FRAME_WIDTH);
    expect(map.landCells).toBe(true);
    expect(map.land).toBe("");
    const corner = corners(map)[0] ?? [0, 0];
    for (const value of corner) expect(value * 4 - Math.round(value * 4)).toBeCloseTo(0, 6);
  });

  it("shows Northern Ireland alone, on the Irish grid upright, and not the rest of the island as land", () => {
    const north = landRows()
      .filter(({ grid, hectad }) => grid === "irish" && /^[HJ]/.test(hectad))
      .map(({ grid, hectad }) => hectadOf(grid, "north", hectad));
    const map = buildAtlasMap({
      atlas: { ...base, map: { crs: "EPSG:29903", insets: [] } },
      hectads: north,
      transform,
      grids: [gridNamed("irish")],
      land: landOverview(),
    });
    for (const turn of map.placements[0]?.matrix.slice(1, 3) ?? [1]) expect(turn).toBeCloseTo(0, 9);
    expect(map.landCells).toBe(true);
    expect(map.frame.metresPerUnit).toBeLessThanOrEqual(1_000);
  });

  it("makes the same frame of one square", () => {
    const [hectad] = block("british", "EPSG:27700", 420_000, 570_000, 1, 1);
    const map = buildAtlasMap({
      atlas: { ...base, map: { crs: "EPSG:27700", insets: [] } },
      hectads: hectad ? [hectad] : [],
      transform,
      grids: [],
    });
    expect(map.frame.height).toBeGreaterThan(48);
    expect(map.placements[0] && cellOf(map.placements[0], 420_000, 570_000, 10_000)).toEqual({ column: 0, row: 0 });
  });

  it("shrinks a continent to fit", () => {
    const frame = frameAround("EPSG:3035", { left: 2_600_000, right: 7_400_000, bottom: 1_500_000, top: 5_500_000 });
    expect(4_800_000 / frame.metresPerUnit).toBeLessThanOrEqual(346);
  });
});

it("rounds the bar down to 1, 2 or 5 times a power of ten", () => {
  expect([230, 99, 50, 7, 0.3].map(roundBelow)).toEqual([200, 50, 50, 5, 0.2]);
});
