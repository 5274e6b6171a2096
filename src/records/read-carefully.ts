import { once } from "node:events";
import { createReadStream, createWriteStream } from "node:fs";
import type { FileFinding } from "./finding.ts";
import { mendRow } from "./mend-row.ts";
import { type RowRemark, rowFinding } from "./row-finding.ts";
import { rowSplitter, type TextRow } from "./row-splitter.ts";
import type { Encoding } from "./text-file.ts";

/** What reading a file row by row gave. */
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

const CHUNK = 1 << 20;
/** No field of a record is longer than this; a cell that is has swallowed something. The database reads rows to 2 MB. */
const LONGEST_CELL = 20_000;

const TOO_LONG = {
  check: "cell_cut",
  severity: "ask",
  message: `a cell is longer than ${LONGEST_CELL} characters; the rest was left out`,
  wayOut: "look for a line break or a quotation mark that is missing",
} as const;

/**
 * Reads a delimited file row by row, mends what can be mended, and writes the columns wanted as plain CSV without a
 * header, the row's number first: for files the database cannot read, or would number otherwise. The file is never
 * held whole.
 *
 * @param columns numbers of the columns wanted, from 0; with none, every row counts as unreadable and nothing is said
 * @param target the file to write
 */
export async function readCarefully({
  path,
  name,
  encoding,
  delimiter,
  columns,
  target,
}: {
  path: string;
  name: string;
  encoding: Encoding;
  delimiter: string;
  columns: readonly number[];
  target: string;
}): Promise<CarefulRead> {
  const result: CarefulRead = { read: 0, rescued: [], unreadable: 0, lastRow: 0, findings: [] };
  const say = (row: TextRow, remark: RowRemark) => result.findings.push(rowFinding(name, delimiter, row, remark));
  const out = createWriteStream(target);
  let headers: number | undefined;
  const use = (rows: readonly TextRow[]): string => {
    let text = "";
    for (const one of rows) {
      result.lastRow = one.row;
      if (headers === undefined) {
        headers = one.cells.length;
        continue;
      }
      const mended = mendRow(one, headers);
      if (columns.length === 0 || mended?.usable === false) result.unreadable += 1;
      else {
        for (const column of columns) if ((one.cells[column]?.length ?? 0) > LONGEST_CELL) say(one, TOO_LONG);
        text += plainRow(one.row, one.cells, columns);
        if (mended === undefined) result.read += 1;
        else result.rescued.push(one.row);
      }
      if (columns.length > 0 && mended !== undefined) say(one, mended.finding);
    }
    return text;
  };
  for await (const rows of rowsOf(path, encoding, delimiter)) if (!out.write(use(rows))) await once(out, "drain");
  out.end();
  await once(out, "finish");
  return result;
}

async function* rowsOf(path: string, encoding: Encoding, delimiter: string): AsyncGenerator<TextRow[]> {
  const decoder = new TextDecoder(encoding);
  const splitter = rowSplitter(delimiter);
  for await (const piece of createReadStream(path, { highWaterMark: CHUNK }))
    yield splitter.push(decoder.decode(piece as Buffer, { stream: true }));
  yield splitter.push(decoder.decode());
  yield splitter.end();
}

/** A row as `readCarefully` writes it: its number, then the columns wanted. */
export function plainRow(row: number, cells: readonly string[], columns: readonly number[]): string {
  return `${row},${columns.map((column) => quoted(cells[column] ?? "")).join(",")}\n`;
}

/** A cell that no reader can take otherwise. NUL is no text, and not every reader stands it. */
function quoted(cell: string): string {
  return cell === "" ? "" : `"${cell.slice(0, LONGEST_CELL).replaceAll("\0", "\uFFFD").replaceAll('"', '""')}"`;
}
