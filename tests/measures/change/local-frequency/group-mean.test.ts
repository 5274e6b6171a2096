import { expect, it } from "vitest";
import { meanOfGroup } from "../../../../src/measures/change/local-frequency/group-mean.ts";

it("weighs by the variance of each and that between them", () => {
  // By hand: weights 1 and ½, centre 1, Q = 3, τ² = (3 − 1) / (3/2 − (5/4)/(3/2)) = 3; then 1/4 and 1/5.
  const { mean, weights } = meanOfGroup([0, 3], [1, 2]);
  expect(mean).toBeCloseTo(4 / 3, 12);
  expect(weights[0]).toBeCloseTo(5 / 9, 12);
});

it("weighs by the variance of each alone where they differ by no more", () => {
  expect(meanOfGroup([1, 1, 1], [1, 2, 4]).weights[0]).toBeCloseTo(4 / 7, 12);
  expect(meanOfGroup([2], [1])).toEqual({ mean: 2, weights: [1] });
});
