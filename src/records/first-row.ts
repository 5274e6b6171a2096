import { rowSplitter } from "./row-splitter.ts";

const DELIMITERS = [",", "\t", ";", "|"] as const;

/**
 * The delimiter that parts the first row of a text into most cells; a comma where none does.
 *
 * @example delimiterOf('"Site; place"\tDate\n') // => "\t"
 */
export function delimiterOf(beginning: string): string {
  const counts = DELIMITERS.map((delimiter) => ({ delimiter, cells: firstRow(beginning, delimiter).length }));
  return counts.reduce((best, other) => (other.cells > best.cells ? other : best)).delimiter;
}

/**
 * The trimmed cells of the first row of a text that is not blank; none where there is no such row.
 *
 * @example firstRow('a, "b"\n1,2\n', ",") // => ["a", "b"]
 */
export function firstRow(beginning: string, delimiter: string): string[] {
  const splitter = rowSplitter(delimiter);
  const row = splitter.push(beginning)[0] ?? splitter.end()[0];
  return (row?.cells ?? []).map((cell) => cell.trim());
}
