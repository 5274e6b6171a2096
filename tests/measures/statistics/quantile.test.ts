import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { quantiles } from "../../../src/measures/statistics/quantile.ts";
import { readReferenceFile } from "../../support/reference.ts";

interface Reference {
  sample: number[];
  p: number[];
  quantile_type_8: number[];
  one_to_ten: { type8: number[] };
  weighted: { x: number[]; w: number[]; expanded_quantile_type8: number[] };
}
const reference = readReferenceFile<Reference>("phenology.json");
const once = (values: readonly number[]) => ({ values, weights: values.map(() => 1) });

describe("quantiles", () => {
  it("of a sample are those of R, type 8", () => {
    const found = quantiles(once(reference.sample), reference.p);
    // R printed fifteen digits.
    found.forEach((value, i) => expect(value).toBeCloseTo(reference.quantile_type_8[i] as number, 10));
  });

  it("of 1 to 10 are the worked ones", () => {
    const found = quantiles(once([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]), [0.1, 0.25, 0.5, 0.9]);
    found.forEach((value, i) => expect(value).toBeCloseTo(reference.one_to_ten.type8[i] as number, 10));
  });

  it("of values that count several times are those of the sample written out", () => {
    const { x, w, expanded_quantile_type8 } = reference.weighted;
    const found = quantiles({ values: x, weights: w }, [0.1, 0.5, 0.9]);
    found.forEach((value, i) => expect(value).toBeCloseTo(expanded_quantile_type8[i] as number, 10));
  });

  it("lie within the sample, rise with the share, and are NaN of nothing", () => {
    const sample = fc.array(fc.tuple(fc.integer({ min: 1, max: 365 }), fc.integer({ min: 1, max: 5 })), {
      minLength: 1,
    });
    fc.assert(
      fc.property(sample, (pairs) => {
        const sorted = pairs.toSorted(([a], [b]) => a - b);
        const values = sorted.map(([value]) => value);
        const found = quantiles({ values, weights: sorted.map(([, weight]) => weight) }, [0, 0.1, 0.5, 0.9, 1]);
        expect(found).toEqual(found.toSorted((a, b) => a - b));
        expect([found[0], found[4]]).toEqual([values[0], values.at(-1)]);
      }),
    );
    expect(quantiles({ values: [], weights: [] }, [0.5])).toEqual([Number.NaN]);
  });
});
