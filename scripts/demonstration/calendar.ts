/** A day as the number of days since 1 January 1970. */
export type Day = number;

const MILLISECONDS = 86_400_000;

/** Days written before: the same days come again and again. */
const written = new Map<Day, string>();

/**
 * The day of a date.
 *
 * @param month 1 to 12
 * @example dayOf(1970, 2, 1) // 31
 */
export function dayOf(year: number, month: number, date: number): Day {
  return Math.round(Date.UTC(year, month - 1, date) / MILLISECONDS);
}

/**
 * Year, month from 1, date from 1 and day of the year from 1.
 *
 * @example partsOf(31) // { year: 1970, month: 2, date: 1, dayOfYear: 32 }
 */
export function partsOf(day: Day): { year: number; month: number; date: number; dayOfYear: number } {
  const moment = new Date(day * MILLISECONDS);
  const year = moment.getUTCFullYear();
  return {
    year,
    month: moment.getUTCMonth() + 1,
    date: moment.getUTCDate(),
    dayOfYear: day - dayOf(year, 1, 1) + 1,
  };
}

/** As written in ISO 8601. @example isoDate(31) // "1970-02-01" */
export function isoDate(day: Day): string {
  let text = written.get(day);
  if (text === undefined) {
    text = new Date(day * MILLISECONDS).toISOString().slice(0, 10);
    written.set(day, text);
  }
  return text;
}
