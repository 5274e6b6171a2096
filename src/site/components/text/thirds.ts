const MONTHS = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;
/** Last day of each month; the last third of February takes the leap day in. */
const LAST_DAYS = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

function parts(third: number): { month: number; part: number } {
  if (!Number.isInteger(third) || third < 0 || third > 35)
    throw new RangeError(`third of a month ${third}: from 0 to 35`);
  return { month: Math.floor(third / 3), part: third % 3 };
}

/**
 * The days of a third of a month.
 *
 * @param third 0 for 1–10 January to 35 for 21–31 December
 * @throws RangeError outside 0 to 35
 * @example thirdDays(7) // "11–20 March"
 */
export function thirdDays(third: number): string {
  const { month, part } = parts(third);
  const days = ["1–10", "11–20", `21–${LAST_DAYS[month] ?? 31}`][part] ?? "";
  return `${days} ${MONTHS[month] ?? ""}`;
}

/**
 * A third of a month as people say it.
 *
 * @param third 0 to 35
 * @throws RangeError outside 0 to 35
 * @example thirdLoosely(7) // "mid March"
 */
export function thirdLoosely(third: number): string {
  const { month, part } = parts(third);
  return `${["early", "mid", "late"][part] ?? ""} ${MONTHS[month] ?? ""}`;
}

/** The name of a month. @param month 0 to 11 @example monthName(4) // "May" */
export function monthName(month: number): string {
  return MONTHS[month] ?? "";
}

/**
 * A date in words; a text that is no date of the form year-month-day stays as it is.
 *
 * @example longDate("2025-03-01") // "1 March 2025"
 */
export function longDate(text: string): string {
  const [, year, month, day] = text.match(/^(\d{4})-(\d{2})-(\d{2})$/) ?? [];
  const name = month === undefined ? undefined : MONTHS[Number(month) - 1];
  return name === undefined ? text : `${Number(day)} ${name} ${year ?? ""}`;
}
