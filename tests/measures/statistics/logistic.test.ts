import fc from "fast-check";
import { Matrix } from "ml-matrix";
import { describe, expect, it } from "vitest";
import { decomposed, fitLogistic, type LogisticFit, type Outcomes } from "../../../src/measures/statistics/logistic.ts";
import { sumRows } from "../../../src/measures/statistics/logistic-sums.ts";
import { MANY, ONE, REFERENCE } from "./logistic-reference.ts";

function fitted(outcomes: Outcomes): LogisticFit {
  const fit = fitLogistic(outcomes);
  if (typeof fit === "string") throw new Error(fit);
  return fit;
}

function covariance(outcomes: Outcomes, fit: LogisticFit): number[] {
  const solver = decomposed(sumRows(outcomes, fit, 0, outcomes.trials.length));
  return solver?.solve(Matrix.eye(fit.effects.length)).to1DArray() ?? [];
}

/** R prints twelve digits; its fit and ours stop where the likelihood no longer grows, which leaves nine or ten. */
function expectClose(found: ArrayLike<number>, expected: readonly number[], digits = 8): void {
  expect(found.length).toBe(expected.length);
  expected.forEach((value, index) => {
    expect(found[index]).toBeCloseTo(value, digits);
  });
}

describe("against R's glm", () => {
  it("finds effects, covariance and likelihood with one constant", () => {
    const fit = fitted(ONE);
    expectClose(fit.effects, REFERENCE.one.effects);
    expectClose(covariance(ONE, fit), REFERENCE.one.covariance);
    expect(fit.logLikelihood).toBeCloseTo(REFERENCE.one.log_likelihood, 7);
  });

  it("finds them with an effect of each stratum, and none of strata that say nothing", () => {
    const fit = fitted(MANY);
    expectClose(fit.effects, REFERENCE.many.effects);
    expectClose(fit.strata.filter(Number.isFinite), REFERENCE.many.strata);
    expect([fit.strata[3], fit.strata[9]]).toEqual([-Infinity, Infinity]);
    expectClose(covariance(MANY, fit), REFERENCE.many.covariance);
    expect(fit.logLikelihood).toBeCloseTo(REFERENCE.many.log_likelihood, 7);
  });
});

it("finds what statsmodels finds", () => {
  const fit = fitted(ONE);
  const size = fit.effects.length;
  const matrix = covariance(ONE, fit);
  expectClose(fit.effects, REFERENCE.statsmodels.effects);
  const errors = Array.from({ length: size }, (_, index) => Math.sqrt(matrix[index * size + index] ?? Number.NaN));
  // statsmodels takes its weights from the step before the last.
  expectClose(errors, REFERENCE.statsmodels.standard_errors, 6);
});

it("gives the log of the odds ratio of two shares", () => {
  // (20 / 20) / (10 / 30) = 3.
  const fit = fitted({
    successes: Float64Array.of(10, 20),
    trials: Float64Array.of(40, 40),
    level: Int32Array.of(0, 1),
    levels: 2,
    covariates: [],
    stratum: Int32Array.of(0, 0),
  });
  expect(fit.effects[0]).toBeCloseTo(Math.log(3), 10);
});

describe("where there is no fit", () => {
  const four = { trials: Float64Array.of(5, 5, 5, 5), level: Int32Array.of(0, 1, 0, 1), levels: 2 };
  const stratum = Int32Array.of(0, 0, 1, 1);

  it("says that a level without a success parts them", () => {
    expect(fitLogistic({ ...four, successes: Float64Array.of(2, 0, 3, 0), covariates: [], stratum })).toBe("separated");
  });

  it("says that a covariate parts them", () => {
    const covariates = [Float64Array.of(-1, -2, 1, 2)];
    const all = { successes: Float64Array.of(0, 0, 5, 5), covariates, stratum: Int32Array.of(0, 0, 0, 0) };
    expect(fitLogistic({ ...four, level: Int32Array.of(0, 0, 0, 0), levels: 1, ...all })).toBe("separated");
  });

  it("says that a covariate is the strata's", () => {
    const covariates = [Float64Array.of(7, 7, -3, -3)];
    expect(fitLogistic({ ...four, successes: Float64Array.of(1, 2, 3, 2), covariates, stratum })).toBe("collinear");
  });
});

const anyOrder = fc.shuffledSubarray([...MANY.trials.keys()], { minLength: MANY.trials.length });

function reordered(outcomes: Outcomes, order: readonly number[]): Outcomes {
  const of = (values: Float64Array) => Float64Array.from(order, (row) => values[row] ?? Number.NaN);
  return {
    ...outcomes,
    successes: of(outcomes.successes),
    trials: of(outcomes.trials),
    level: Int32Array.from(order, (row) => outcomes.level[row] ?? 0),
    covariates: outcomes.covariates.map(of),
    stratum: Int32Array.from(order, (row) => outcomes.stratum?.[row] ?? 0),
    ...(outcomes.offset === undefined ? {} : { offset: of(outcomes.offset) }),
  };
}

describe("laws", () => {
  const whole = fitted(MANY);

  it("does not hang on the order of rows within strata", () => {
    const stratumOf = (row: number) => MANY.stratum?.[row] ?? 0;
    fc.assert(
      fc.property(anyOrder, (order) => {
        const sorted = order.toSorted((a, b) => stratumOf(a) - stratumOf(b));
        expectClose(fitted(reordered(MANY, sorted)).effects, [...whole.effects]);
      }),
      { numRuns: 20 },
    );
  });

  it("divides an effect by what its covariate is multiplied by", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 5, noNaN: true }), (scale) => {
        const [lengths, waves] = MANY.covariates;
        if (lengths === undefined || waves === undefined) throw new Error("two covariates");
        const { effects } = fitted({ ...MANY, covariates: [lengths.map((value) => value * scale), waves] });
        expectClose(
          effects,
          [...whole.effects].map((effect, index) => (index === 2 ? effect / scale : effect)),
        );
      }),
      { numRuns: 20 },
    );
  });

  it("keeps the effects and has as much more information where every row is there several times", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 9 }), (times) => {
        const more = {
          ...MANY,
          successes: MANY.successes.map((count) => count * times),
          trials: MANY.trials.map((count) => count * times),
        };
        const fit = fitted(more);
        expectClose(fit.effects, [...whole.effects]);
        expectClose(
          covariance(more, fit).map((cell) => cell * times),
          REFERENCE.many.covariance,
        );
      }),
      { numRuns: 8 },
    );
  });

  it("turns its signs where successes and failures change places", () => {
    const failures = MANY.trials.map((count, row) => count - (MANY.successes[row] ?? 0));
    const offset = MANY.offset?.map((value) => -value) ?? new Float64Array();
    const { effects } = fitted({ ...MANY, successes: failures, offset });
    expectClose(
      effects,
      [...whole.effects].map((effect) => -effect),
    );
  });
});
