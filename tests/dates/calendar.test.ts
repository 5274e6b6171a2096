import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  dayNumber,
  dayOfYear,
  daysInMonth,
  daysInThird,
  formatDay,
  formatYear,
  isCalendarDate,
  isLeapYear,
  thirdOfYear,
  yearMonthDay,
} from "../../src/dates/calendar.ts";
import { DATES, split } from "./reference.ts";

/** 1 January of the year 1 to 31 December 9999. */
const anyDay = fc.integer({ min: dayNumber(1, 1, 1), max: dayNumber(9999, 12, 31) });

describe("examples", () => {
  it("hold", () => {
    expect(isLeapYear(1900)).toBe(false);
    expect(daysInMonth(2024, 2)).toBe(29);
    expect(isCalendarDate(2023, 2, 29)).toBe(false);
    expect(dayNumber(2000, 3, 1)).toBe(11017);
    expect(yearMonthDay(-1)).toEqual({ year: 1969, month: 12, day: 31 });
    expect(dayOfYear(dayNumber(2024, 3, 1))).toBe(61);
    expect(thirdOfYear(dayNumber(2024, 2, 29))).toBe(5);
    expect(daysInThird(2023, 5)).toBe(8);
    expect(formatDay(0)).toBe("1970-01-01");
    expect(formatYear(987)).toBe("0987");
  });
});

describe("the calendar", () => {
  it("agrees with the day of the year of Python, GNU date and R", () => {
    for (const { date, doy } of DATES.day_of_year)
      expect([date, dayOfYear(dayNumber(...split(date)))]).toEqual([date, doy]);
  });

  it("agrees with the thirds of every month of 2023 and of February 2024", () => {
    for (const { year, month, third, start, end, days } of [...DATES.thirds_2023, ...DATES.thirds_2024_feb]) {
      const index = (month - 1) * 3 + third - 1;
      expect([start, thirdOfYear(dayNumber(...split(start)))]).toEqual([start, index]);
      expect([end, thirdOfYear(dayNumber(...split(end)))]).toEqual([end, index]);
      expect([start, daysInThird(year, index)]).toEqual([start, days]);
    }
    for (const { date, index36 } of DATES.thirds) expect(thirdOfYear(dayNumber(...split(date)))).toBe(index36 - 1);
  });

  it("agrees with JavaScript's own proleptic Gregorian calendar in universal time", () => {
    fc.assert(
      fc.property(anyDay, (day) => {
        expect(formatDay(day)).toBe(new Date(day * 86_400_000).toISOString().slice(0, 10));
      }),
    );
  });

  it("counts day by day: the day after is the next day of the month, or the first of the next", () => {
    fc.assert(
      fc.property(anyDay, (day) => {
        const [today, tomorrow] = [yearMonthDay(day), yearMonthDay(day + 1)];
        expect(dayNumber(today.year, today.month, today.day)).toBe(day);
        expect(tomorrow.day).toBe(today.day === daysInMonth(today.year, today.month) ? 1 : today.day + 1);
      }),
    );
  });

  it("repeats after 400 years of 146,097 days, the Gregorian cycle", () => {
    fc.assert(
      fc.property(anyDay, (day) => {
        const { year, month, day: dayOfMonth } = yearMonthDay(day);
        expect(yearMonthDay(day + 146_097)).toEqual({ year: year + 400, month, day: dayOfMonth });
      }),
    );
  });

  it("has 365 or 366 days a year, as many as its 36 thirds", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9999 }), (year) => {
        const thirds = Array.from({ length: 36 }, (_, third) => daysInThird(year, third));
        const days = thirds.reduce((sum, length) => sum + length, 0);
        expect(days).toBe(isLeapYear(year) ? 366 : 365);
        expect(dayOfYear(dayNumber(year, 12, 31))).toBe(days);
      }),
    );
  });

  it("refuses days that do not exist", () => {
    for (const [year, month, day] of [
      [2023, 2, 29],
      [2023, 4, 31],
      [2023, 13, 1],
      [2023, 0, 1],
      [2023, 1, 0],
    ] as const) {
      expect(() => dayNumber(year, month, day)).toThrow(RangeError);
    }
  });

  it("writes years outside four digits with a sign, as ISO 8601 expands them", () => {
    expect([formatYear(-44), formatYear(12_000)]).toEqual(["-000044", "+012000"]);
  });
});
