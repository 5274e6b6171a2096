import { createWriteStream } from "node:fs";
import { pipeline } from "node:stream/promises";
import type { FileFinding } from "./finding.ts";
import { mendRow } from "./mend-row.ts";
import { type RowRemark, rowFinding } from "./row-finding.ts";
import type { TextRow } from "./row-splitter.ts";

/** What reading a table row by row gave. */
export interface CarefulRead {
  /** Rows that were as the header says. */
  read: number;
  /** Numbers of the rows that were used after mending. */
  rescued: number[];
  unreadable: number;
  /** Number of the last row. */
  lastRow: number;
  findings: FileFinding[];
}

/** No field of a record is longer than this; a cell that is has swallowed something. The database reads rows to 2 MB. */
export const LONGEST_CELL = 20_000;

/** What is said of a cell that is longer. */
export const TOO_LONG = {
  check: "cell_cut",
  severity: "ask",
  message: `a cell is longer than ${LONGEST_CELL} characters; the rest was left out`,
  wayOut: "look for a line break or a quotation mark that is missing",
} as const;

/**
 * Reads a table row by row, mends what can be mended, and writes the columns wanted as plain CSV without a header, the
 * row's number first: for files the database cannot read, or would number otherwise. The table is never held whole.
 *
 * @param rows some at a time, blank ones left out
 * @param headerRow number of the header's row; rows up to it are no records
 * @param headers how many headers there are
 * @param columns numbers of the columns wanted, from 0; with none, every row counts as unreadable and nothing is said
 * @param target the file to write
 */
export async function readCarefully({
  rows,
  name,
  delimiter,
  headerRow,
  headers,
  columns,
  target,
}: {
  rows: AsyncIterable<readonly TextRow[]>;
  name: string;
  delimiter: string;
  headerRow: number;
  headers: number;
  columns: readonly number[];
  target: string;
}): Promise<CarefulRead> {
  const result: CarefulRead = { read: 0, rescued: [], unreadable: 0, lastRow: 0, findings: [] };
  const say = (row: TextRow, remark: RowRemark) => result.findings.push(rowFinding(name, delimiter, row, remark));
  const use = (one: TextRow): string => {
    result.lastRow = one.row;
    if (one.row <= headerRow) return "";
    const mended = mendRow(one, headers);
    if (columns.length > 0 && mended !== undefined) say(one, mended.finding);
    if (columns.length === 0 || mended?.usable === false) {
      result.unreadable += 1;
      return "";
    }
    for (const column of columns) if ((one.cells[column]?.length ?? 0) > LONGEST_CELL) say(one, TOO_LONG);
    if (mended === undefined) result.read += 1;
    else result.rescued.push(one.row);
    return plainRow(one.row, one.cells, columns);
  };
  const plain = async function* () {
    for await (const some of rows) yield some.map(use).join("");
  };
  await pipeline(plain, createWriteStream(target));
  return result;
}

/** A row as `readCarefully` writes it: its number, then the columns wanted. */
export function plainRow(row: number, cells: readonly string[], columns: readonly number[]): string {
  return `${row},${columns.map((column) => quoted(cells[column] ?? "")).join(",")}\n`;
}

/** A cell that no reader can take otherwise. NUL is no text, and not every reader stands it. */
function quoted(cell: string): string {
  return cell === "" ? "" : `"${cell.slice(0, LONGEST_CELL).replaceAll("\0", "\uFFFD").replaceAll('"', '""')}"`;
}
