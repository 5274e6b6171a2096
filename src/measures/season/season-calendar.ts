/** Days of each third of a month (1–10, 11–20, 21 to the end) in a year of 365 days. */
export const THIRD_DAYS: readonly number[] = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31].flatMap((days) => [
  10,
  10,
  days - 20,
]);

const THIRDS = new Uint8Array(366);
{
  let day = 1;
  THIRD_DAYS.forEach((days, third) => {
    THIRDS.fill(third, day, day + days);
    day += days;
  });
}

/**
 * Third of a month, 0 to 35, of a day of the season: 1 is 1 January; days above 365 are of the next year.
 *
 * @example thirdOfDay(114) // => 11, 21–30 April
 */
export function thirdOfDay(day: number): number {
  return THIRDS[day > 365 ? day - 365 : day] as number;
}

/**
 * The day of the year on which a month begins, in a year of 365 days.
 *
 * @param month 1 to 12
 * @example firstDayOfMonth(11) // => 305
 */
export function firstDayOfMonth(month: number): number {
  return 1 + THIRD_DAYS.slice(0, (month - 1) * 3).reduce((sum, days) => sum + days, 0);
}
