import { describe, expect, it } from "vitest";
import { readDateColumns } from "../../src/dates/date-columns.ts";
import { formatInterval, isDateRefusal } from "../../src/dates/interval.ts";
import { type DateFields, type DateRules, readDate } from "../../src/dates/read-date.ts";
import { DATES } from "./reference.ts";

const iso: DateRules = { intervalEnd: "inclusive", format: "iso" };
const dayFirst: DateRules = { intervalEnd: "inclusive", format: "day-first", twoDigitPivot: 24 };

/** The interval as ISO text with the codes of its notes, or the refusal. */
function read(fields: DateFields, rules: DateRules = iso): string {
  const answer = readDate(fields, rules);
  if (isDateRefusal(answer)) return `refused: ${answer.refused}`;
  return [formatInterval(answer.interval), ...answer.notes.map(({ code }) => code)].join(" ");
}

describe("examples", () => {
  it("hold", () => {
    expect(read({ year: "2021", day: "29" })).toBe("2021 day_without_month");
    expect(readDateColumns({ year: "2024", month: "2", day: "30" }, { format: "iso" })).toEqual({
      refused: 'year "2024", month "2", day "30" names a day that does not exist: day 30 of 2024-02',
      wayOut: "correct the day, or leave it out",
    });
  });
});

// Draft BDQ tests of TDWG, snapshot 2026-07-29, CC BY 4.0: single cases by their LineNumber.
describe("the cases of the draft TDWG test VALIDATION_EVENT_CONSISTENT", () => {
  it.each([
    [456, { eventDate: "1949-09-15T12:34", year: "1949", month: "9", day: "15" }],
    [458, { eventDate: "1949-09-15T12:34", year: "1949", month: "9" }],
    [460, { eventDate: "1949-01-15T12:34/1949-01-20T17:00", startDayOfYear: "15", endDayOfYear: "20" }],
    [462, { eventDate: "1949-09-15T12:34", year: "1949" }],
    [465, { eventDate: "1981-01-03", year: "1981", month: "1", day: "3", startDayOfYear: "3", endDayOfYear: "3" }],
    [466, { eventDate: "1981-01", year: "1981", month: "1" }],
    [468, { eventDate: "1981-01/1981-12", year: "1981" }],
    [471, { eventDate: "1981-12-30/1982-01-03", startDayOfYear: "364", endDayOfYear: "3" }],
    [482, { eventDate: "1981-01-01/1981-12-31", year: "1981", startDayOfYear: "1", endDayOfYear: "365" }],
  ])("case %i is consistent", (_, fields) => {
    expect(read(fields)).not.toContain("columns_disagree");
  });

  it.each([
    [457, { eventDate: "1949-09-16T12:34", year: "1949", month: "9", day: "15" }],
    [459, { eventDate: "1949-12-09T12:34", year: "1948", month: "12", day: "9" }],
    [461, { eventDate: "1949-01-15T12:34/1949-01-20T17:00", startDayOfYear: "15", endDayOfYear: "21" }],
    [463, { eventDate: "1949-09-16T12:34", year: "1949", month: "8", day: "16" }],
    [470, { eventDate: "1981-01-10/1981-01-15", year: "1980", month: "1", startDayOfYear: "10", endDayOfYear: "15" }],
    [472, { eventDate: "1981-01", year: "1981", month: "1", startDayOfYear: "1", endDayOfYear: "31" }],
    [474, { eventDate: "1981", year: "1981", month: "1", day: "1", startDayOfYear: "1", endDayOfYear: "365" }],
    [
      476,
      {
        eventDate: "1981-01-01/1981-12-31",
        year: "1981",
        month: "1",
        day: "1",
        startDayOfYear: "1",
        endDayOfYear: "365",
      },
    ],
    [477, { eventDate: "1981-01-01/1981-12-31", year: "1981", startDayOfYear: "1", endDayOfYear: "366" }],
    [478, { eventDate: "1980/1981", year: "1980" }],
    [480, { eventDate: "1981-12-30/1982-01-03", year: "1981", startDayOfYear: "364", endDayOfYear: "3" }],
    [481, { eventDate: "1981-12-30/1982-01-03", year: "1981", startDayOfYear: "3", endDayOfYear: "364" }],
  ])("case %i is not", (_, fields) => {
    expect(read(fields)).toContain("columns_disagree");
  });
});

describe("the cases of the draft TDWG amendments of eventDate", () => {
  it.each([
    [766, { year: "2021", month: "10" }, "2021-10"],
    [767, { year: "2021", month: "10", day: "29" }, "2021-10-29"],
    [768, { year: "2021", day: "29" }, "2021 day_without_month"],
    [769, { year: "1420", month: "10", day: "29" }, "1420-10-29"],
    [
      770,
      { year: "2024", month: "2", day: "30" },
      'refused: year "2024", month "2", day "30" names a day that does not exist: day 30 of 2024-02',
    ],
    [771, { year: "-2000" }, 'refused: year "-2000" has no year of four digits'],
    [765, { year: "X" }, 'refused: year "X" has no year of four digits'],
    [774, { year: "2021" }, "2021"],
    [1026, { year: "2021", month: "10", day: "23rd" }, "2021-10-23"],
    [1034, { year: "2021", month: "IV" }, "2021-04"],
    [1063, { year: "2021", startDayOfYear: "5", endDayOfYear: "15" }, "2021-01-05/2021-01-15"],
    [
      1065,
      { year: "1901", startDayOfYear: "25", endDayOfYear: "15" },
      'refused: days of the year "25" to "15" end before they begin',
    ],
  ])("case %i", (_, fields, expected) => {
    expect(read(fields)).toBe(expected);
  });

  it("days of the year read as in the examples of the terms: 366 is 31 December of a leap year, 365 of another", () => {
    // Darwin Core terms startDayOfYear and endDayOfYear (tdwg/dwc, commit 4f1cb23).
    expect(read({ year: "2004", startDayOfYear: "366", endDayOfYear: "366" })).toBe("2004-12-31");
    expect(read({ year: "2004", startDayOfYear: "365", endDayOfYear: "365" })).toBe("2004-12-30");
    expect(read({ year: "2003", startDayOfYear: "365", endDayOfYear: "365" })).toBe("2003-12-31");
    expect(read({ year: "2003", startDayOfYear: "366", endDayOfYear: "366" })).toContain("refused");
    expect(read({ year: "2003", startDayOfYear: "1", endDayOfYear: "32" })).toBe("2003-01-01/2003-02-01");
  });
});

describe("which term counts", () => {
  it("is eventDate, then the columns, then the verbatim text", () => {
    expect(read({ eventDate: "1998-07-12", verbatimEventDate: "12/07/1998" }, dayFirst)).toBe("1998-07-12");
    expect(read({ year: "1998", month: "7", verbatimEventDate: "July 1998" })).toBe("1998-07");
    expect(read({ verbatimEventDate: "12/07/1998" }, dayFirst)).toBe("1998-07-12");
    expect(read({})).toBe("refused: no date");
    expect(read({ eventDate: " \u0000" })).toBe("refused: no date");
  });

  it("is the next one where eventDate is refused, with a note", () => {
    expect(read({ eventDate: "2023-02-29", year: "2023", month: "2" })).toBe("2023-02 event_date_not_read");
    expect(read({ eventDate: "2023-02-29" })).toBe(
      'refused: date "2023-02-29" has no day 29: the month ends with 2023-02-28',
    );
    expect(read({ eventDate: "03/04/2020", verbatimEventDate: "3 April 2020" })).toBe("2020-04-03 event_date_not_read");
  });

  it.each([
    ...DATES.invalid,
    "2010/..",
    "1949-01-15T12:34/",
    "/1950",
    "-1950",
    "2018-08-29T22:00/02:00",
    "1900/09",
    "0000-00-00",
  ])("is none where eventDate is %s and stands alone", (eventDate) => {
    expect(read({ eventDate })).toContain("refused");
    expect(read({ verbatimEventDate: eventDate }, dayFirst)).toContain("refused");
  });

  it("is eventDate as the source declares it, where it is not ISO 8601", () => {
    expect(read({ eventDate: "12/07/1998" }, dayFirst)).toBe("1998-07-12");
    // A record of a small published Darwin Core Archive (CC0).
    expect(read({ eventDate: "July 3, 2017", year: "2017", month: "7", day: "3" })).toBe(
      "2017-07-03 event_date_not_iso",
    );
  });
});

describe("notes", () => {
  it("tell a month that was made its first day, as in published data of oak processionary larvae (CC0)", () => {
    expect(read({ eventDate: "2005-06-01", year: "2005", verbatimEventDate: "jun/05" }, dayFirst)).toBe(
      "2005-06-01 finer_than_verbatim",
    );
    // Where the source says nothing of two-digit years, the date itself does.
    const undeclared = (eventDate: string, verbatimEventDate: string) => read({ eventDate, verbatimEventDate });
    expect(undeclared("2005-06-01", "jun/05")).toBe("2005-06-01 finer_than_verbatim");
    expect(undeclared("1975-06-01", "jun/75")).toBe("1975-06-01 finer_than_verbatim");
    expect(undeclared("1975-06-01", "jun/76")).toBe("1975-06-01 verbatim_disagrees");
  });

  it("tell a verbatim text of other days, and are silent where it is the same interval", () => {
    expect(read({ eventDate: "1998-07-12", verbatimEventDate: "13/07/1998" }, dayFirst)).toBe(
      "1998-07-12 verbatim_disagrees",
    );
    expect(read({ eventDate: "1973-06-20", verbatimEventDate: "1973-06-20/1973-06-20" })).toBe("1973-06-20");
  });

  it("tell a zero that stands for a day or month not known", () => {
    expect(read({ year: "1975", month: "6", day: "0" })).toBe("1975-06 zero_is_unknown");
    expect(read({ year: "1975", month: "0", day: "0" })).toBe("1975 zero_is_unknown");
  });

  it("tell an interval that would end otherwise under the other reading", () => {
    expect(read({ eventDate: "2007-11-13/15" })).toBe("2007-11-13/2007-11-15 interval_end");
    expect(read({ eventDate: "2007-11-13/15" }, { ...iso, intervalEnd: "exclusive" })).toBe(
      "2007-11-13/2007-11-14 interval_end",
    );
    expect(read({ eventDate: "2007-11-13/13" })).toBe("2007-11-13");
  });

  it("tell columns that cannot be read beside an eventDate", () => {
    expect(read({ eventDate: "1998-07-12", year: "1998", month: "13" })).toBe("1998-07-12 columns_not_read");
  });
});

describe("an interval of eventDate", () => {
  const exclusive: DateRules = { ...dayFirst, intervalEnd: "exclusive" };

  it.each(["2007-11-13/15", "２００７－１１－１３／１５", "2007-11-13 / 2007-11-15"])(
    "ends by the setting, in full-width figures and with spaces beside the slash too: %s",
    (eventDate) => {
      expect(read({ eventDate }, exclusive)).toMatch(/^2007-11-13\/2007-11-14/);
    },
  );

  it("that ends before it begins is never read in another order of day and month", () => {
    expect(read({ eventDate: "1900-03-09/02-05" }, exclusive)).toMatch(/^refused: .* ends before it begins$/);
  });

  it("or a column of any length is refused, and quoted in short", () => {
    for (const fields of [{ eventDate: "2000-04".repeat(20_000) }, { year: "1998", month: "7".repeat(100_000) }])
      expect(read(fields, dayFirst).length).toBeLessThan(300);
  });
});
