import { describe, expect, it } from "vitest";
import { medianShares } from "../../../src/measures/statistics/median-interval.ts";
import { readReferenceFile } from "../../support/reference.ts";

interface Reference {
  median_shares: { sizes: number[]; low: number; high: number };
  binomial_shares_of_100: [number, number];
}
const reference = readReferenceFile<Reference>("season-regression.json");

describe("medianShares", () => {
  it("are those of a share of one half in R's survey, of clusters that lie on one side each", () => {
    const { sizes, low, high } = reference.median_shares;
    const total = sizes.reduce((sum, size) => sum + size, 0);
    const squares = sizes.reduce((sum, size) => sum + size * size, 0);
    const found = medianShares({ total, squares, clusters: sizes.length });
    // R and jStat invert the beta distribution to about 1e-8.
    expect(found[0]).toBeCloseTo(low, 7);
    expect(found[1]).toBeCloseTo(high, 7);
  });

  it("are nearly the binomial ones where every row stands for itself", () => {
    // A survey divides by one fewer: 99 rows in place of 100.
    const found = medianShares({ total: 100, squares: 100, clusters: 100 });
    expect(Math.abs(found[0] - reference.binomial_shares_of_100[0])).toBeLessThan(0.001);
    expect(Math.abs(found[1] - reference.binomial_shares_of_100[1])).toBeLessThan(0.001);
  });

  it("are everything of a single cluster", () => {
    expect(medianShares({ total: 40, squares: 1600, clusters: 1 })).toEqual([0, 1]);
  });
});
