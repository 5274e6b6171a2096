/** Something in a scheme's own texts and tables that does not agree with the rest of them. It never stops a build. */
export interface ContentFinding {
  /** What kind it is, in snake case: `size_differs`. */
  check: string;
  /** From the scheme's folder. */
  file: string;
  /** Row of a table, the header being row 1; null in a text. */
  row: number | null;
  field: string;
  /** What stands there. */
  value: string;
  /** What is wrong with it, in words that follow the value. */
  found: string;
  wayOut: string;
}

/**
 * A finding in one line, for the log.
 *
 * @example findingInWords({ file: "characters.csv", row: 3, field: "part", value: "colar", found: "is no part of the bee", … }) // "characters.csv row 3, part “colar” is no part of the bee; write collar"
 */
export function findingInWords({ file, row, field, value, found, wayOut }: ContentFinding): string {
  const place = row === null ? `${file},` : `${file} row ${row},`;
  return `${place} ${field} “${value}” ${found}; ${wayOut}`;
}
