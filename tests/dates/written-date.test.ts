import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dayNumber, formatDay, yearMonthDay } from "../../src/dates/calendar.ts";
import { fullYear, hasMonthInWords, readDatePart, type WrittenDateRules } from "../../src/dates/date-part.ts";
import { isWeekdayWord, monthOfWord, seasonOfWord } from "../../src/dates/date-words.ts";
import { formatInterval, isDateRefusal } from "../../src/dates/interval.ts";
import { intervalOfPart, readWrittenDate } from "../../src/dates/written-date.ts";

const undeclared: WrittenDateRules = { format: "iso" };
const dayFirst: WrittenDateRules = { format: "day-first" };
const monthFirst: WrittenDateRules = { format: "month-first" };
const pivoted: WrittenDateRules = { format: "day-first", twoDigitPivot: 24 };
const foreign: WrittenDateRules = {
  format: "day-first",
  twoDigitPivot: 24,
  words: { months: { juni: 6, mrt: 3, mei: 5, marzo: 3 }, seasons: { lente: "spring" } },
};

/** The interval as ISO text, or "refused". */
function read(text: string, rules: WrittenDateRules): string {
  const interval = readWrittenDate(text, rules);
  return isDateRefusal(interval) ? "refused" : formatInterval(interval);
}

/** What is said of a refused date, with the way out. */
function refusal(text: string, rules: WrittenDateRules): string {
  const answer = readWrittenDate(text, rules);
  return isDateRefusal(answer) ? `${answer.refused}; ${answer.wayOut}` : "read";
}

describe("examples", () => {
  it("hold", () => {
    expect(readWrittenDate("18/V/1981", { format: "iso" })).toEqual({
      first: 4155,
      last: 4155,
      precision: "day",
      openStart: false,
    });
    expect(readDatePart("18/v/1981", { format: "iso" }, true, true)).toEqual({ day: 18, month: 5, year: 1981 });
    expect(hasMonthInWords("9.ii-10.iii.2000")).toBe(true);
    expect(fullYear(98, 24)).toBe(1998);
    expect(monthOfWord("viii")).toBe(8);
    expect(seasonOfWord("fall")).toBe("autumn");
    expect(isWeekdayWord("fri")).toBe(true);
    expect(intervalOfPart({ month: 2, day: 30 })).toEqual({ refused: "has no year", wayOut: "add the year" });
  });
});

// Draft BDQ tests of TDWG, snapshot 2026-07-29, CC BY 4.0: single cases by their LineNumber.
describe("the cases of the draft TDWG test AMENDMENT_EVENTDATE_FROM_VERBATIM", () => {
  it.each([
    [693, "Friday 29th Oct. 2021", "2021-10-29"],
    [694, "03/04/2020", "refused"],
    [695, "0377", "refused"],
    [696, "18/V/1981", "1981-05-18"],
    [697, "xi.1996", "1996-11"],
    [698, "1932.10.6", "1932-10-06"],
    [699, "15.10.1932", "1932-10-15"],
    [700, "1932年3月5日", "1932-03-05"],
    [701, "31 August 1932", "1932-08-31"],
    [702, "XX DEC 1932", "1932-12"],
    [704, "9.ii-10.iii.2000", "2000-02-09/2000-03-10"],
    [705, "Aug. 1987", "1987-08"],
    [706, "11-VII-1885", "1885-07-11"],
    [707, "1980s", "1980-01-01/1989-12-31"],
    [688, "X", "refused"],
    [410, "2021/10/28", "2021-10-28"],
    [56, "2021/04/03", "2021-04-03"],
    [409, "21-10-28", "refused"],
    [407, "10-28", "refused"],
  ])("case %i: %s is %s", (_, text, expected) => {
    expect(read(text, undeclared)).toBe(expected);
  });

  it("case 703, Danish, reads with its month in the vocabulary", () => {
    expect([read("5. juni 1932", undeclared), read("5. juni 1932", foreign)]).toEqual(["refused", "1932-06-05"]);
  });
});

// Examples of verbatimEventDate in Darwin Core (tdwg/dwc, commit 4f1cb23).
describe("the examples of the Darwin Core term verbatimEventDate", () => {
  it.each([
    ["spring 1910", "1910-03-01/1910-05-31"],
    ["Marzo 2002", "2002-03"],
    ["1999-03-XX", "1999-03"],
    ["17IV1934", "1934-04-17"],
  ])("%s is %s", (text, expected) => {
    expect(read(text, foreign)).toBe(expected);
  });
});

// Forms met in CC0 data of the Province East Flanders (oak processionary larvae) and in a small Darwin Core Archive.
describe("forms met in published data", () => {
  it.each([
    ["6/06/2007", "2007-06-06"],
    ["jun/07", "2007-06"],
    ["mrt/07", "2007-03"],
    ["mei/09", "2009-05"],
    ["July 3, 2017", "2017-07-03"],
  ])("%s is %s", (text, expected) => {
    expect(read(text, foreign)).toBe(expected);
  });

  it("a serial day number is 2 June 2010, in a record whose year is 2010, when the source declares a spreadsheet", () => {
    expect(read("40331", { format: "spreadsheet" })).toBe("2010-06-02");
    expect(refusal("40331", dayFirst)).toContain("set date_format of the source to spreadsheet");
  });
});

// Common practice in recording, without a published source.
describe("written dates", () => {
  it.each([
    ["12/07/1998", "1998-07-12"],
    ["12.7.1998", "1998-07-12"],
    ["1-2-1998", "1998-02-01"],
    ["3-Jun-2004", "2004-06-03"],
    ["12 June 1975", "1975-06-12"],
    ["12th of June 1975", "1975-06-12"],
    ["June 12th, 1975", "1975-06-12"],
    ["12 June 1975 14:30", "1975-06-12"],
    ["June 1975", "1975-06"],
    ["06/1975", "1975-06"],
    ["00/06/1975", "1975-06"],
    ["??/06/1975", "1975-06"],
    ["1975-00-00", "1975"],
    ["12-15/07/1998", "1998-07-12/1998-07-15"],
    ["12/07-15/07/1998", "1998-07-12/1998-07-15"],
    ["12/7/1998 to 15/7/1998", "1998-07-12/1998-07-15"],
    ["3-5 June 1975", "1975-06-03/1975-06-05"],
    ["May 3-5, 1975", "1975-05-03/1975-05-05"],
    ["3 & 4 June 1975", "1975-06-03/1975-06-04"],
    ["June-July 1975", "1975-06-01/1975-07-31"],
    ["28 Dec 1975 - 3 Jan 1976", "1975-12-28/1976-01-03"],
    ["1965–1985", "1965-01-01/1985-12-31"],
    ["1965-85", "1965-01-01/1985-12-31"],
    ["between 1965 and 1985", "1965-01-01/1985-12-31"],
    ["from 1950 to 1960", "1950-01-01/1960-12-31"],
    ["early 1980s", "1980-01-01/1989-12-31"],
    ["mid-June 1975", "1975-06"],
    ["summer 1975", "1975-06-01/1975-08-31"],
    ["winter 1975/76", "1975-12-01/1976-02-29"],
    ["before 1950", "../1949-12-31"],
    ["pre-1950", "../1949-12-31"],
    ["<1950", "../1949-12-31"],
    ["before June 1950", "../1950-05-31"],
    ["until 1950", "../1950-12-31"],
  ])("%s is %s", (text, expected) => {
    expect(read(text, dayFirst)).toBe(expected);
  });

  it("mark a season and a decade as what they are", () => {
    expect([readWrittenDate("summer 1975", dayFirst), readWrittenDate("1980s", dayFirst)]).toMatchObject([
      { precision: "season" },
      { precision: "decade" },
    ]);
  });

  it.each([
    [
      "03/04/2020",
      undeclared,
      'date "03/04/2020" does not say which number is the day and which the month; set date_format',
    ],
    ["30 February 1998", dayFirst, 'date "30 February 1998" names a day that does not exist: day 30 of 1998-02'],
    ["10/15/1998", dayFirst, "has no month 15; check the order of day and month"],
    ["13/07/1998", monthFirst, "has no month 13"],
    ["12.7.98", dayFirst, 'has a two-digit year "98" that does not say its century'],
    ["c. 1920", dayFirst, "does not say how far it may be off; write its bounds, such as 1915/1925"],
    ["1920?", dayFirst, "does not say how far it may be off"],
    ["after 1950", dayFirst, "is open at its end"],
    ["1900s", dayFirst, "write 1900/1909 or 1900/1999"],
    ["winter 1975", dayFirst, "write winter 1974/1975 or winter 1975/1976"],
    ["2007/08", dayFirst, "may be a month or two years"],
    ["28 Dec-3 Jan 1976", dayFirst, "ends before it begins"],
    ["12 June", dayFirst, "has no year"],
    ["June 07", pivoted, "has no year"],
    ["5-8/1998", dayFirst, "is not a date in a form that is read"],
    ["", dayFirst, "no date"],
  ])("refuse %s", (text, rules, said) => {
    expect(refusal(text, rules)).toContain(said);
  });
});

describe("the order of day and month", () => {
  it("is the declared one", () => {
    expect([read("12/07/1998", dayFirst), read("12/07/1998", monthFirst)]).toEqual(["1998-07-12", "1998-12-07"]);
  });

  it("is read undeclared exactly when the numbers leave one reading", () => {
    const day = fc.integer({ min: dayNumber(1000, 1, 1), max: dayNumber(2099, 12, 31) });
    fc.assert(
      fc.property(day, (number) => {
        const date = yearMonthDay(number);
        const dayThenMonth = `${date.day}/${date.month}/${date.year}`;
        const monthThenDay = `${date.month}/${date.day}/${date.year}`;
        expect([read(dayThenMonth, dayFirst), read(monthThenDay, monthFirst)]).toEqual([
          formatDay(number),
          formatDay(number),
        ]);
        const plain = date.day > 12 || date.day === date.month;
        expect(read(dayThenMonth, undeclared)).toBe(plain ? formatDay(number) : "refused");
      }),
    );
  });
});

describe("two-digit years", () => {
  it("lie in the hundred years about the pivot", () => {
    expect([
      read("12.7.98", pivoted),
      read("3-Jun-04", pivoted),
      read("1/1/24", pivoted),
      read("1/1/25", pivoted),
    ]).toEqual(["1998-07-12", "2004-06-03", "2024-01-01", "1925-01-01"]);
    fc.assert(
      fc.property(fc.nat(99), fc.nat(99), (digits, pivot) => {
        const year = fullYear(digits, pivot);
        expect(Number(year) % 100).toBe(digits);
        expect(Number(year)).toBeGreaterThan(1900 + pivot);
        expect(Number(year)).toBeLessThanOrEqual(2000 + pivot);
      }),
    );
  });
});

describe("any text", () => {
  it("is not read where a dash may part two months, two days or a date, or where a year has one figure", () => {
    for (const text of ["1998 7-8", "1998-7/8", "July 1998-12", "June-8 1998", "12/1998-7", "1/2/3", "12 Jul 8"])
      expect(read(text, pivoted)).toBe("refused");
    expect(read("1998 Jul 7-8", pivoted)).toBe("1998-07-07/1998-07-08");
    expect(read("July - 12 August 1998", pivoted)).toBe("1998-07-01/1998-08-12");
  });

  it("is not read as a spreadsheet's day before 1 March 1900, where spreadsheets count a day that never was", () => {
    for (const text of ["00000", "00001", "00060"]) expect(read(text, { format: "spreadsheet" })).toBe("refused");
    expect(read("00061", { format: "spreadsheet" })).toBe("1900-03-01");
  });

  it("of a hundred thousand characters is refused at once, and quoted in short", () => {
    for (const text of ["1-".repeat(50_000), "pre ".repeat(25_000), "1".repeat(100_000)])
      expect(refusal(text, pivoted).length).toBeLessThan(300);
  });

  it("is read or refused, and never throws", () => {
    const words = fc.constantFrom(
      "12",
      "7",
      "1998",
      "98",
      "june",
      "iv",
      "-",
      "/",
      ".",
      " ",
      "to",
      "before",
      "1980s",
      "xx",
      "spring",
      "–",
      "00",
      "?",
      "'",
    );
    fc.assert(
      fc.property(fc.array(words, { maxLength: 8 }), fc.constantFrom("", " "), (parts, gap) => {
        expect(() => readWrittenDate(parts.join(gap), pivoted)).not.toThrow();
      }),
      { numRuns: 1000 },
    );
  });
});
