import { describe, expect, it } from "vitest";
import type { SeasonShiftRow } from "../../../../src/publishing/contracts.ts";
import {
  dayInShort,
  dayInWords,
  leftOut,
  seasonSentence,
  shiftName,
  shiftSentence,
} from "../../../../src/site/components/figures/season-words.ts";
import { seasonDatesOf, seasonShiftsOf } from "../../../support/published/season-figures.ts";

const median = (index: number) =>
  seasonShiftsOf(index).find(
    ({ caste, method, share }) => caste === "queen" && method === "regression" && share === 0.5,
  ) as SeasonShiftRow;
const REST = "31 years from 1993 to 2023; latitude, territory, caste and the season of recording allowed for";

describe("words of a season", () => {
  it("say days of the year, and of the next", () => {
    // Day 114 of a year of 365 is 24 April: 31 + 28 + 31 + 24.
    expect([1, 59, 60, 114, 365, 370].map(dayInWords)).toEqual([
      "1 January",
      "28 February",
      "1 March",
      "24 April",
      "31 December",
      "5 January",
    ]);
    expect(dayInShort(113.6)).toBe("24 Apr");
  });

  it("say by when half of the visits were made, and how that moved", () => {
    const dates = seasonDatesOf(true).filter(({ period }) => period === "p2");
    expect(seasonSentence("in 2006–2024", dates, seasonShiftsOf(0))).toBe(
      `In 2006–2024 half of the visits with a queen were made by **24 April**. The median came **2.1 days earlier per decade** (95 % interval 0.9 to 3.3 earlier; ${REST}).`,
    );
    expect(seasonSentence("in 2006–2024", [], [])).toBe(
      "Too few visits in 2006–2024: no date of its season can be given.",
    );
  });

  it("say no direction where the interval holds 0, and why where nothing can be told", () => {
    expect(shiftSentence(median(1))).toBe(
      `Its median shows **no clear shift**: +0.3 days per decade (95 % interval −0.9 to +1.5; ${REST}).`,
    );
    expect(shiftSentence(median(2))).toBe(
      "Whether it moved **cannot be told**: 8 years with 5 visits or more, where 10 are needed.",
    );
  });

  it("name what moved and what was left out", () => {
    expect(shiftName({ method: "regression", share: 0.1, adjusted: true })).toBe("Day by which 10 % were made");
    expect(shiftName({ method: "yearly_medians", share: 0.5, adjusted: false })).toBe(
      "Medians of the years, as recorded",
    );
    expect(leftOut({ vague: 1, of_no_season: 7 })).toBe(
      "Left out: 1 record whose date is not one day and 7 records of specimens, literature or nests.",
    );
    expect(leftOut({ vague: 0, of_no_season: 0 })).toBe("");
  });
});
