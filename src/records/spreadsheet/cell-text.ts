/** A cell as the spreadsheet library gives it. */
export type CellValue = string | number | boolean | Date | null;

/**
 * A cell as text, as a person sees it: dates by ISO 8601, with a time where they have one; a time alone as such; numbers
 * to the 15 figures a spreadsheet keeps, so without the tails of binary fractions. Formats of numbers do not matter.
 *
 * @param value dates in UTC
 * @returns empty text for no value
 * @example cellText(0.1 + 0.2) // => "0.3"
 * @example cellText(new Date(Date.UTC(2021, 4, 3))) // => "2021-05-03"
 */
export function cellText(value: CellValue): string {
  if (value === null) return "";
  if (typeof value === "number") return Number.isFinite(value) ? String(Number(value.toPrecision(15))) : "";
  if (value instanceof Date) return dateText(value);
  return String(value);
}

/** The days 0 of the two systems of dates: what stands on them and has a time is a time of day alone. */
const DAYS_ZERO = ["1899-12-31", "1904-01-01"];

function dateText(value: Date): string {
  if (Number.isNaN(value.getTime())) return "";
  const seconds = new Date(Math.round(value.getTime() / 1000) * 1000).toISOString().replace(/\.000Z$/, "");
  const [day = "", time = ""] = seconds.split("T");
  if (time === "00:00:00") return day;
  return DAYS_ZERO.includes(day) ? time : seconds;
}
