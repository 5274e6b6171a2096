import { describe, expect, it } from "vitest";
import { STANDARD_TESTS } from "../../../src/review/standard-tests/index.ts";
import { readReferenceFile } from "../../support/reference.ts";
import { agrees, answer, PUBLISHED_TABLES_ARE_HERE, type PublishedCase, publishedCases } from "./published-data.ts";

// Draft BDQ tests of TDWG, snapshot 2026-07-29, CC BY 4.0 where stated; cases by their LineNumber, joined by GUID.

/** Cases whose answer is not the one here, and why. Nothing is bent to them. */
const EXCEPTIONS: Readonly<Record<number, string>> = {
  572: "occurrenceStatus is filled, which the rule answers with INTERNAL_PREREQUISITES_NOT_MET",
  573: "the same",
  574: "the same",
  688: "verbatimEventDate is filled and no date, which the rule answers with NOT_AMENDED",
  837: "the shift added to the uncertainty comes from a table by place; here it is the largest anywhere, 5359 m",
  894: "a filled value that is no number is NOT_COMPLIANT by the rule",
  1061: "year is filled and no year, which the rule answers with NOT_AMENDED",
  1168: "the value has the form scope:value, which the rule accepts",
  1217: "“spreading” is no value of Darwin Core's vocabulary, though another list has it",
};

/** Cases of each test in both tables, and those of them that are answered as published. */
const AGREED: Readonly<Record<string, readonly [cases: number, agreed: number]>> = {
  VALIDATION_DECIMALLATITUDE_NOTEMPTY: [10, 10],
  VALIDATION_DECIMALLONGITUDE_NOTEMPTY: [10, 10],
  VALIDATION_GEODETICDATUM_NOTEMPTY: [10, 10],
  VALIDATION_LOCATION_NOTEMPTY: [33, 33],
  VALIDATION_COUNTRYCODE_NOTEMPTY: [10, 10],
  VALIDATION_EVENTDATE_NOTEMPTY: [26, 26],
  VALIDATION_EVENTTEMPORAL_NOTEMPTY: [30, 30],
  VALIDATION_YEAR_NOTEMPTY: [12, 12],
  VALIDATION_TAXON_NOTEMPTY: [10, 10],
  VALIDATION_SCIENTIFICNAME_NOTEMPTY: [12, 12],
  VALIDATION_SCIENTIFICNAMEID_NOTEMPTY: [8, 8],
  VALIDATION_SCIENTIFICNAMEAUTHORSHIP_NOTEMPTY: [9, 9],
  VALIDATION_NAMEPUBLISHEDINYEAR_NOTEMPTY: [9, 9],
  VALIDATION_KINGDOM_NOTEMPTY: [9, 9],
  VALIDATION_TAXONRANK_NOTEMPTY: [11, 11],
  VALIDATION_OCCURRENCEID_NOTEMPTY: [8, 8],
  VALIDATION_BASISOFRECORD_NOTEMPTY: [10, 10],
  VALIDATION_OCCURRENCESTATUS_NOTEMPTY: [11, 11],
  VALIDATION_LICENSE_NOTEMPTY: [8, 8],
  VALIDATION_DCTYPE_NOTEMPTY: [9, 9],
  ISSUE_DATAGENERALIZATIONS_NOTEMPTY: [10, 10],
  ISSUE_ESTABLISHMENTMEANS_NOTEMPTY: [9, 9],
  VALIDATION_COUNTRY_NOTEMPTY: [12, 12],
  VALIDATION_DECIMALLATITUDE_INRANGE: [11, 11],
  VALIDATION_DECIMALLONGITUDE_INRANGE: [12, 12],
  VALIDATION_MINELEVATION_INRANGE: [9, 9],
  VALIDATION_MAXELEVATION_INRANGE: [7, 7],
  VALIDATION_MINDEPTH_INRANGE: [8, 8],
  VALIDATION_MAXDEPTH_INRANGE: [8, 8],
  VALIDATION_MINELEVATION_LESSTHAN_MAXELEVATION: [9, 9],
  VALIDATION_MINDEPTH_LESSTHAN_MAXDEPTH: [11, 11],
  VALIDATION_COORDINATES_NOTZERO: [14, 14],
  VALIDATION_COORDINATEUNCERTAINTY_INRANGE: [10, 9],
  VALIDATION_EVENTDATE_STANDARD: [18, 18],
  VALIDATION_DATEIDENTIFIED_STANDARD: [17, 17],
  VALIDATION_EVENTDATE_INRANGE: [24, 24],
  VALIDATION_DATEIDENTIFIED_INRANGE: [25, 25],
  VALIDATION_EVENT_CONSISTENT: [33, 33],
  MEASURE_EVENTDATE_DURATIONINSECONDS: [10, 10],
  VALIDATION_STARTDAYOFYEAR_INRANGE: [11, 11],
  VALIDATION_ENDDAYOFYEAR_INRANGE: [10, 10],
  VALIDATION_YEAR_INRANGE: [13, 13],
  VALIDATION_MONTH_STANDARD: [10, 10],
  VALIDATION_DAY_STANDARD: [11, 11],
  VALIDATION_DAY_INRANGE: [23, 23],
  VALIDATION_SCIENTIFICNAME_FOUND: [8, 8],
  VALIDATION_POLYNOMIAL_CONSISTENT: [18, 18],
  VALIDATION_SCIENTIFICNAMEID_COMPLETE: [13, 12],
  VALIDATION_OCCURRENCESTATUS_STANDARD: [10, 10],
  VALIDATION_BASISOFRECORD_STANDARD: [15, 15],
  VALIDATION_ESTABLISHMENTMEANS_STANDARD: [9, 9],
  VALIDATION_DEGREEOFESTABLISHMENT_STANDARD: [9, 8],
  VALIDATION_SEX_STANDARD: [10, 10],
  VALIDATION_DCTYPE_STANDARD: [11, 11],
  VALIDATION_COUNTRYCODE_STANDARD: [11, 11],
  VALIDATION_LICENSE_STANDARD: [11, 11],
  VALIDATION_GEODETICDATUM_STANDARD: [14, 14],
  AMENDMENT_EVENTDATE_FROM_VERBATIM: [22, 21],
  AMENDMENT_EVENTDATE_FROM_YEARMONTHDAY: [12, 12],
  AMENDMENT_EVENTDATE_FROM_YEARSTARTDAYOFYEARENDDAYOFYEAR: [9, 8],
  AMENDMENT_EVENT_FROM_EVENTDATE: [10, 10],
  AMENDMENT_EVENTDATE_STANDARDIZED: [9, 9],
  AMENDMENT_DATEIDENTIFIED_STANDARDIZED: [10, 10],
  AMENDMENT_MONTH_STANDARDIZED: [7, 7],
  AMENDMENT_DAY_STANDARDIZED: [8, 8],
  AMENDMENT_COORDINATES_FROM_VERBATIM: [16, 16],
  AMENDMENT_GEODETICDATUM_ASSUMEDDEFAULT: [10, 9],
  AMENDMENT_GEODETICDATUM_STANDARDIZED: [9, 9],
  AMENDMENT_OCCURRENCESTATUS_ASSUMEDDEFAULT: [6, 3],
  AMENDMENT_OCCURRENCESTATUS_STANDARDIZED: [7, 7],
};

const SINGLE_CASES = readReferenceFile<{ cases: PublishedCase[] }>("standard-test-cases.json").cases;

describe("single published cases", () => {
  it.each(SINGLE_CASES.map((single) => [single.line, single] as const))("case %i", (_, single) => {
    const test = STANDARD_TESTS.find(({ guid }) => guid === single.guid);
    expect(test).toBeDefined();
    if (test === undefined) return;
    const response = answer(test, single);
    expect(agrees(response, single), JSON.stringify(response)).toBe(true);
  });
});

describe.skipIf(!PUBLISHED_TABLES_ARE_HERE)(
  "all published cases (skipped where their tables are not beside the checkout)",
  () => {
    const cases = PUBLISHED_TABLES_ARE_HERE ? publishedCases() : [];

    it("arrive whole, with their control characters", () => {
      expect(cases.length).toBe(1105 + 199);
      const cells = cases.flatMap(({ record }) => Object.values(record));
      expect(cells.filter((text) => text.includes("\u0000")).length).toBeGreaterThan(100);
      expect(cells.filter((text) => text.includes("\u000e\u000f")).length).toBeGreaterThan(80);
    });

    it.each(STANDARD_TESTS.map((test) => [test.label, test] as const))("%s", (label, test) => {
      const own = cases.filter(({ guid }) => guid === test.guid);
      const different = own.filter((single) => !agrees(answer(test, single), single)).map(({ line }) => line);
      expect(different).toEqual(own.map(({ line }) => line).filter((line) => line in EXCEPTIONS));
      expect([own.length, own.length - different.length]).toEqual(AGREED[label]);
    });

    it("agree in 855 of 864 over all tests made here", () => {
      const sums = Object.values(AGREED).reduce(([a, b], [cases, agreed]) => [a + cases, b + agreed], [0, 0]);
      expect([Object.keys(AGREED).length, ...sums]).toEqual([STANDARD_TESTS.length, 864, 855]);
    });
  },
);
