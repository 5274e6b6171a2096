import reference from "../reference/dates.json" with { type: "json" };

/** Dates with their answers from outside the project; sources in the file itself. */
export const DATES = reference;

/** Year, month and day of an ISO calendar date. */
export function split(date: string): [number, number, number] {
  const [year, month, day] = date.split("-").map(Number);
  return [year as number, month as number, day as number];
}
