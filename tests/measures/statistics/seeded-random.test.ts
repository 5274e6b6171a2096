import { describe, expect, it } from "vitest";
import { seededRandom } from "../../../src/measures/statistics/seeded-random.ts";

const draws = (name: string, count: number) => {
  const next = seededRandom(name);
  return Array.from({ length: count }, () => next());
};

describe("seededRandom", () => {
  it("gives the same for the same name, and something else for another", () => {
    expect(draws("a", 50)).toEqual(draws("a", 50));
    expect(draws("a", 50)).not.toEqual(draws("b", 50));
  });

  it("is even, and no number tells the next", () => {
    // Of 20,000 even numbers the mean is 0.5 ± 0.002, the variance 1/12 ± 0.0005, neighbours agree by 0 ± 0.007 (one standard
    // error each); four of them are allowed.
    const found = draws("evenness", 20_000);
    const mean = found.reduce((sum, one) => sum + one, 0) / found.length;
    const variance = found.reduce((sum, one) => sum + (one - mean) ** 2, 0) / found.length;
    const next = found.slice(1).reduce((sum, one, i) => sum + (one - mean) * ((found[i] as number) - mean), 0);
    expect(Math.abs(mean - 0.5)).toBeLessThan(0.008);
    expect(Math.abs(variance - 1 / 12)).toBeLessThan(0.002);
    expect(Math.abs(next / found.length / variance)).toBeLessThan(0.028);
    expect(found.every((one) => one >= 0 && one < 1)).toBe(true);
  });
});
