import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { TaxonSquare } from "../../../../src/publishing/contracts.ts";
import { firstYearClasses, isNewcomer } from "../../../../src/site/components/figures/first-years.ts";

const PERIODS = [
  { id: "a", label: "1990–2005", from: 1990, to: 2005 },
  { id: "b", label: "2006–2024", from: 2006, to: 2024 },
];
const square = (...records: number[]): TaxonSquare => ({
  square: "NZ27",
  state: "recorded",
  covered: [true, true],
  records,
  visits: records,
  first_year: 2001,
  last_year: 2001,
});
const taxon = (...squares: TaxonSquare[]) => ({ squares: { "10000": squares, "2000": [] } });

describe("isNewcomer", () => {
  it("has squares in the later of the compared periods and none in the earlier", () => {
    expect(isNewcomer(taxon(square(0, 2), square(0, 1)), PERIODS, ["a", "b"])).toBe(true);
    expect(isNewcomer(taxon(square(0, 2), square(1, 1)), PERIODS, ["a", "b"])).toBe(false);
    expect(isNewcomer(taxon(square(2, 0)), PERIODS, ["a", "b"])).toBe(false);
    expect(isNewcomer(taxon(square(0, 0)), PERIODS, ["a", "b"])).toBe(false);
    expect(isNewcomer(taxon(square(2)), PERIODS.slice(0, 1), null)).toBe(false);
  });
});

describe("firstYearClasses", () => {
  it("puts every square into one of at most four classes, in order and without a gap between their years", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1900, max: 2030 })), (years) => {
        const classes = firstYearClasses(years);
        expect(classes.length).toBeLessThanOrEqual(4);
        expect(classes.reduce((sum, { squares }) => sum + squares, 0)).toBe(years.length);
        for (const [index, { least, squares, side }] of classes.entries()) {
          expect(squares).toBeGreaterThan(0);
          const before = classes[index - 1];
          if (before === undefined) continue;
          expect(before.most).toBe(least - 1);
          expect(before.side).toBeGreaterThan(side);
        }
      }),
    );
  });
  it("names the years that squares have", () => {
    expect(firstYearClasses([2001, 2001, 2003, 2003, 2010, 2011, 2020, 2021]).map(({ words }) => words)).toEqual([
      "2001",
      "2003",
      "2010–2011",
      "2020–2021",
    ]);
    expect(firstYearClasses([])).toEqual([]);
    expect(firstYearClasses([1999]).map(({ words, squares }) => [words, squares])).toEqual([["1999", 1]]);
  });
});
