import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  effortMultiplier,
  localFrequencies,
} from "../../../../src/measures/change/local-frequency/local-frequencies.ts";
import { timeFactors } from "../../../../src/measures/change/local-frequency/time-factors.ts";
import { EXPECTED, NEIGHBOURS, OPTIONS, PRESENCE, reordered } from "./worked-example.ts";

const [TAXA, SQUARES] = [PRESENCE.taxa.length, PRESENCE.squares.length];
const LOCAL = localFrequencies(PRESENCE, NEIGHBOURS, OPTIONS);
/** Weights and results are printed to 1e-10 and 1e-12. */
const PRINTED = 8;

function expectAll(found: ArrayLike<number>, expected: readonly number[], digits = PRINTED): void {
  expect(found).toHaveLength(expected.length);
  expected.forEach((value, at) => expect(found[at]).toBeCloseTo(value, digits));
}

describe("localFrequencies", () => {
  it("agrees with numpy and R on a worked example", () => {
    expectAll(LOCAL.neighbourhoodFrequency, EXPECTED.phi);
    expectAll(LOCAL.effortMultiplier, EXPECTED.alpha, 7);
    expectAll(LOCAL.expectedTaxa, EXPECTED.N);
    expectAll(LOCAL.frequencies.subarray(0, TAXA), EXPECTED.fprime_loc1);
    const benchmarks = PRESENCE.squares.map((_, square) =>
      PRESENCE.taxa.flatMap((_, taxon) => (LOCAL.benchmarks[square * TAXA + taxon] === 1 ? [taxon + 1] : [])),
    );
    expect(benchmarks).toEqual(EXPECTED.benchmark);
  });

  it("asks for more effort the higher the standard, and for none where the neighbourhood has it", () => {
    const frequencies = fc.array(fc.double({ min: 0.01, max: 0.99, noNaN: true }), { minLength: 1, maxLength: 20 });
    const standard = fc.double({ min: 0.05, max: 0.95, noNaN: true });
    fc.assert(
      fc.property(frequencies, standard, standard, (values, one, other) => {
        const of = (level: number) => effortMultiplier(Float64Array.from(values), level);
        expect(of(Math.max(one, other))).toBeGreaterThanOrEqual(of(Math.min(one, other)) * (1 - 1e-9));
        const own = values.reduce((sum, value) => sum + value ** 2, 0) / values.reduce((sum, value) => sum + value, 0);
        expect(of(own)).toBeCloseTo(1, 6);
      }),
    );
    expect(effortMultiplier(Float64Array.of(0, 0), 0.74)).toBe(1);
  });
});

describe("timeFactors", () => {
  it("agrees with numpy and R on a worked example", () => {
    const { benchmarkShares, squares, factors, errors } = timeFactors(PRESENCE, LOCAL);
    expectAll(benchmarkShares, EXPECTED.s.flat());
    expect([...squares]).toEqual(EXPECTED.n.flat());
    // R and numpy differ by up to 1e-7.
    expectAll(factors, EXPECTED.x.flat(), 6);
    EXPECTED.se_delta.flat().forEach((value, at) => {
      if (factors[at] === 0) expect(errors[at]).toBeNaN();
      else expect(errors[at]).toBeCloseTo(value, 6);
    });
  });

  it("is blind to the order of taxa and squares", () => {
    const turned = reordered(PRESENCE, NEIGHBOURS);
    const local = localFrequencies(turned.presence, turned.neighbours, OPTIONS);
    const [own, other] = [timeFactors(PRESENCE, LOCAL), timeFactors(turned.presence, local)];
    // Sums are taken in another order.
    expectAll(
      other.factors,
      [0, 1].flatMap((period) => [...own.factors.subarray(period * TAXA, (period + 1) * TAXA)].reverse()),
      9,
    );
    expectAll(
      other.benchmarkShares,
      [0, 1].flatMap((period) => [...own.benchmarkShares.subarray(period * SQUARES, (period + 1) * SQUARES)].reverse()),
      12,
    );
  });

  it("gives 0 to a taxon that was not found", () => {
    const recorded = PRESENCE.recorded.map((one, at) => (at % TAXA === 20 && at < SQUARES * TAXA ? 0 : one));
    const { factors, errors } = timeFactors({ ...PRESENCE, recorded }, LOCAL);
    expect(factors[20]).toBe(0);
    expect(errors[20]).toBeNaN();
  });
});
