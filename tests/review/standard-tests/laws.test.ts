import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { STANDARD_TESTS } from "../../../src/review/standard-tests/index.ts";
import {
  isEmpty,
  type Parameters,
  type StandardTest,
  type TermTexts,
} from "../../../src/review/standard-tests/standard-test.ts";
import { readReferenceFile } from "../../support/reference.ts";
import type { PublishedCase } from "./published-data.ts";

const AMENDMENTS = STANDARD_TESTS.filter(({ kind }) => kind === "amendment");

const CASES = readReferenceFile<{ cases: PublishedCase[] }>("standard-test-cases.json").cases;
/** Texts near what the tests read, beside those of the published cases. */
const MORE: Readonly<Record<string, readonly string[]>> = {
  eventDate: ["12/7/1998", "1998-07-12 14:07", " 1998 ", "2020-02-29/03-01", "1998-W12", "before 1950", "summer 1975"],
  dateIdentified: ["12.7.98", "July 1998", "1998-07-12T14:07"],
  year: ["1998", "2020", "98", "-1"],
  month: ["2", "II", "June", "0", "13"],
  day: ["29", "30", "3rd", "0"],
  startDayOfYear: ["59", "60", "366"],
  endDayOfYear: ["61", "366", "365"],
  verbatimEventDate: ["12/25/1998", "spring 1910", "5-12 May 1998"],
  verbatimCoordinates: ["51°30′N 0°7.5′W", "N51.5, W0.5", "51.5 0.5", "179°59'59.9\"E 0°0'0\"N"],
  verbatimLatitude: ["51 deg 30 min N", "-0.0", "90.0"],
  verbatimLongitude: ["0.5", "0°7.5′ W", "180"],
  verbatimSRS: ["WGS84", "EPSG:27700"],
  geodeticDatum: ["WGS 84", "OSGB36", "EPSG:27700", "EPSG:4999", "unknown", "Not recorded"],
  coordinateUncertaintyInMeters: ["50", "0.5"],
  occurrenceStatus: ["Present", "not detected", "NotDetected", "__proto__"],
  individualCount: ["0", "3"],
};

function textOf(term: string): fc.Arbitrary<string> {
  const published = CASES.flatMap(({ record }) => record[term] ?? []);
  return fc.oneof(
    { weight: 3, arbitrary: fc.constantFrom("", ...published, ...(MORE[term] ?? [])) },
    { weight: 1, arbitrary: fc.string({ unit: "binary", maxLength: 20 }) },
    { weight: 1, arbitrary: fc.constantFrom(" ", "\u0000", "\u000e\u000f", "x", "0", "1") },
  );
}

/** A record with some of the terms of a test. */
function recordFor({ actsOn, consults }: StandardTest): fc.Arbitrary<TermTexts> {
  const terms = [...new Set([...actsOn, ...consults])];
  return fc.record(Object.fromEntries(terms.map((term) => [term, textOf(term)])), { requiredKeys: [] });
}

const parameters: fc.Arbitrary<Parameters> = fc.record({
  today: fc.constantFrom("2025-12-31", "2040-02-29"),
  dates: fc.constantFrom<Parameters["dates"]>(
    { format: "iso" },
    { format: "day-first", twoDigitPivot: 25 },
    { format: "spreadsheet" },
  ),
});

const RESULTS: Readonly<Record<string, readonly string[]>> = {
  validation: ["COMPLIANT", "NOT_COMPLIANT"],
  issue: ["POTENTIAL_ISSUE", "NOT_ISSUE"],
};

describe("every test", () => {
  it("has a GUID and a label of its own", () => {
    expect(new Set(STANDARD_TESTS.map(({ guid }) => guid)).size).toBe(STANDARD_TESTS.length);
    expect(new Set(STANDARD_TESTS.map(({ label }) => label)).size).toBe(STANDARD_TESTS.length);
  });

  it.each(STANDARD_TESTS.map((test) => [test.label, test] as const))("%s answers any text by its kind", (_, test) => {
    const always = fc.property(recordFor(test), parameters, (texts, rules) => {
      const { status, result, changes } = test.run(texts, rules);
      expect(changes === undefined).toBe(status !== "AMENDED" && status !== "FILLED_IN");
      if (test.kind === "amendment") expect(status).not.toBe("RUN_HAS_RESULT");
      else expect(status).not.toMatch(/AMENDED|FILLED/);
      if (status === "RUN_HAS_RESULT") {
        if (test.kind === "measure") expect(Number(result)).toBeGreaterThanOrEqual(0);
        else expect(RESULTS[test.kind]).toContain(result);
      }
    });
    fc.assert(always, { numRuns: 200 });
  });

  it.each(
    STANDARD_TESTS.filter(({ onlyWhetherFilled }) => onlyWhetherFilled.length > 0).map(
      (test) => [test.label, test] as const,
    ),
  )("%s looks no further than whether those terms are filled", (_, test) => {
    const always = fc.property(recordFor(test), parameters, (texts, rules) => {
      const marked = Object.fromEntries(test.onlyWhetherFilled.map((term) => [term, isEmpty(texts[term]) ? "" : "x"]));
      expect(test.run({ ...texts, ...marked }, rules)).toEqual(test.run(texts, rules));
    });
    fc.assert(always);
  });
});

describe("every amendment", () => {
  it.each(AMENDMENTS.map((test) => [test.label, test] as const))(
    "%s changes something, once, of its own terms",
    (_, test) => {
      const always = fc.property(recordFor(test), parameters, (texts, rules) => {
        const { status, changes = {} } = test.run(texts, rules);
        for (const [term, value] of Object.entries(changes)) {
          expect(test.actsOn).toContain(term);
          expect(value).not.toBe(texts[term]);
          expect(isEmpty(value)).toBe(false);
          if (status === "FILLED_IN") expect(isEmpty(texts[term])).toBe(true);
        }
        expect(test.run({ ...texts, ...changes }, rules).changes).toBe(undefined);
      });
      fc.assert(always, { numRuns: 300 });
    },
  );

  it.each([
    ["eventDate", "VALIDATION_EVENTDATE_STANDARD"],
    ["dateIdentified", "VALIDATION_DATEIDENTIFIED_STANDARD"],
    ["month", "VALIDATION_MONTH_STANDARD"],
    ["day", "VALIDATION_DAY_STANDARD"],
    ["geodeticDatum", "VALIDATION_GEODETICDATUM_STANDARD"],
    ["occurrenceStatus", "VALIDATION_OCCURRENCESTATUS_STANDARD"],
    ["decimalLatitude", "VALIDATION_DECIMALLATITUDE_INRANGE"],
    ["decimalLongitude", "VALIDATION_DECIMALLONGITUDE_INRANGE"],
  ])("of %s proposes what complies with %s", (term, label) => {
    const validation = STANDARD_TESTS.find((test) => test.label === label);
    // A datum stated with verbatim coordinates is taken over as it is written.
    const proposing = AMENDMENTS.filter(
      (test) =>
        test.actsOn.includes(term) &&
        (term !== "geodeticDatum" || test.label !== "AMENDMENT_COORDINATES_FROM_VERBATIM"),
    );
    for (const amendment of proposing) {
      const always = fc.property(recordFor(amendment), parameters, (texts, rules) => {
        const value = amendment.run(texts, rules).changes?.[term];
        if (value !== undefined) expect(validation?.run({ [term]: value }, rules).result).toBe("COMPLIANT");
      });
      fc.assert(always, { numRuns: 500 });
    }
  });

  it.each(AMENDMENTS.map((test) => [test.label, test] as const))("%s is met with by these laws", (_, test) => {
    const drawn = fc.sample(fc.tuple(recordFor(test), parameters), { numRuns: 2000, seed: 1 });
    expect(drawn.filter(([texts, rules]) => test.run(texts, rules).changes !== undefined).length).toBeGreaterThan(10);
  });
});
