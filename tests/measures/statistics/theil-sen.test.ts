import { describe, expect, it } from "vitest";
import { kendall, theilSen } from "../../../src/measures/statistics/theil-sen.ts";
import { readReferenceFile } from "../../support/reference.ts";

interface Reference {
  trend: {
    year: number[];
    doy: number[];
    theil_sen_slope: number;
    theil_sen_ci95_scipy: [number, number];
    kendall_tau_b: number;
    kendall_p_normal: number;
    mann_kendall_S: number;
  };
}
interface Ties {
  slopes_with_ties: { x: number[]; y: number[]; slope: number; low: number; high: number; tau: number; chance: number };
}
const { trend } = readReferenceFile<Reference>("phenology.json");
const { slopes_with_ties: ties } = readReferenceFile<Ties>("season-regression.json");

// Slopes are medians of quotients of whole numbers: R and scipy agree with each other to the last digits printed.
describe("theilSen", () => {
  it("gives the slope of R and scipy, and scipy's interval", () => {
    const found = theilSen(trend.year, trend.doy);
    expect(found?.slope).toBeCloseTo(trend.theil_sen_slope, 12);
    expect(found?.low).toBeCloseTo(trend.theil_sen_ci95_scipy[0], 12);
    expect(found?.high).toBeCloseTo(trend.theil_sen_ci95_scipy[1], 12);
  });

  it("leaves out pairs of one year", () => {
    const found = theilSen(ties.x, ties.y);
    expect(found?.slope).toBeCloseTo(ties.slope, 12);
    expect(found?.low).toBeCloseTo(ties.low, 12);
    expect(found?.high).toBeCloseTo(ties.high, 12);
  });

  it("gives no interval of points too few to refuse any slope, and no slope of one year", () => {
    expect(theilSen([1, 2, 3], [1, 2, 4])).toEqual({ slope: 1.5, low: null, high: null });
    expect(theilSen([1, 1], [1, 2])).toBeNull();
  });
});

describe("kendall", () => {
  it("gives the agreement of R and scipy", () => {
    const found = kendall(trend.year, trend.doy);
    expect(found.pairs).toBe(trend.mann_kendall_S);
    expect(found.tau).toBeCloseTo(trend.kendall_tau_b, 12);
    expect(found.chance).toBeCloseTo(trend.kendall_p_normal, 8);
  });

  it("allows for ties in both lists", () => {
    const found = kendall(ties.x, ties.y);
    expect(found.tau).toBeCloseTo(ties.tau, 12);
    expect(found.chance).toBeCloseTo(ties.chance, 8);
  });
});
