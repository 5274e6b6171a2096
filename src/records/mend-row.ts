import type { RowRemark } from "./row-finding.ts";
import type { TextRow } from "./row-splitter.ts";

/** A row that is not as the header says: whether it can be used all the same, and what is to be said of it. */
export interface MendedRow {
  usable: boolean;
  finding: RowRemark;
}

/**
 * Judges a row against the number of headers. A row that is too short is filled up with empty cells; one that is too
 * long is used only if what is over is empty, which is nothing to speak of; a stray quotation mark is taken as text
 * where the cells are right.
 *
 * @returns undefined for a row there is nothing to say of
 * @example mendRow({ row: 2, cells: ["a"], broken: false }, 2)?.finding.check // => "ragged_row_filled"
 */
export function mendRow({ cells, broken, cut }: TextRow, headers: number): MendedRow | undefined {
  const over = cells.slice(headers);
  if (cut === true) return unreadable("the row is longer than any row can be", "look for a line break that is missing");
  if (broken && cells.length < headers)
    return unreadable(
      `a quotation mark stands where none can, and the row has ${cells.length} of ${headers} cells`,
      "double the quotation mark or take it out",
    );
  if (cells.length < headers)
    return {
      usable: true,
      finding: {
        check: "ragged_row_filled",
        severity: "ask",
        message: `the row has ${cells.length} of ${headers} cells; the last were taken as empty`,
        wayOut: "correct the row in the file",
      },
    };
  if (over.some((cell) => cell.trim() !== ""))
    return unreadable(
      `the row has ${cells.length} cells where the header has ${headers}`,
      "put cells that hold the delimiter between quotation marks",
    );
  if (broken)
    return {
      usable: true,
      finding: {
        check: "stray_quotation_mark",
        severity: "note",
        message: "a quotation mark stands where none can; it was taken as text",
        wayOut: "double it or take it out",
      },
    };
  return undefined;
}

function unreadable(message: string, wayOut: string): MendedRow {
  return { usable: false, finding: { check: "unreadable_row", severity: "ask", message, wayOut } };
}
