import { yearMonthDay } from "../dates/calendar.ts";
import { type DateInterval, liesInside, thirdOf } from "../dates/interval.ts";
import type { DateRules, ReadDate } from "../dates/read-date.ts";
import type { Settings } from "../scheme/settings.ts";

/** What the settings say about the dates of one source. */
export interface DatingRules extends DateRules {
  periods: Settings["periods"];
  /** Last day a record can be of: the edition's date. */
  lastDay: number;
}

/**
 * Where an interval counts: its days and years, and the numbers of the period and of the third of a month (0 to 35) that
 * hold all of it; null for none.
 *
 * @example placedInTime(intervalOf(1998, 7, 12), rules).third // => 19
 */
export function placedInTime(interval: DateInterval, rules: DatingRules) {
  const period = rules.periods.findIndex(({ from, to }) => liesInside(interval, from, to));
  return {
    first_day: interval.first,
    last_day: interval.last,
    first_year: interval.first === null ? null : yearMonthDay(interval.first).year,
    last_year: yearMonthDay(interval.last).year,
    period: period < 0 ? null : period,
    third: thirdOf(interval) ?? null,
  };
}

/**
 * What is said of an interval whose other reading would count otherwise: in another period or third of a month, or as
 * a single day. Null for all others, however their ends are read.
 *
 * @example otherwiseOf(readDate({ eventDate: "2007-11-13/15" }, rules), rules) // => null: both in the middle of November
 */
export function otherwiseOf({ interval, notes }: ReadDate, rules: DatingRules): string | null {
  const note = notes.find(({ otherwise }) => otherwise !== undefined);
  if (note?.otherwise === undefined) return null;
  const [own, other] = [interval, note.otherwise].map((one) => {
    const { period, third } = placedInTime(one, rules);
    return [period, third, one.first === one.last].join();
  });
  return own === other ? null : note.found;
}
