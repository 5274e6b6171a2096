import { expect, it } from "vitest";
import { poissonTail } from "../../src/review/poisson-tail.ts";

// By the definition, 1 − Σ e^−λ λ^k / k!, worked by hand: for λ = 1, e^−1 is 0.3678794; for λ = 0.1 and 3 or more,
// 1 − e^−0.1 (1 + 0.1 + 0.005) is 0.0001547.
it("is what the definition gives", () => {
  expect(poissonTail(0, 1)).toBe(1);
  expect(poissonTail(1, 1)).toBeCloseTo(0.6321206, 7);
  expect(poissonTail(2, 1)).toBeCloseTo(0.2642411, 7);
  expect(poissonTail(3, 0.1)).toBeCloseTo(0.0001547, 7);
});

it("is near a half at a large mean, and never 0 where it is only small", () => {
  // The median of a Poisson variable lies between λ − ln 2 and λ + 1/3 (Choi 1994, Proc. Amer. Math. Soc. 121).
  expect(poissonTail(1000, 1000)).toBeGreaterThan(0.5);
  expect(poissonTail(1001, 1000)).toBeLessThan(0.5);
  expect(poissonTail(60, 1)).toBeGreaterThan(0);
});
