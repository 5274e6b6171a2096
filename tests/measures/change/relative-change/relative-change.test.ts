import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fitGroupLine, iterateWeights } from "../../../../src/measures/change/relative-change/group-line.ts";
import { relativeChange } from "../../../../src/measures/change/relative-change/relative-change.ts";
import { weightedLine } from "../../../../src/measures/change/relative-change/weighted-line.ts";
import { readReferenceFile } from "../../../support/reference.ts";

interface Variant {
  intercept: number;
  slope: number;
  sigma: number;
  residual: number[];
  leverage: number[];
  z_no_leverage: number[];
  z_leverage: number[];
}
const REFERENCE = readReferenceFile<{
  N: number;
  data: [string, number, number][];
  kept: string[];
  logit1: number[];
  logit2: number[];
  A_ols: Variant;
  B_varmodel: Variant;
  C_binomial: Variant;
}>("relative-change.json");
const COUNTS = REFERENCE.data.map(([, from, to]) => ({ from, to }));
const FIVE = { minimum_squares: 5 };
/** The weights settle to 1e-12 in the standardised residuals. */
const SETTLED = 11;

describe("relativeChange", () => {
  it("agrees with statsmodels and R, variances fitted", () => {
    const index = relativeChange(COUNTS, REFERENCE.N, FIVE);
    const { B_varmodel: expected } = REFERENCE;
    expect(index?.weighting).toBe("fitted");
    expect(index?.taxa).toBe(REFERENCE.kept.length);
    expect(index?.intercept).toBeCloseTo(expected.intercept, SETTLED);
    expect(index?.slope).toBeCloseTo(expected.slope, SETTLED);
    expect(index?.scatter).toBeCloseTo(expected.sigma, SETTLED);
    REFERENCE.kept.forEach((name, at) => {
      const taxon = REFERENCE.data.findIndex(([id]) => id === name);
      expect(index?.indices[taxon]).toBeCloseTo(expected.z_leverage[at] as number, SETTLED);
      expect(index?.unlevered[taxon]).toBeCloseTo(expected.z_no_leverage[at] as number, SETTLED);
    });
    expect(index?.indices.filter((one) => one === null)).toHaveLength(3);
  });

  it("agrees with them in the weightings it falls back to", () => {
    const { logit1, logit2, N } = REFERENCE;
    const equal = weightedLine(
      logit1,
      logit2,
      logit1.map(() => 1),
    );
    expect(equal?.slope).toBeCloseTo(REFERENCE.A_ols.slope, 12);
    equal?.leverages.forEach((h, at) => expect(h).toBeCloseTo(REFERENCE.A_ols.leverage[at] as number, 12));
    const binomial = iterateWeights(logit1, logit2, N, "binomial");
    if (typeof binomial === "string") throw new Error("weights did not settle");
    expect(binomial.line.slope).toBeCloseTo(REFERENCE.C_binomial.slope, SETTLED);
    binomial.line.residuals.forEach((e, at) =>
      expect(e).toBeCloseTo(REFERENCE.C_binomial.residual[at] as number, SETTLED),
    );
  });

  it("weighs all alike where rare taxa scatter less than common ones", () => {
    // The common half scatters, the rare half lies on a line: b is below 0, and variances of the rare are too.
    const from = Array.from({ length: 20 }, (_, at) => -4 + 0.2 * at);
    const to = from.map((value, at) => value + (at < 14 ? 0 : at % 2 === 0 ? 1 : -1));
    expect(fitGroupLine(from, to, 250)?.weighting).toBe("equal");
  });

  it("has at most one taxon in twenty stand out, whatever the counts, and is blind to their order", () => {
    const counts = fc.record({ from: fc.integer({ min: 0, max: 100 }), to: fc.integer({ min: 0, max: 100 }) });
    fc.assert(
      fc.property(fc.array(counts, { minLength: 4, maxLength: 60 }), (group) => {
        const index = relativeChange(group, 100, FIVE);
        if (index === null) return;
        const { reach } = index;
        const beyond = index.indices.filter((one) => one !== null && Math.abs(one) > reach).length;
        expect(beyond).toBeLessThanOrEqual(0.05 * index.taxa);
        const turned = relativeChange(group.toReversed(), 100, FIVE);
        if (index.weighting !== turned?.weighting) return;
        turned.indices.toReversed().forEach((one, at) => {
          if (one === null) expect(index.indices[at]).toBeNull();
          else expect(one).toBeCloseTo(index.indices[at] as number, 6);
        });
      }),
    );
  });

  it("is silent for fewer than four taxa and for taxa that were all equally common", () => {
    expect(relativeChange(COUNTS.slice(0, 3), REFERENCE.N, FIVE)).toBeNull();
    expect(
      relativeChange(
        [1, 2, 3, 4, 5].map((to) => ({ from: 9, to })),
        REFERENCE.N,
        FIVE,
      ),
    ).toBeNull();
  });
});
