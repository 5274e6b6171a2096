import { expect, it } from "vitest";
import { reasonsInWords, type UnexpectedRecord, wayOut } from "../../../src/review/checks/unexpected-words.ts";

const NOTHING: UnexpectedRecord = {
  far: false,
  off_season: false,
  first: false,
  expected: null,
  visits: null,
  reports: null,
  nowhere: false,
  nearest_km: null,
  from_year: null,
  to_year: null,
  region: "Ireland",
  region_visits: null,
  outside: null,
  bound: null,
  beyond: null,
  records: null,
  season_caste: null,
  level: 1,
  part_seen: "",
};
const FAR = {
  ...NOTHING,
  far: true,
  visits: 1340,
  reports: 0,
  nearest_km: 212.4,
  from_year: 2005,
  to_year: 2019,
  expected: 1 / 4137,
};
const LEG = {
  level: 2,
  part: "hind-leg",
  words: "a photograph of the hind leg: black, not reddish as in Bombus ruderarius",
};

it("gives every reason with its numbers", () => {
  expect(reasonsInWords(FAR, 60, undefined)).toBe(
    "none of 1,340 visits by others within 60 km reported it in 2005–2019; nearest square with it then 212 km away; here and at this time of year it is expected on about one visit in 4,100",
  );
  // 21 April is day 31 + 29 + 31 + 21 = 112 of a leap year.
  const early = {
    ...NOTHING,
    off_season: true,
    outside: -21,
    bound: 112,
    beyond: 6,
    records: 631,
    season_caste: "queen",
  };
  expect(reasonsInWords(early, 60, LEG)).toBe("21 days before 21 April, before which lie 6 of 631 records (queen)");
});

it("names the part that the evidence does not show, and asks of place and date alone where it does", () => {
  expect(reasonsInWords(FAR, 60, LEG)).toContain("its evidence does not show the hind leg");
  expect(wayOut(FAR, LEG)).toBe(
    "see whether name and place are right; a photograph of the hind leg: black, not reddish as in Bombus ruderarius would settle the name",
  );
  for (const shown of [
    { ...FAR, level: 2, part_seen: "Hind leg, from the side" },
    { ...FAR, level: 2 },
    { ...FAR, level: 3, part_seen: "face" },
  ]) {
    expect(reasonsInWords(shown, 60, LEG)).not.toContain("does not show");
    expect(wayOut(shown, LEG)).toBe("see whether name and place are right; its evidence can settle the name");
  }
  // A photograph that shows another part does not.
  expect(reasonsInWords({ ...FAR, level: 2, part_seen: "face" }, 60, LEG)).toContain("does not show the hind leg");
});

it("says so where the taxon is reported near, or nowhere", () => {
  expect(reasonsInWords({ ...FAR, reports: 1, nearest_km: 0 }, 60, undefined)).toContain(
    "1 of 1,340 visits by others within 60 km reported it in 2005–2019; the nearest report is in this 10 km square",
  );
  expect(reasonsInWords({ ...FAR, nowhere: true, expected: 1e-7 }, 60, undefined)).toBe(
    "none of 1,340 visits by others anywhere in the atlas reported it in 2005–2019; here and at this time of year it is expected on fewer than one visit in 100,000",
  );
});
