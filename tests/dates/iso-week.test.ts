import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dayNumber } from "../../src/dates/calendar.ts";
import { dayOfIsoWeek, isoWeek, isoWeeksInYear, weekday } from "../../src/dates/iso-week.ts";
import { DATES, split } from "./reference.ts";

const anyDay = fc.integer({ min: dayNumber(1, 2, 1), max: dayNumber(9999, 12, 31) });

describe("examples", () => {
  it("hold", () => {
    expect(weekday(0)).toBe(4);
    expect(isoWeek(dayNumber(2021, 1, 3))).toEqual({ year: 2020, week: 53, weekday: 7 });
    expect(isoWeeksInYear(2020)).toBe(53);
    expect(dayOfIsoWeek(2021, 53, 1)).toBeUndefined();
  });
});

describe("ISO weeks", () => {
  it("agree with Python, GNU date and R on 38 dates about the turn of the year", () => {
    expect(DATES.iso_weeks).toHaveLength(38);
    for (const { date, isoYear, week, weekday: day } of DATES.iso_weeks) {
      expect([date, isoWeek(dayNumber(...split(date)))]).toEqual([date, { year: isoYear, week, weekday: day }]);
    }
  });

  it("are 53 in the years that Python says, and 52 in the others", () => {
    const long = Array.from({ length: 71 }, (_, index) => 1990 + index).filter((year) => isoWeeksInYear(year) === 53);
    expect(long).toEqual(DATES.iso_53_week_years_1990_2060);
  });

  it("read back to their day", () => {
    fc.assert(
      fc.property(anyDay, (day) => {
        const { year, week, weekday: weekdayOfDay } = isoWeek(day);
        expect(dayOfIsoWeek(year, week, weekdayOfDay)).toBe(day);
      }),
    );
  });

  it("run from Monday to Sunday without a break", () => {
    fc.assert(
      fc.property(anyDay, (day) => {
        const [today, tomorrow] = [isoWeek(day), isoWeek(day + 1)];
        const sameWeek = today.year === tomorrow.year && today.week === tomorrow.week;
        expect(sameWeek).toBe(today.weekday < 7);
        expect(tomorrow.weekday).toBe((today.weekday % 7) + 1);
      }),
    );
  });

  it("have no eighth or zeroth day and no zeroth week", () => {
    expect([dayOfIsoWeek(2020, 1, 8), dayOfIsoWeek(2020, 1, 0), dayOfIsoWeek(2020, 0, 1)]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });
});
