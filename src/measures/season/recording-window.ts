import { THIRD_DAYS, thirdOfDay } from "./season-calendar.ts";
import type { SettledRow } from "./shift.ts";

/** How the recording of some years is evened out: thirds of a month that all of them cover, and weights there. */
export interface RecordingWindow {
  /** Weight of a visit of a year on a day of the season, 0 outside the thirds that all years cover. */
  weight(year: number, day: number): number;
  /** Share of the rows' visits that lie outside. */
  readonly outside: number;
}

/**
 * Visits to the group in a third of a month, in such years together, that make its weight known to about a third. More would
 * cut off the ends of a season, and what is cut off at one end holds a shift back there.
 */
export const FEWEST_TOGETHER = 10;

/** About how many years are taken together: in a single year too few visits fall in a third of a month. */
const YEARS_TOGETHER = 5;

/**
 * Evens out when in the year people went recording, so that going out earlier reads as nothing else: a visit counts for the
 * days of its third of a month over the everyday visits anybody made in that third, in about five years together. Thirds
 * with too few visits in any such group of years are left out in all, or a season would seem to begin earlier once
 * people went out earlier.
 *
 * @param years in order; those told of
 * @example recordingWindow(rows, [2001, 2002, 2003, 2004, 2005], visits).outside // => 0.02
 */
export function recordingWindow(
  rows: readonly SettledRow[],
  years: readonly number[],
  groupVisits: ReadonlyMap<number, ArrayLike<number>>,
): RecordingWindow {
  const groups = Math.max(1, Math.round(years.length / YEARS_TOGETHER));
  const groupOf = new Map(years.map((year, index) => [year, Math.floor((index * groups) / years.length)]));
  const visits = Array.from({ length: groups }, () => new Float64Array(36));
  for (const [year, group] of groupOf)
    for (let third = 0; third < 36; third += 1) {
      const thirds = visits[group] as Float64Array;
      thirds[third] = (thirds[third] as number) + (groupVisits.get(year)?.[third] ?? 0);
    }
  const covered = THIRD_DAYS.map((_, third) => visits.every((thirds) => (thirds[third] as number) >= FEWEST_TOGETHER));
  // Scaled so that the weights of one year add up to about the number of its visits.
  const weights = visits.map((thirds) => {
    const mean = thirds.reduce((sum, own) => sum + own, 0) / 365;
    return THIRD_DAYS.map((days, third) => (covered[third] === true ? (days * mean) / (thirds[third] as number) : 0));
  });
  const weight = (year: number, day: number): number => weights[groupOf.get(year) ?? -1]?.[thirdOfDay(day)] ?? 0;
  let [within, all] = [0, 0];
  for (const { season_year, season_day, visits: count } of rows) {
    if (!groupOf.has(season_year)) continue;
    all += count;
    if (weight(season_year, season_day) > 0) within += count;
  }
  return { weight, outside: all === 0 ? 0 : 1 - within / all };
}
