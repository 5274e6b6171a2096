import type { FileFinding } from "./finding.ts";

const LONGEST_VALUE = 200;

/** What is said of a row, without its place. */
export type RowRemark = Pick<FileFinding, "check" | "severity" | "message" | "wayOut">;

/** A finding on a row as a whole, with the beginning of the row as its value. */
export function rowFinding(
  file: string,
  delimiter: string,
  { row, cells }: { row: number; cells: readonly string[] },
  remark: RowRemark,
): FileFinding {
  return { file, row, field: "", value: cells.join(delimiter).slice(0, LONGEST_VALUE), ...remark };
}
