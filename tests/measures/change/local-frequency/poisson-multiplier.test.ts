import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { poissonMultiplier } from "../../../../src/measures/change/local-frequency/poisson-multiplier.ts";

describe("poissonMultiplier", () => {
  it("is the factor at which chances add up to what was found", () => {
    const rate = fc.double({ min: 0.001, max: 20, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(rate, { minLength: 1, maxLength: 50 }),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (rates, share) => {
          const found = share * rates.length;
          const multiplier = poissonMultiplier(rates, found);
          const sum = rates.reduce((total, one) => total + 1 - Math.exp(-one * multiplier), 0);
          expect(sum / found).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  it("is 0 for nothing found and without bound for everything", () => {
    expect(poissonMultiplier([1, 2], 0)).toBe(0);
    expect(poissonMultiplier([1, 2], 2)).toBe(Infinity);
    expect(poissonMultiplier([1, 0], 1)).toBe(Infinity);
    expect(poissonMultiplier([Math.LN2, Math.LN2], 1)).toBeCloseTo(1, 12);
  });
});
