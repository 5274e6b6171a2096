import { dayNumber, yearMonthDay } from "./calendar.ts";

/** A day by ISO 8601 week: `week` 1 to 53, `weekday` 1 (Monday) to 7. The year of the week can differ from the date's. */
export interface IsoWeekDate {
  readonly year: number;
  readonly week: number;
  readonly weekday: number;
}

/**
 * ISO weekday, 1 Monday to 7 Sunday. 1970-01-01 was a Thursday.
 *
 * @example weekday(0) // 4
 */
export function weekday(day: number): number {
  return ((((day + 3) % 7) + 7) % 7) + 1;
}

/**
 * ISO 8601 week of a day: week 1 is the week with the year's first Thursday.
 *
 * @example isoWeek(dayNumber(2021, 1, 3)) // { year: 2020, week: 53, weekday: 7 }
 */
export function isoWeek(day: number): IsoWeekDate {
  const thursday = day - weekday(day) + 4;
  const year = yearMonthDay(thursday).year;
  return { year, week: Math.floor((thursday - dayNumber(year, 1, 1)) / 7) + 1, weekday: weekday(day) };
}

/**
 * Number of ISO weeks in a year, 52 or 53. 28 December always lies in the last one.
 *
 * @example isoWeeksInYear(2020) // 53
 */
export function isoWeeksInYear(year: number): number {
  return isoWeek(dayNumber(year, 12, 28)).week;
}

/**
 * Day number of an ISO week date, or undefined where the year has no such week or the week no such weekday.
 *
 * @example dayOfIsoWeek(2021, 53, 1) // undefined
 */
export function dayOfIsoWeek(year: number, week: number, isoWeekday: number): number | undefined {
  if (week < 1 || week > isoWeeksInYear(year) || isoWeekday < 1 || isoWeekday > 7) return undefined;
  const january4 = dayNumber(year, 1, 4);
  return january4 - weekday(january4) + 1 + (week - 1) * 7 + (isoWeekday - 1);
}
