import { dayNumber, daysInMonth, formatDay, formatYear, thirdOfYear, yearMonthDay } from "./calendar.ts";

/**
 * How a date was stated. "range" is any two ends that are not one of the others, "before" an interval
 * open at the left, "season" a meteorological season named in words.
 */
export type DatePrecision = "day" | "week" | "month" | "season" | "year" | "decade" | "range" | "before";

/**
 * The days on one of which something happened: whole days since 1970-01-01, both ends inclusive, `first` ≤ `last`.
 * With `openStart` ("before 1950") nothing is known of the beginning and `first` is null.
 */
export type DateInterval =
  | {
      readonly first: number;
      readonly last: number;
      readonly precision: Exclude<DatePrecision, "before">;
      readonly openStart: false;
    }
  | { readonly first: null; readonly last: number; readonly precision: "before"; readonly openStart: true };

/** Why a text was not read as a date, in words for a finding: what was found, and the way out. */
export interface DateRefusal {
  readonly refused: string;
  readonly wayOut: string;
}

/** True when an answer is a refusal and not an interval. */
export function isDateRefusal<Answer extends object>(answer: Answer | DateRefusal): answer is DateRefusal {
  return "refused" in answer;
}

/**
 * An interval between two days, both inclusive. Throws a RangeError when they are the wrong way round.
 *
 * @example between(0, 2, "range") // { first: 0, last: 2, precision: "range", openStart: false }
 */
export function between(first: number, last: number, precision: Exclude<DatePrecision, "before">): DateInterval {
  if (first > last) throw new RangeError(`interval ends (${last}) before it begins (${first})`);
  return { first, last, precision, openStart: false };
}

/**
 * The interval of everything up to and including a day.
 *
 * @example upTo(dayNumber(1949, 12, 31)) // { first: null, last: -7306, precision: "before", openStart: true }
 */
export function upTo(last: number): DateInterval {
  return { first: null, last, precision: "before", openStart: true };
}

/**
 * Interval of an existing day, month or year: leave out `day`, or `month` and `day`, for the whole month or year.
 * Throws a RangeError where there is no such day or month.
 *
 * @example intervalOf(2024, 2) // { first: 19754, last: 19782, precision: "month", openStart: false }
 */
export function intervalOf(year: number, month?: number, day?: number): DateInterval {
  if (month === undefined) return between(dayNumber(year, 1, 1), dayNumber(year, 12, 31), "year");
  if (day === undefined)
    return between(dayNumber(year, month, 1), dayNumber(year, month, daysInMonth(year, month)), "month");
  return between(dayNumber(year, month, day), dayNumber(year, month, day), "day");
}

/**
 * Number of days in an interval, both ends counted; Infinity when it is open at the left.
 *
 * @example lengthInDays(intervalOf(1971)) // 365
 */
export function lengthInDays(interval: DateInterval): number {
  return interval.openStart ? Number.POSITIVE_INFINITY : interval.last - interval.first + 1;
}

/**
 * True when the whole interval lies in the years `fromYear` to `toYear`, both inclusive. `fromYear` null is a period
 * open at the left, the only kind that holds an interval open at the left.
 *
 * @example liesInside(intervalOf(1975, 6), 1965, 1985) // true
 */
export function liesInside(interval: DateInterval, fromYear: number | null, toYear: number): boolean {
  if (interval.last > dayNumber(toYear, 12, 31)) return false;
  if (fromYear === null) return true;
  return !interval.openStart && interval.first >= dayNumber(fromYear, 1, 1);
}

/**
 * True when every day of `inner` is a day of `outer`.
 *
 * @example contains(intervalOf(1975), intervalOf(1975, 6)) // true
 */
export function contains(outer: DateInterval, inner: DateInterval): boolean {
  if (inner.last > outer.last) return false;
  return outer.openStart || (!inner.openStart && inner.first >= outer.first);
}

/**
 * The year an interval lies in, or undefined when it spans years or is open at the left.
 *
 * @example yearOf(intervalOf(1975, 6)) // 1975
 */
export function yearOf(interval: DateInterval): number | undefined {
  if (interval.openStart) return undefined;
  const { year } = yearMonthDay(interval.first);
  return year === yearMonthDay(interval.last).year ? year : undefined;
}

/**
 * The third of a month (0 to 35) that holds the whole interval, or undefined when none does.
 *
 * @example thirdOf(intervalOf(2024, 2)) // undefined
 */
export function thirdOf(interval: DateInterval): number | undefined {
  // The longest third has 11 days, so a longer interval of the same third is of another year.
  if (lengthInDays(interval) > 11 || interval.openStart) return undefined;
  const third = thirdOfYear(interval.first);
  return third === thirdOfYear(interval.last) ? third : undefined;
}

/**
 * True for a date that lies in the future of `lastDay`: it begins after that day, or ends after the end of that
 * day's year. A month or year that is still running is not beyond. Whether that is a mistake the caller decides.
 *
 * @example isBeyond(intervalOf(2300, 11, 1), dayNumber(2026, 6, 30)) // true
 */
export function isBeyond(interval: DateInterval, lastDay: number): boolean {
  if (!interval.openStart && interval.first > lastDay) return true;
  return interval.last > dayNumber(yearMonthDay(lastDay).year, 12, 31);
}

/** 1582-11-15, the default earliest date of the draft TDWG test VALIDATION_EVENTDATE_INRANGE (3cff4dc4). */
export const EARLIEST_LIKELY_DAY = dayNumber(1582, 11, 15);

/**
 * True for a date that begins before `firstDay`. An interval open at the left counts only when it also ends before it.
 *
 * @example beginsBefore(intervalOf(1499), EARLIEST_LIKELY_DAY) // true
 */
export function beginsBefore(interval: DateInterval, firstDay: number): boolean {
  return interval.openStart ? interval.last < firstDay : interval.first < firstDay;
}

/**
 * ISO 8601 text of an interval, read back by `readEventDate` with inclusive ends: a day, month or year where it
 * is exactly that, otherwise both days. An interval open at the left is written as ISO 8601-2 does, "../1949-12-31".
 *
 * @example formatInterval(intervalOf(1975, 6)) // "1975-06"
 */
export function formatInterval(interval: DateInterval): string {
  if (interval.openStart) return `../${formatDay(interval.last)}`;
  const first = formatDay(interval.first);
  if (interval.first === interval.last) return first;
  const { year, month, day } = yearMonthDay(interval.first);
  if (day === 1 && interval.last === dayNumber(year, month, daysInMonth(year, month))) return first.slice(0, -3);
  if (day === 1 && month === 1 && interval.last === dayNumber(year, 12, 31)) return formatYear(year);
  return `${first}/${formatDay(interval.last)}`;
}
