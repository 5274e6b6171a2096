import { describe, expect, it } from "vitest";
import { fitLogistic, type Outcomes } from "../../../src/measures/statistics/logistic.ts";
import { standardRates } from "../../../src/measures/statistics/standard-rates.ts";
import { MANY, REFERENCE } from "./logistic-reference.ts";

function ratesOf(outcomes: Outcomes) {
  const fit = fitLogistic(outcomes);
  if (typeof fit === "string") throw new Error(fit);
  return standardRates(outcomes, fit);
}

describe("against R's predictions", () => {
  it("has the rates, strata that say nothing counted in", () => {
    ratesOf(MANY).forEach(({ rate }, level) => {
      expect(rate).toBeCloseTo(REFERENCE.many.rates[level] ?? Number.NaN, 8);
    });
  });

  it("has the slopes that R finds by moving each effect and fitting the strata anew", () => {
    // Central differences of step 0.0001: their own error is near 1e-8.
    const slopes = ratesOf(MANY).flatMap(({ slopes: own }, level) =>
      [...own].map((slope, index) => [slope, REFERENCE.many.slopes[level * 4 + index] ?? Number.NaN] as const),
    );
    expect(slopes).toHaveLength(12);
    for (const [slope, expected] of slopes) expect(slope).toBeCloseTo(expected, 6);
  });
});

it("gives back the shares where nothing else differs", () => {
  const [first, second] = ratesOf({
    successes: Float64Array.of(10, 20),
    trials: Float64Array.of(40, 50),
    level: Int32Array.of(0, 1),
    levels: 2,
    covariates: [],
    stratum: Int32Array.of(0, 0),
  });
  expect(first?.rate).toBeCloseTo(10 / 40, 9);
  expect(second?.rate).toBeCloseTo(20 / 50, 9);
});
