import { describe, expect, it } from "vitest";
import { drawFrom, hashed, randomStream, runningTotals, saltOf } from "../../scripts/demonstration/random.ts";

describe("examples", () => {
  // Fowler, Noll and Vo's published test vectors of the 32-bit FNV-1a hash.
  it.each([
    ["", 0x811c9dc5],
    ["a", 0xe40c292c],
    ["foobar", 0xbf9cf968],
  ])("hashes %j as published", (text, hash) => {
    expect(saltOf(text)).toBe(hash);
  });

  it("starts the same stream for the same name, another for another", () => {
    const first = (seed: number, name: string): number => randomStream(seed, name).next();
    expect(first(1, "towns")).toBe(first(1, "towns"));
    expect(new Set([first(1, "towns"), first(1, "walks"), first(2, "towns")]).size).toBe(3);
    expect(hashed(3, 4, 5)).toBe(hashed(3, 4, 5));
  });

  it("sums weights and draws by them", () => {
    expect([...runningTotals([1, 2, 1])]).toEqual([1, 3, 4]);
    expect(drawFrom(runningTotals([0, 1]), randomStream(1, "any"))).toBe(1);
  });
});

describe("the numbers", () => {
  const random = randomStream(1, "test");
  const draws = 40_000;

  // Limits are five standard errors of each figure, from the variance of its distribution.
  it("are even from 0 to 1", () => {
    const tenths = new Array<number>(10).fill(0);
    for (let i = 0; i < draws; i++) {
      const tenth = Math.floor(random.next() * 10);
      tenths[tenth] = (tenths[tenth] ?? 0) + 1;
    }
    expect(Math.max(...tenths.map((count) => Math.abs(count - draws / 10)))).toBeLessThan(5 * Math.sqrt(draws * 0.09));
  });

  it("have the mean and variance of a Poisson distribution", () => {
    const counts = Array.from({ length: draws }, () => random.poisson(2.5));
    const mean = counts.reduce((sum, count) => sum + count, 0) / draws;
    const variance = counts.reduce((sum, count) => sum + (count - mean) ** 2, 0) / draws;
    expect(Math.abs(mean - 2.5)).toBeLessThan(5 * Math.sqrt(2.5 / draws));
    expect(Math.abs(variance - 2.5)).toBeLessThan(5 * Math.sqrt((2.5 + 2 * 2.5 ** 2) / draws));
  });

  it("have the mean of an exponential distribution", () => {
    const sum = Array.from({ length: draws }, () => random.exponential(3)).reduce((all, one) => all + one, 0);
    expect(Math.abs(sum / draws - 3)).toBeLessThan((5 * 3) / Math.sqrt(draws));
  });

  it("of hashes are even, too", () => {
    const mean =
      Array.from({ length: draws }, (_, i) => hashed(i % 200, Math.floor(i / 200), 9)).reduce((a, b) => a + b, 0) /
      draws;
    expect(Math.abs(mean - 0.5)).toBeLessThan(5 / Math.sqrt(12 * draws));
  });
});
