import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dayNumber } from "../../src/dates/calendar.ts";
import { readEventDate } from "../../src/dates/event-date.ts";
import {
  beginsBefore,
  between,
  contains,
  type DateInterval,
  EARLIEST_LIKELY_DAY,
  formatInterval,
  intervalOf,
  isBeyond,
  isDateRefusal,
  lengthInDays,
  liesInside,
  thirdOf,
  upTo,
  yearOf,
} from "../../src/dates/interval.ts";

const day = fc.integer({ min: dayNumber(1600, 1, 1), max: dayNumber(2100, 12, 31) });
const anyInterval = fc
  .tuple(day, fc.integer({ min: 0, max: 3000 }))
  .map(([first, length]) => between(first, first + length, "range"));

/** Read with inclusive ends; a refusal would be a mistake of the test. */
function read(text: string): DateInterval {
  const interval = readEventDate(text, { intervalEnd: "inclusive" });
  if (isDateRefusal(interval)) throw new Error(interval.refused);
  return interval;
}

describe("examples", () => {
  it("hold", () => {
    expect(between(0, 2, "range")).toEqual({ first: 0, last: 2, precision: "range", openStart: false });
    expect(upTo(dayNumber(1949, 12, 31))).toEqual({ first: null, last: -7306, precision: "before", openStart: true });
    expect(intervalOf(2024, 2)).toEqual({ first: 19754, last: 19782, precision: "month", openStart: false });
    expect(lengthInDays(intervalOf(1971))).toBe(365);
    expect(liesInside(intervalOf(1975, 6), 1965, 1985)).toBe(true);
    expect(contains(intervalOf(1975), intervalOf(1975, 6))).toBe(true);
    expect(yearOf(intervalOf(1975, 6))).toBe(1975);
    expect(thirdOf(intervalOf(2024, 2))).toBeUndefined();
    expect(isBeyond(intervalOf(2300, 11, 1), dayNumber(2026, 6, 30))).toBe(true);
    expect(beginsBefore(intervalOf(1499), EARLIEST_LIKELY_DAY)).toBe(true);
    expect(formatInterval(intervalOf(1975, 6))).toBe("1975-06");
  });
});

describe("an interval and a period", () => {
  it("counts only when it lies wholly inside", () => {
    expect(liesInside(read("1965/1985"), 1960, 1979)).toBe(false);
    expect(liesInside(read("1965/1985"), 1980, 1999)).toBe(false);
    expect(liesInside(read("1965/1985"), 1965, 1985)).toBe(true);
    expect(liesInside(read("2005-12-31/2006-01-01"), 1990, 2005)).toBe(false);
    expect(liesInside(read("2005-12-31"), 1990, 2005)).toBe(true);
    expect(liesInside(read("2006-01-01"), 1990, 2005)).toBe(false);
  });

  it("fits a period open at the left when it is open at the left itself, and no other", () => {
    const before1950 = upTo(dayNumber(1949, 12, 31));
    expect(liesInside(before1950, null, 1979)).toBe(true);
    expect(liesInside(before1950, null, 1949)).toBe(true);
    expect(liesInside(before1950, null, 1948)).toBe(false);
    expect(liesInside(before1950, 1000, 1979)).toBe(false);
    expect(liesInside(read("1920"), null, 1979)).toBe(true);
  });

  it("is in at most one of two neighbouring periods", () => {
    fc.assert(
      fc.property(anyInterval, fc.integer({ min: 1700, max: 2090 }), (interval, year) => {
        const earlier = liesInside(interval, null, year);
        const later = liesInside(interval, year + 1, 9999);
        expect(earlier && later).toBe(false);
        if (interval.first === interval.last) expect(earlier || later).toBe(true);
      }),
    );
  });
});

describe("the third of a month of an interval", () => {
  it("is there only when the whole interval lies in it", () => {
    expect(thirdOf(read("2023-06-11/20"))).toBe(16);
    expect(thirdOf(read("2023-06-20/21"))).toBeUndefined();
    expect(thirdOf(read("2023-05-21/31"))).toBe(14);
    expect(thirdOf(read("2022-06-11/2023-06-12"))).toBeUndefined();
    expect(thirdOf(read("1975-06"))).toBeUndefined();
    expect(thirdOf(upTo(0))).toBeUndefined();
  });
});

describe("dates out of bounds", () => {
  // TDWG draft test VALIDATION_EVENTDATE_INRANGE (3cff4dc4), cases 135–148, snapshot 2026-07-29, CC BY 4.0.
  it("are the ones the draft test finds", () => {
    const lastDay = dayNumber(2026, 6, 30);
    const outOfBounds = (text: string) =>
      isBeyond(read(text), lastDay) || beginsBefore(read(text), EARLIEST_LIKELY_DAY);
    expect(
      ["1962-11-01T10:00-0600", "1949-01-15T12:34/1949-01-20T17:00", "1963-03-08T14", "1963-03"].filter(outOfBounds),
    ).toEqual([]);
    expect(["1499", "2300-11-01T10:00", "0032-11-01T10:00"].map(outOfBounds)).toEqual([true, true, true]);
  });

  it("leave a year that is still running alone, and find an end in a later year", () => {
    const lastDay = dayNumber(2026, 6, 30);
    expect([isBeyond(read("2026"), lastDay), isBeyond(read("2026-06"), lastDay)]).toEqual([false, false]);
    expect([isBeyond(read("2026-07-01"), lastDay), isBeyond(read("2020/2027"), lastDay)]).toEqual([true, true]);
    expect(beginsBefore(upTo(dayNumber(1949, 12, 31)), EARLIEST_LIKELY_DAY)).toBe(false);
  });
});

describe("an interval as text", () => {
  it("reads back to the same days", () => {
    fc.assert(
      fc.property(anyInterval, (interval) => {
        expect(read(formatInterval(interval))).toMatchObject({ first: interval.first, last: interval.last });
      }),
    );
  });

  it("is as short as the days allow", () => {
    expect(
      ["2000-01-01/2000-12-31", "2000-02-01/2000-02-29", "2000-02-01/2000-02-28"].map((text) =>
        formatInterval(read(text)),
      ),
    ).toEqual(["2000", "2000-02", "2000-02-01/2000-02-28"]);
    expect(formatInterval(upTo(dayNumber(1949, 12, 31)))).toBe("../1949-12-31");
  });
});

describe("containing", () => {
  it("goes with the length and both ends", () => {
    fc.assert(
      fc.property(anyInterval, anyInterval, (a, b) => {
        if (contains(a, b)) expect(lengthInDays(a)).toBeGreaterThanOrEqual(lengthInDays(b));
        expect(contains(a, b) && contains(b, a)).toBe(a.first === b.first && a.last === b.last);
        expect(contains(upTo(b.last), b)).toBe(true);
        expect(contains(b, upTo(b.last))).toBe(false);
      }),
    );
  });

  it("throws where an interval would end before it begins", () => {
    expect(() => between(1, 0, "range")).toThrow(RangeError);
  });
});
