import { describe, expect, it } from "vitest";
import type { ExpectedTaxon } from "../../../../src/publishing/contracts.ts";
import { expectedSentence, oddsOf } from "../../../../src/site/components/squares/expected-words.ts";
import { gainClasses } from "../../../../src/site/components/squares/gain-classes.ts";

const taxon = (slug: string, chance: number) => ({ slug, chance }) as ExpectedTaxon;

describe("what is expected, in words", () => {
  it("gives a chance in tenths, and never a certainty", () => {
    expect([100, 149, 724, 949, 950, 1000].map(oddsOf)).toEqual([
      "about 1 in 10",
      "about 1 in 10",
      "about 7 in 10",
      "about 9 in 10",
      "over 9 in 10",
      "over 9 in 10",
    ]);
  });

  it("counts those that are likelier than not, and names the first", () => {
    const nameOf = (slug: string) => slug.toUpperCase();
    expect(expectedSentence([taxon("a", 900), taxon("b", 500), taxon("c", 499)], nameOf)).toBe(
      "**Two more species** have a chance of 1 in 2 or better here: first **A**.",
    );
    expect(expectedSentence([taxon("c", 499)], nameOf)).toBe(
      "Nothing more is likelier here than not. Nearest to it comes **C**.",
    );
  });
});

describe("gainClasses", () => {
  it("gives round steps that hold every gain once, and one for squares of which nothing can be said", () => {
    const classes = gainClasses([{ gain: 4_700 }, { gain: 900 }]);
    expect(classes.map(({ words }) => words)).toEqual([
      "Nothing can be said",
      "under 1 species",
      "1 to 2",
      "2 to 3",
      "3 to 4",
      "4 or more",
    ]);
    for (const gain of [0, 999, 1_000, 3_999, 4_000, 40_000])
      expect(classes.filter(({ least, most }) => gain >= least && gain <= most).length).toBe(1);
  });

  it("steps more finely where little can be gained", () => {
    expect(gainClasses([{ gain: 700 }]).map(({ words }) => words)).toEqual([
      "Nothing can be said",
      "under 0.2 species",
      "0.2 to 0.4",
      "0.4 to 0.6",
      "0.6 or more",
    ]);
  });
});
