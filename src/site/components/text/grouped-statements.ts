/**
 * Rows under their headings, headings and rows in the order in which they first stand.
 *
 * @param rows any rows
 * @param headingOf the heading of a row
 * @example underHeadings([{ s: "a" }, { s: "b" }, { s: "a" }], ({ s }) => s).map(([s, rows]) => [s, rows.length]) // [["a", 2], ["b", 1]]
 */
export function underHeadings<T>(rows: readonly T[], headingOf: (row: T) => string): [heading: string, rows: T[]][] {
  return [...Map.groupBy(rows, headingOf)];
}
