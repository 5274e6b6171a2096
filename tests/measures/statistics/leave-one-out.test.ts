import { describe, expect, it } from "vitest";
import { leaveOneOut, varianceAlong } from "../../../src/measures/statistics/leave-one-out.ts";
import { fitLogistic, type Outcomes } from "../../../src/measures/statistics/logistic.ts";
import { MANY, ONE, REFERENCE, unit } from "./logistic-reference.ts";

const CLUSTER = Int32Array.from(REFERENCE.stratum);

function covariance(outcomes: Outcomes): { size: number; clusters: number; cells: number[] } {
  const fit = fitLogistic(outcomes);
  if (typeof fit === "string") throw new Error(fit);
  const left = leaveOneOut(outcomes, fit, CLUSTER);
  if (left === undefined) throw new Error("no clusters");
  const { size, clusters } = left;
  const along = (a: number, b: number) => unit(size, a).map((part, index) => part + (unit(size, b)[index] as number));
  const variance = (a: number) => varianceAlong(left, unit(size, a));
  const cells = Array.from({ length: size * size }, (_, cell) => {
    const [a, b] = [Math.floor(cell / size), cell % size];
    return a === b ? variance(a) : (varianceAlong(left, along(a, b)) - variance(a) - variance(b)) / 2;
  });
  return { size, clusters, cells };
}

describe("against the definition, computed with all effects of the strata in R", () => {
  it("has the covariance by clusters with one constant", () => {
    const { cells, clusters } = covariance(ONE);
    expect(clusters).toBe(12);
    // R's glm keeps the weights of the step before its last, which costs a digit or two of its twelve.
    cells.forEach((cell, index) => {
      expect(cell).toBeCloseTo(REFERENCE.one.jackknife[index] ?? Number.NaN, 7);
    });
  });

  it("has it where each cluster has strata of its own, of which two say nothing", () => {
    const { cells, clusters } = covariance(MANY);
    expect(clusters).toBe(10);
    cells.forEach((cell, index) => {
      expect(cell).toBeCloseTo(REFERENCE.many.jackknife[index] ?? Number.NaN, 7);
    });
  });
});

it("comes near HC3 by clusters of R's sandwich", () => {
  // sandwich corrects each cluster's residuals without their weights, and does not give the jackknife to the digit.
  const { size, cells } = covariance(ONE);
  for (let line = 0; line < size; line += 1) {
    const ratio = (cells[line * size + line] as number) / (REFERENCE.one.hc3[line * size + line] as number);
    expect(Math.abs(Math.log(ratio))).toBeLessThan(0.15);
  }
});

describe("where clusters tell nothing", () => {
  const two = {
    successes: Float64Array.of(1, 3, 2, 4),
    trials: Float64Array.of(5, 5, 5, 5),
    level: Int32Array.of(0, 1, 0, 1),
    levels: 2,
    covariates: [],
    stratum: Int32Array.of(0, 0, 1, 1),
  };

  it("is silent of one cluster", () => {
    const fit = fitLogistic(two);
    if (typeof fit === "string") throw new Error(fit);
    expect(leaveOneOut(two, fit, Int32Array.of(0, 0, 0, 0))).toBeUndefined();
    expect(leaveOneOut(two, fit, Int32Array.of(0, 0, 1, 1))?.clusters).toBe(2);
  });

  it("is silent where one cluster alone has a level", () => {
    const lone = { ...two, level: Int32Array.of(0, 1, 0, 0) };
    const fit = fitLogistic(lone);
    if (typeof fit === "string") throw new Error(fit);
    expect(leaveOneOut(lone, fit, Int32Array.of(0, 0, 1, 1))).toBeUndefined();
  });
});
