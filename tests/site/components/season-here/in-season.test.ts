import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inSeason, type SeasonFile, thirdOfDay } from "../../../../src/site/components/season-here/in-season.ts";

/** Records spread evenly over some thirds of the month. */
const season = (from: number, to: number, each: number) =>
  Array.from({ length: 36 }, (_, third) => (third >= from && third <= to ? each : 0));
const taxon = (slug: string, counts: number[]) => ({ slug, name: slug, season: counts });
const FILE: SeasonFile = {
  visits: season(6, 29, 1000),
  since: 2006,
  taxa: [
    taxon("common", season(9, 29, 100)),
    taxon("early", season(6, 14, 60)),
    taxon("late", season(20, 29, 80)),
    taxon("few", season(6, 14, 2)),
  ],
};
const slugs = (...given: Parameters<typeof inSeason>) => inSeason(...given).map(({ slug }) => slug);

describe("inSeason", () => {
  it("lists what is recorded at least half as often as on an average visit, the likeliest first", () => {
    // In 11–20 April (10) common has 100 of 2,100 records where a twenty-fourth of the visits is made, early 60 of 540: early
    // is 2.7 times, common 1.1 times as frequent as in the year; by records 2.7 × 540 is under 1.1 × 2,100.
    expect(slugs(FILE, 10, undefined, 5)).toEqual(["common", "early"]);
    expect(slugs(FILE, 25, undefined, 5)).toEqual(["common", "late"]);
    expect(slugs(FILE, 25, undefined, 1)).toEqual(["common"]);
  });

  it("leaves out what has fewer than 30 dated records", () => {
    expect(slugs(FILE, 10, undefined, 5)).not.toContain("few");
  });

  it("lists round a place what was recorded there, by its share of the visits", () => {
    const met = new Map([
      ["early", { share: 0.4, here: 3 }],
      ["common", { share: 0.1, here: 0 }],
      ["late", { share: 0.9, here: 9 }],
    ]);
    expect(slugs(FILE, 10, met, 5)).toEqual(["early", "common"]);
    expect(slugs(FILE, 10, new Map([["common", { share: 0, here: 0 }]]), 5)).toEqual([]);
    expect(slugs(FILE, 10, new Map([["common", { share: 0, here: 1 }]]), 5)).toEqual(["common"]);
  });

  it("never lists round a place what is not in season, nor a taxon twice, and no more than asked for", () => {
    const share = fc.record({ share: fc.double({ min: 0, max: 1, noNaN: true }), here: fc.nat(5) });
    fc.assert(
      fc.property(fc.nat(35), fc.nat(4), share, (third, most, met) => {
        const everywhere = new Map(FILE.taxa.map(({ slug }) => [slug, met]));
        const here = slugs(FILE, third, everywhere, most);
        const all = new Set(slugs(FILE, third, undefined, 9));
        expect(here.length).toBeLessThanOrEqual(most);
        expect(new Set(here).size).toBe(here.length);
        expect(here.filter((slug) => !all.has(slug))).toEqual([]);
      }),
    );
  });
});

describe("thirdOfDay", () => {
  it("ends the first third with the tenth and the second with the twentieth", () => {
    const third = (month: number, day: number) => thirdOfDay(new Date(2026, month - 1, day));
    expect([third(1, 1), third(1, 10), third(1, 11), third(5, 20), third(5, 21), third(12, 31)]).toEqual([
      0, 0, 1, 13, 14, 35,
    ]);
  });
});
