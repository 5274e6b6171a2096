import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exactInterval, exactSplitChance, wilsonInterval } from "../../src/measures/binomial.ts";
import reference from "../reference/shares-of-two.json" with { type: "json" };

/** [found, of, Wilson low, high, exact low, high]: R's prop.test(correct = FALSE) and binom.test; the first four are the cases of Newcombe (1998, Stat. Med. 17:857–872, table I). */
const WORKED: readonly (readonly [number, number, number, number, number, number])[] = [
  [81, 263, 0.255289, 0.36621, 0.252737, 0.367622],
  [15, 148, 0.062386, 0.160487, 0.057844, 0.16165],
  [0, 20, 0, 0.161125, 0, 0.168433],
  [1, 29, 0.006113, 0.171755, 0.000873, 0.177644],
  [20, 20, 0.838875, 1, 0.831567, 1],
  [3, 10, 0.107791, 0.603222, 0.06674, 0.652453],
  [50, 100, 0.403832, 0.596168, 0.398321, 0.601679],
];

const counts = fc.nat(5000);

/** Chance of at most this many of n at a share, summed term by term in logarithms. */
function atMost(most: number, n: number, share: number): number {
  let log = n * Math.log(1 - share);
  let sum = 0;
  for (let found = 0; found <= most; found += 1) {
    sum += Math.exp(log);
    log += Math.log((n - found) / (found + 1)) + Math.log(share / (1 - share));
  }
  return sum;
}

describe("exactInterval and wilsonInterval", () => {
  it.each(WORKED)("are those of R: %i of %i", (found, of, low, high, exactLow, exactHigh) => {
    // Six places are printed.
    const rounded = (ends: readonly number[]) => ends.map((end) => Math.round(1e6 * end) / 1e6);
    expect(rounded(wilsonInterval(found, of))).toEqual([low, high]);
    expect(rounded(exactInterval(found, of))).toEqual([exactLow, exactHigh]);
  });

  it.each(reference.rows as number[][])(
    "are those of scipy and statsmodels: %i and %i",
    (gained = 0, lost = 0, ...ends) => {
      const mine = [...exactInterval(gained, gained + lost), ...wilsonInterval(gained, gained + lost)];
      // 1e-9: twelve digits are printed, and the inverse of the beta distribution stops its steps at 1e-8 of its value, quadratically.
      mine.forEach((end, index) => expect(Math.abs(end - (ends[index] ?? Number.NaN))).toBeLessThan(1e-9));
    },
  );

  it("say nothing of nothing, and hold the share", () => {
    expect([exactInterval(0, 0), wilsonInterval(0, 0)]).toEqual([
      [0, 1],
      [0, 1],
    ]);
    fc.assert(
      fc.property(counts, counts, (found, others) => {
        fc.pre(found + others > 0);
        for (const [low, high] of [exactInterval(found, found + others), wilsonInterval(found, found + others)]) {
          expect(low).toBeGreaterThanOrEqual(0);
          expect(low).toBeLessThanOrEqual(found / (found + others));
          expect(high).toBeGreaterThanOrEqual(found / (found + others));
          expect(high).toBeLessThanOrEqual(1);
        }
      }),
    );
  });

  it("end where 2.5 % of the binomial distribution is left beyond what was found", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 150 }), fc.integer({ min: 1, max: 150 }), (found, others) => {
        const [low, high] = exactInterval(found, found + others);
        expect(1 - atMost(found - 1, found + others, low)).toBeCloseTo(0.025, 8);
        expect(atMost(found, found + others, high)).toBeCloseTo(0.025, 8);
      }),
    );
  });
});

describe("exactSplitChance", () => {
  it.each(reference.rows as number[][])("is scipy's: %i and %i", (gained = 0, lost = 0, ...rest) => {
    const expected = rest[4] ?? Number.NaN;
    // jStat ends the continued fraction of the incomplete beta function at a step of 3e-7; scipy prints 0 below 1e-300.
    expect(Math.abs(exactSplitChance(gained, lost) - expected)).toBeLessThanOrEqual(3e-7 * expected + 1e-12);
  });

  it("is twice the smaller tail at one half, at most 1", () => {
    fc.assert(
      fc.property(fc.nat(200), fc.nat(200), (gained, lost) => {
        const tail = Math.min(1, 2 * atMost(Math.min(gained, lost), gained + lost, 0.5));
        expect(Math.abs(exactSplitChance(gained, lost) - tail)).toBeLessThan(3e-7);
      }),
    );
  });
});
