import { streamXlsxRows } from "hucre/xlsx";
import type { TextRow } from "../row-splitter.ts";
import { cellText } from "./cell-text.ts";
import type { MergedDown } from "./sheet-marks.ts";

const ROWS_AT_ONCE = 500;
/** Rows of a sheet in the programs that write them; a number beyond is made up. */
const MOST_ROWS = 2 ** 20;

/**
 * The rows of a sheet, some at a time, blank ones left out. A cell merged over rows fills those under it; a row that has
 * nothing else stays blank.
 *
 * @param workbook bytes of the whole file
 * @param merged of that sheet
 * @throws {Error} where the workbook cannot be read
 */
export async function* sheetRows(
  workbook: Uint8Array,
  sheet: string,
  merged: readonly MergedDown[],
): AsyncGenerator<TextRow[]> {
  const fill = filler(merged);
  let some: TextRow[] = [];
  let last = 0;
  for await (const { index, values } of streamXlsxRows(workbook, { sheet })) {
    const row = index + 1;
    if (!(row > last)) throw new Error(`row ${row} stands after row ${last}`);
    if (row > MOST_ROWS) throw new Error(`row ${row} is beyond the ${MOST_ROWS} a sheet has`);
    last = row;
    const cells = values.map((value) => cellText(value));
    if (cells.every((cell) => cell.trim() === "")) continue;
    some.push({ row, cells: fill(row, cells), broken: false });
    if (some.length < ROWS_AT_ONCE) continue;
    yield some;
    some = [];
  }
  yield some;
}

/** Fills the cells under merged ones, row by row. */
function filler(merged: readonly MergedDown[]): (row: number, cells: string[]) => string[] {
  const waiting = merged.toSorted((one, other) => one.row - other.row);
  let open: (MergedDown & { value: string })[] = [];
  return (row, cells) => {
    open = open.filter(({ lastRow }) => lastRow >= row);
    for (const { column, value } of open) {
      while (cells.length < column) cells.push("");
      if ((cells[column - 1] ?? "").trim() === "") cells[column - 1] = value;
    }
    while ((waiting[0]?.row ?? Number.POSITIVE_INFINITY) <= row) {
      const one = waiting.shift();
      if (one?.row === row) open.push({ ...one, value: cells[one.column - 1] ?? "" });
    }
    return cells;
  };
}
