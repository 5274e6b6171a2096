import { rmSync } from "node:fs";
import type { Database } from "../../engine/database.ts";
import type { SourceSetting } from "../../scheme/settings.ts";
import { aboutHeader, aboutRecords, fileFinding } from "../about-file.ts";
import { mapColumns } from "../column-mapping.ts";
import { copyPlainRows } from "../copy-to-parquet.ts";
import type { FileRead } from "../file-read.ts";
import type { FileFinding } from "../finding.ts";
import { type FoundHeader, headerInWords } from "../header-row.ts";
import { readCarefully } from "../read-carefully.ts";
import type { TextRow } from "../row-splitter.ts";
import { unmappedColumns } from "../unmapped-columns.ts";
import type { Workbook } from "./open-workbook.ts";
import type { WorkbookSheet } from "./workbook-sheets.ts";

/** A sheet to read, its name in findings, and the Parquet file to write. */
export interface SheetToRead {
  workbook: Workbook;
  sheet: WorkbookSheet;
  header: FoundHeader;
  source: SourceSetting;
  name: string;
  target: string;
}

/**
 * Reads one sheet of a workbook into a Parquet file of the record fields. Rows are numbered as the spreadsheet numbers
 * them.
 *
 * @throws {Error} where the sheet cannot be read
 */
export async function readSheet(
  database: Database,
  { workbook, sheet, header, source, name, target }: SheetToRead,
): Promise<FileRead> {
  const { headers, row } = header;
  const mapping = mapColumns(headers, source.columns);
  const outside = { cells: 0, row: 0 };
  const rows = evenRows(workbook.rows(sheet), headers.length, (one) => {
    if (one.row <= row) return;
    outside.cells += 1;
    outside.row ||= one.row;
  });
  const copy = `${target}.csv`;
  try {
    const read = await readCarefully({
      rows,
      name,
      delimiter: ", ",
      headerRow: row,
      headers: headers.length,
      columns: [...mapping.columns.values()],
      target: copy,
    });
    if (read.read > 0) await copyPlainRows(database, copy, target, [...mapping.columns.keys()]);
    const { findings, ...counts } = read;
    const records = read.read + read.unreadable;
    return {
      fields: [...mapping.columns.keys()],
      records,
      ...counts,
      numbering: "column",
      findings: [
        ...aboutHeader(name, header, mapping),
        ...aboutRecords(name, { records, header, mapping, constants: source.constants }),
        ...aboutCells(name, workbook.marks(sheet), outside),
        ...findings,
      ],
      how: `sheet ${sheet.name}, ${headerInWords(row)}`,
      unmapped: unmappedColumns(
        headers,
        mapping,
        header.below.map(({ cells }) => cells),
      ),
    };
  } finally {
    rmSync(copy, { force: true });
  }
}

/** Rows with as many cells as there are headers: empty cells at a row's end are not stored, and beside the table is no record. */
async function* evenRows(
  rows: AsyncIterable<readonly TextRow[]>,
  width: number,
  tellOutside: (row: TextRow) => void,
): AsyncGenerator<TextRow[]> {
  for await (const some of rows)
    yield some
      .filter((one) => {
        if (one.cells.slice(width).some((cell) => cell.trim() !== "")) tellOutside(one);
        return one.cells.slice(0, width).some((cell) => cell.trim() !== "");
      })
      .map((one) => ({ ...one, cells: Array.from({ length: width }, (_, column) => one.cells[column] ?? "") }));
}

function aboutCells(
  name: string,
  { withoutValue, mergedDown }: ReturnType<Workbook["marks"]>,
  outside: { cells: number; row: number },
): FileFinding[] {
  const findings: FileFinding[] = [];
  const [first] = withoutValue;
  if (first !== undefined)
    findings.push(
      fileFinding(name, {
        row: Number(first.replace(/^\D+/, "")) || 1,
        check: "formula_without_value",
        severity: "ask",
        value: withoutValue.slice(0, 20).join(", "),
        message: `${withoutValue.length === 1 ? "a cell holds a formula" : `${withoutValue.length} cells hold formulas`} without a saved value; taken as empty`,
        wayOut: "open the file in the spreadsheet program, save it, and name it again",
      }),
    );
  if (mergedDown.length > 0)
    findings.push(
      fileFinding(name, {
        row: mergedDown[0]?.row ?? 1,
        check: "merged_cells",
        severity: "note",
        value: String(mergedDown.length),
        message: "cells are merged over rows; each value was taken for all rows it spans",
        wayOut: "nothing to do if that is meant",
      }),
    );
  if (outside.cells > 0)
    findings.push(
      fileFinding(name, {
        row: outside.row,
        check: "cells_beside_table",
        severity: "note",
        value: "",
        message: `${outside.cells === 1 ? "a row has" : `${outside.cells} rows have`} cells in columns without a header, which are not used`,
        wayOut: "give the column a header if it holds a field",
      }),
    );
  return findings;
}
