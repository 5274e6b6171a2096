import { describe, expect, it } from "vitest";
import { densityWidth, drawEffects } from "../../../src/measures/statistics/quantile-draws.ts";
import {
  below,
  fitQuantile,
  placeIn,
  type QuantileCells,
} from "../../../src/measures/statistics/quantile-regression.ts";
import { seededRandom } from "../../../src/measures/statistics/seeded-random.ts";

const YEARS = 24;

/** Sixty days a year, a cell each, that come two days earlier a decade; years differ by three days. */
function inventedCells(): QuantileCells {
  const random = seededRandom("cells");
  const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  const rows = Array.from({ length: YEARS }, (_, year) => {
    const early = 3 * normal();
    return Array.from({ length: 60 }, () => ({
      year,
      x: (year - 12) / 10,
      y: Math.round(150 - (2 * (year - 12)) / 10 + early + 15 * normal()),
    }));
  }).flat();
  return {
    covariates: Float64Array.from(rows.flatMap(({ x }) => [1, x])),
    size: 2,
    first: Int32Array.from(rows, ({ y }) => y),
    start: Int32Array.from({ length: rows.length + 1 }, (_, i) => i),
    totals: new Float64Array(rows.length).fill(1),
    cluster: Int32Array.from(rows, ({ year }) => year),
    clusters: YEARS,
  };
}

const spread = (values: readonly number[]) => {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length);
};

describe("drawEffects", () => {
  const cells = inventedCells();

  it("scatters as draws do that are fitted anew", () => {
    for (const share of [0.1, 0.5, 0.9]) {
      const at = fitQuantile(cells, share);
      const random = seededRandom("draws");
      const near = drawEffects(cells, share, at, { rows: 1440, draws: 400, random }).map(([, slope = 0]) => slope);
      const again = seededRandom("draws");
      const anew = near.map(() => {
        const weights = new Float64Array(YEARS);
        for (let i = 0; i < YEARS; i += 1) {
          const year = Math.floor(YEARS * again());
          weights[year] = (weights[year] as number) + 1;
        }
        return fitQuantile(cells, share, weights)[1] as number;
      });
      // Both take the same years: what differs is what one step leaves out.
      expect(spread(near) / spread(anew)).toBeGreaterThan(0.85);
      expect(spread(near) / spread(anew)).toBeLessThan(1.2);
    }
  });

  it("draws nothing else where all clusters are alike", () => {
    const alike = { ...cells, cluster: new Int32Array(cells.cluster.length), clusters: 1 };
    const at = fitQuantile(alike, 0.5);
    const [drawn] = drawEffects(alike, 0.5, at, { rows: 1440, draws: 1, random: seededRandom("one") });
    expect(drawn?.[1]).toBeCloseTo(at[1] as number, 3);
  });
});

describe("densityWidth", () => {
  it("is that of quantreg's bandwidth.rq", () => {
    // R 4.2.2, quantreg 5.94: bandwidth.rq(0.5, 1000, hs = TRUE) and bandwidth.rq(0.1, 250, hs = TRUE).
    expect(densityWidth(1000, 0.5)).toBeCloseTo(0.0971559026205, 9);
    expect(densityWidth(250, 0.1)).toBeCloseTo(0.0549232232453, 9);
  });
});

describe("a cell", () => {
  it("spreads each number over the unit around it", () => {
    expect(below(Float64Array.of(1, 3), 0, 2, 1.5)).toBe(2);
    expect(below(Float64Array.of(1, 3), 0, 2, -1)).toBe(0);
    expect(below(Float64Array.of(1, 3), 0, 2, 9)).toBe(3);
    expect(placeIn(inventedCells(), 0, Float64Array.of((inventedCells().first[0] as number) + 2, 0))).toBe(2.5);
  });
});
