import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dayNumber, formatDay } from "../../src/dates/calendar.ts";
import { readClockTime } from "../../src/dates/clock-time.ts";
import { readEventDate, trimBlank } from "../../src/dates/event-date.ts";
import { isDateRefusal, lengthInDays } from "../../src/dates/interval.ts";
import { DATES } from "./reference.ts";

/** First and last day as text, or "refused". */
function days(text: string, intervalEnd: "inclusive" | "exclusive" = "inclusive"): string {
  const interval = readEventDate(text, { intervalEnd });
  if (isDateRefusal(interval)) return "refused";
  return `${formatDay(interval.first ?? interval.last)} ${formatDay(interval.last)}`;
}

describe("examples", () => {
  it("hold", () => {
    expect(readEventDate("2007-11-13/15", { intervalEnd: "inclusive" })).toEqual({
      first: 13830,
      last: 13832,
      precision: "range",
      openStart: false,
    });
    expect(trimBlank(" 1998\u0000")).toBe("1998");
    expect(readClockTime("14:07-0600")).toEqual({ minutes: 847, zone: "-0600" });
  });
});

describe("the examples of the Darwin Core term eventDate", () => {
  it.each(DATES.intervals_inclusive)("$eventDate is $first to $last", ({ eventDate, first, last, days: length }) => {
    expect(days(eventDate)).toBe(`${first} ${last}`);
    const interval = readEventDate(eventDate, { intervalEnd: "inclusive" });
    expect(isDateRefusal(interval) ? interval : lengthInDays(interval)).toBe(length);
  });

  it.each(DATES.invalid)("%s is refused, and the date named", (eventDate) => {
    const answer = readEventDate(eventDate, { intervalEnd: "inclusive" });
    expect(isDateRefusal(answer) ? answer.refused : answer).toContain(`"${eventDate}"`);
  });

  it("all read", () => {
    expect(DATES.darwin_core_examples.filter(({ value }) => days(value) === "refused")).toEqual([]);
  });

  it("end before their last element under the wording since 2025", () => {
    expect(days("2007-11-13/15", "exclusive")).toBe("2007-11-13 2007-11-14");
    expect(days("1900/1909", "exclusive")).toBe("1900-01-01 1908-12-31");
    expect(days("2007-03-01T13:00:00Z/2008-05-11T15:30:00Z", "exclusive")).toBe("2007-03-01 2008-05-11");
  });
});

// Draft BDQ tests of TDWG, snapshot 2026-07-29, CC BY 4.0: single cases by their LineNumber.
describe("the cases of the draft TDWG tests", () => {
  it.each([
    [435, "1962-11-01T10:00-0600", "1962-11-01 1962-11-01"],
    [437, "1949-01-15T12:34/1949-01-20T17:00", "1949-01-15 1949-01-20"],
    [439, "1963-03-08T14", "1963-03-08 1963-03-08"],
    [440, "1963-03-08T14:67-0600", "refused"],
    [442, "1963-03-08T4", "refused"],
    [443, "1963-03-08T14:0", "refused"],
    [447, "63", "refused"],
    [448, "0", "refused"],
    [449, "null", "refused"],
    [407, "10-28", "refused"],
    [409, "21-10-28", "refused"],
    [500, "1963-03-08X14:07-0600", "refused"],
    [512, "2021_06_03T24:00", "refused"],
    [751, "1949-01-15T12:34/", "refused"],
    [130, " ", "refused"],
  ])("case %i: %s", (_, eventDate, expected) => {
    expect(days(eventDate)).toBe(expected);
  });

  it.each([
    [1073, "1880-05-08", 86_400],
    [1074, "1880-05-08/10", 259_200],
    [1081, "2007", 31_536_000],
    [1082, "1980", 31_622_400],
  ])("case %i: %s lasts %i seconds", (_, eventDate, seconds) => {
    const interval = readEventDate(eventDate, { intervalEnd: "inclusive" });
    expect(isDateRefusal(interval) ? interval : lengthInDays(interval) * 86_400).toBe(seconds);
  });
});

describe("ISO 8601 beyond the examples", () => {
  it.each([
    ["2008-02-15/03-14", "2008-02-15 2008-03-14"],
    ["2007-12-14T13:30/15:30", "2007-12-14 2007-12-14"],
    ["2020-W10", "2020-03-02 2020-03-08"],
    ["2020W537", "2021-01-03 2021-01-03"],
    ["2020-W10/W11", "2020-03-02 2020-03-15"],
    ["2020-100/120", "2020-04-09 2020-04-29"],
    ["20100512", "2010-05-12 2010-05-12"],
    ["2007/2008-05", "2007-01-01 2008-05-31"],
    ["2018-08-29T24:00", "2018-08-29 2018-08-29"],
    ["2018-08-29T15:19:30.5+01:00", "2018-08-29 2018-08-29"],
  ])("%s is read", (eventDate, expected) => {
    expect(days(eventDate)).toBe(expected);
  });

  it.each([
    "1900/09",
    "2011-04-01/P1M",
    "2010/..",
    "2010/2011/2012",
    "0000-00-00",
    "0000-W01",
    "2018-08-29T22:00/02:00",
    "2010T12:00",
    "2021-W54-1",
    "2021-000",
  ])("%s is refused", (eventDate) => {
    expect(days(eventDate)).toBe("refused");
  });

  it("keeps the local date, whatever the zone", () => {
    expect(days("1963-12-31T23:30-06:00")).toBe("1963-12-31 1963-12-31");
  });
});

describe("the end of an interval", () => {
  it("at midnight, read exclusively, is the day before", () => {
    expect(days("2007-03-01T13:00/2007-03-03T00:00", "exclusive")).toBe("2007-03-01 2007-03-02");
  });

  it("read exclusively leaves the one day of an interval that would be empty", () => {
    expect(days("1973-06-20/1973-06-20", "exclusive")).toBe("1973-06-20 1973-06-20");
    expect(days("2011-04/2011-04", "exclusive")).toBe("2011-04-01 2011-04-30");
  });

  it("never reaches further when read exclusively, and gives back any two days when read inclusively", () => {
    const day = fc.integer({ min: dayNumber(1, 1, 1), max: dayNumber(9999, 12, 31) });
    fc.assert(
      fc.property(day, fc.nat(5000), (first, length) => {
        const last = Math.min(first + length, dayNumber(9999, 12, 31));
        const text = `${formatDay(first)}/${formatDay(last)}`;
        expect(days(text)).toBe(`${formatDay(first)} ${formatDay(last)}`);
        expect(days(text, "exclusive") <= days(text)).toBe(true);
        if (last > first) expect(days(`${formatDay(last)}/${formatDay(first)}`)).toBe("refused");
      }),
    );
  });

  it("never throws, whatever the text", () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom(..."0123456789-/TWZP:. ") }),
        (text) => void readEventDate(text, { intervalEnd: "exclusive" }),
      ),
    );
  });
});
