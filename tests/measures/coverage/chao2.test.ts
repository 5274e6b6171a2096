import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  expectedRichness,
  type Incidence,
  sampleCoverage,
  withoutSingles,
} from "../../../src/measures/coverage/chao2.ts";
import { readReferenceFile } from "../../support/reference.ts";

const REFERENCE = readReferenceFile<{
  datasets: (Incidence & {
    name: string;
    expected: number;
    se: number;
    interval: [number, number];
    coverage: number;
  })[];
  accumulation: { name: string; sites: [number, number]; species: [number, number] };
  without_twice: Incidence & { expected: number; coverage: number };
  given_incidences: { visits: number; incidence: number[]; expected: number; se: number }[];
}>("expected-richness.json");

/** Counts of a sample from how often each taxon was named. */
function counts(visits: number, incidence: readonly number[]): Incidence {
  return {
    visits,
    observed: incidence.length,
    once: incidence.filter((times) => times === 1).length,
    twice: incidence.filter((times) => times === 2).length,
    incidences: incidence.reduce((sum, times) => sum + times, 0),
  };
}

/** Samples by chance: two to forty visits, one to thirty taxa. */
const anySample = fc
  .integer({ min: 2, max: 40 })
  .chain((visits) =>
    fc
      .array(fc.oneof(fc.integer({ min: 1, max: visits }), fc.constantFrom(1, 1, 2)), { minLength: 1, maxLength: 30 })
      .map((incidence) => ({ incidence, ...counts(visits, incidence) })),
  );

// Both programs compute in doubles from whole numbers; the reference is printed with twelve figures or more.
const NINE = 9;

describe("expectedRichness", () => {
  it.each(REFERENCE.datasets)("gives what the reference gives for $name", (sample) => {
    const { expected, variance, low, high } = expectedRichness(sample);
    expect(expected).toBeCloseTo(sample.expected, NINE);
    expect(Math.sqrt(variance)).toBeCloseTo(sample.se, NINE);
    expect([low, high].map((bound) => bound?.toFixed(6))).toEqual(sample.interval.map((bound) => bound.toFixed(6)));
  });

  it.each(REFERENCE.given_incidences)("gives what the reference gives for $incidence on $visits visits", (sample) => {
    const { expected, variance } = expectedRichness(counts(sample.visits, sample.incidence));
    expect(expected).toBeCloseTo(sample.expected, NINE);
    expect(Math.sqrt(variance)).toBeCloseTo(sample.se, NINE);
  });

  it("corrects for bias where no taxon was named twice", () => {
    expect(expectedRichness(REFERENCE.without_twice).expected).toBeCloseTo(REFERENCE.without_twice.expected, NINE);
  });

  it("is never below what was observed, nor outside its interval", () => {
    fc.assert(
      fc.property(anySample, (sample) => {
        const { expected, variance, low, high } = expectedRichness(sample);
        expect(expected).toBeGreaterThanOrEqual(sample.observed);
        expect(variance).toBeGreaterThanOrEqual(0);
        expect(low === null).toBe(expected === sample.observed);
        if (low === null || high === null) return;
        expect(low).toBeGreaterThanOrEqual(sample.observed);
        expect(low).toBeLessThanOrEqual(expected);
        expect(high).toBeGreaterThanOrEqual(expected);
      }),
    );
  });

  it("adds nothing where every taxon was named on three visits or more", () => {
    fc.assert(
      fc.property(anySample, ({ visits, incidence }) => {
        const thrice = incidence.map((times) => times + 2);
        expect(expectedRichness(counts(visits + 2, thrice)).expected).toBe(incidence.length);
      }),
    );
  });

  it("does not depend on how common the common taxa are", () => {
    fc.assert(
      fc.property(anySample, ({ visits, incidence }) => {
        const common = incidence.map((times) => (times > 2 ? visits : times));
        expect(expectedRichness(counts(visits, common))).toEqual(expectedRichness(counts(visits, incidence)));
      }),
    );
  });

  it("finds the number of taxa that are equally easy to find, where it is exact in expectation", () => {
    // Chao (1987): with one probability of being named for all taxa the estimator has no bias but that of small numbers.
    let state = 12_345;
    const chance = () => {
      state = (Math.imul(state, 1_103_515_245) + 12_345) & 0x7fffffff;
      return (state >>> 8) / 0x7fffff;
    };
    let sum = 0;
    for (let trial = 0; trial < 400; trial += 1) {
      const incidence = Array.from(
        { length: 60 },
        () => Array.from({ length: 12 }, () => Number(chance() < 0.12)).filter(Boolean).length,
      );
      sum += expectedRichness(
        counts(
          12,
          incidence.filter((times) => times > 0),
        ),
      ).expected;
    }
    // A trial's standard deviation is about 5 taxa, so that of the mean about 0.25; the bias of small numbers is of order 1.
    expect(sum / 400).toBeGreaterThan(58.5);
    expect(sum / 400).toBeLessThan(61.5);
  });
});

describe("sampleCoverage", () => {
  it.each([...REFERENCE.datasets, REFERENCE.without_twice])("gives what the reference gives for %j", (sample) => {
    expect(sampleCoverage(sample)).toBeCloseTo(sample.coverage, NINE);
  });

  it("lies between nothing and all", () => {
    fc.assert(
      fc.property(anySample, (sample) => {
        const coverage = sampleCoverage(sample);
        expect(coverage).toBeGreaterThanOrEqual(0);
        expect(coverage).toBeLessThanOrEqual(1);
      }),
    );
  });

  it("is at least what the last step of the accumulation curve leaves", () => {
    // The last of m sites adds once/m taxa on average (exact accumulation); Turing's coverage is 1 − once/incidences.
    const { sites, species } = REFERENCE.accumulation;
    const [sample] = REFERENCE.datasets;
    if (sample === undefined) throw new Error("no data set");
    const step = species[1] - species[0];
    expect(step).toBeCloseTo(sample.once / sites[1], NINE);
    expect(sampleCoverage(sample)).toBeGreaterThan(1 - (step * sample.visits) / sample.incidences);
  });
});

describe("withoutSingles", () => {
  it("leaves the sample without taxa that were named once", () => {
    fc.assert(
      fc.property(anySample, fc.nat(30), ({ visits, incidence, once }, more) => {
        const singles = Math.min(once, more);
        const kept = [...incidence].sort((one, other) => one - other).slice(singles);
        expect(withoutSingles(counts(visits, incidence), singles)).toEqual(counts(visits, kept));
      }),
    );
  });
});
