import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chosenChances, excess, overDispersions, sharesApart, upperTail } from "../../src/review/shares-apart.ts";

describe("excess", () => {
  it("is 2 √n (arcsin √(k/n) − arcsin √p)", () => {
    // By hand: arcsin √0.5 = π/4, arcsin √0.25 = π/6, 2 √100 = 20; 20 × π/12.
    expect(excess({ records: 100, ofTaxon: 50, expected: 0.25 })).toBeCloseTo((20 * Math.PI) / 12, 12);
    expect(excess({ records: 60, ofTaxon: 6, expected: 0.1 })).toBeCloseTo(0, 12);
  });

  it("has a standard deviation near 1 where chance alone rules", () => {
    // The variance of arcsin √(k/n) is 1/(4n) to first order, whatever p: n = 400, p = 0.25, one standard deviation up is
    // k = 100 + √(400 × 0.25 × 0.75) = 108.66.
    expect(excess({ records: 400, ofTaxon: 108.66, expected: 0.25 })).toBeCloseTo(1, 1);
  });
});

describe("upperTail", () => {
  it("is the normal distribution's", () => {
    // Standard table of the normal distribution: 1.281552 10 %, 1.959964 2.5 %, 2.575829 0.5 %, 3.090232 0.1 %.
    for (const [z, chance] of [
      [0, 0.5],
      [1.281552, 0.1],
      [1.959964, 0.025],
      [2.575829, 0.005],
      [3.090232, 0.001],
      [-1.959964, 0.975],
    ] as const)
      expect(upperTail(z)).toBeCloseTo(chance, 5);
  });
});

describe("overDispersions", () => {
  it("is the others' mean square, at least 1", () => {
    expect(overDispersions([-2, 2, -2, 2])).toEqual([4, 4, 4, 4]);
    // Each set by the others alone: (0.25 + 0.25) / 2 is below 1, and the third's others likewise.
    expect(overDispersions([0.5, -0.5, 9])[2]).toBe(1);
    expect(overDispersions([40])).toEqual([1]);
    expect(overDispersions([])).toEqual([]);
  });

  it("draws the outermost tenth in", () => {
    // Ten sets: the greatest, 100, is drawn in to the second, 1. So the others' mean square of any set is 1.
    expect(overDispersions([-1, 1, -1, 1, -1, 1, -1, 1, -1, 100])).toEqual(Array.from({ length: 10 }, () => 1));
  });
});

describe("chosenChances", () => {
  it("gives the choice of the paper's own example", () => {
    // Benjamini and Hochberg (1995), section 4.1: fifteen chances of a study of heart attacks; at 0.05 the first four are chosen.
    const chances = [
      0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.324, 0.4262, 0.5719, 0.6528, 0.759, 1,
    ];
    expect(chosenChances(chances, 0.05).filter(Boolean)).toHaveLength(4);
    expect(chosenChances(chances, 0.05).slice(0, 4)).toEqual([true, true, true, true]);
    expect(chosenChances([], 0.05)).toEqual([]);
  });

  it("chooses more with a greater share, and never one above a chosen one", () => {
    const chances = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 30 });
    fc.assert(
      fc.property(chances, (some) => {
        const [few, many] = [chosenChances(some, 0.01), chosenChances(some, 0.1)];
        expect(few.every((chosen, index) => !chosen || many[index] === true)).toBe(true);
        const chosen = some.filter((_, index) => many[index]);
        expect(some.filter((one) => one < Math.max(-1, ...chosen))).toHaveLength(
          chosen.filter((one) => one < Math.max(-1, ...chosen)).length,
        );
      }),
    );
  });
});

describe("sharesApart", () => {
  it("finds the one set that stands apart, and asks of no other", () => {
    const usual = Array.from({ length: 20 }, (_, index) => ({
      records: 200,
      ofTaxon: 8 + (index % 5),
      expected: 0.05,
    }));
    const apart = sharesApart([...usual, { records: 60, ofTaxon: 41, expected: 0.05 }], { times: 4, falseShare: 0.01 });
    expect(apart).toEqual([...usual.map(() => false), true]);
  });

  it("asks of none that is not so many times its expectation, however sure", () => {
    expect(sharesApart([{ records: 10_000, ofTaxon: 1500, expected: 0.05 }], { times: 4, falseShare: 0.01 })).toEqual([
      false,
    ]);
  });
});
