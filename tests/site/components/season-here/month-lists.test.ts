import { describe, expect, it } from "vitest";
import { monthLists } from "../../../../src/site/components/season-here/month-lists.ts";

const counts = (entries: Record<number, number>) => Array.from({ length: 36 }, (_, third) => entries[third] ?? 0);
const TAXA = [
  {
    slug: "spring",
    season: counts({ 9: 50, 12: 50 }),
    castes: [
      { caste: "queen", records: counts({ 9: 40, 12: 10 }) },
      { caste: "worker", records: counts({ 12: 30 }) },
      { caste: "not_stated", records: counts({ 9: 10, 12: 10 }) },
    ],
  },
  { slug: "summer", season: counts({ 12: 60, 20: 60 }), castes: [] },
  { slug: "few", season: counts({ 12: 29 }), castes: [] },
];

describe("monthLists", () => {
  const months = monthLists(TAXA, 6);

  it("lists the most recorded of each month first, and no taxon of fewer than 30 records", () => {
    expect(months.map(({ most }) => most.map(({ slug }) => slug))).toEqual([
      [],
      [],
      [],
      ["spring"],
      ["summer", "spring"],
      [],
      ["summer"],
      [],
      [],
      [],
      [],
      [],
    ]);
    expect(monthLists(TAXA, 1)[4]?.most.map(({ slug }) => slug)).toEqual(["summer"]);
  });

  it("names castes with a fifth of the month's records that state one", () => {
    expect(months[3]?.most[0]?.castes).toEqual(["queen"]);
    // 10 of 40 are queens.
    expect(months[4]?.most[1]?.castes).toEqual(["queen", "worker"]);
  });

  it("says when the tenth and the ninetieth of a hundred records fall", () => {
    // Of spring the tenth of 100 falls in April and the ninetieth in May; of summer the 12th of 120 in May, the 108th in July.
    expect(months.flatMap(({ begins }, month) => begins.map((slug) => [slug, month]))).toEqual([
      ["spring", 3],
      ["summer", 4],
    ]);
    expect(months.flatMap(({ ends }, month) => ends.map((slug) => [slug, month]))).toEqual([
      ["spring", 4],
      ["summer", 6],
    ]);
  });
});
