import { readFileSync } from "node:fs";
import { basename } from "node:path";
import { readXlsx } from "hucre/xlsx";
import Papa from "papaparse";
import { z } from "zod";
import { Mistake } from "../mistake.ts";
import { parseTable } from "../scheme/table-file.ts";
import { WORKLIST_COLUMNS } from "./worklist-columns.ts";

const text = z.string().default("");

/** A row of a worklist or a review pack that came back, as far as a ruling needs it. */
export const ReturnedRow = z.object({
  record: z.string().min(1, "leave the record's key as it was"),
  mark: text.describe("stands for what the record said when the list was made"),
  ruling: text,
  value: text,
  identification: text,
  part_seen: text,
  why: text,
  who: text,
});

/** A returned row that says something, with its file and row. */
export type ReturnedRow = z.infer<typeof ReturnedRow> & { file: string; row: number };

/**
 * Reads a worklist or a review pack that came back, CSV or workbook. Rows without a ruling and without an identification
 * are left out.
 *
 * @throws {Mistake} where the file is none, with row and field
 */
export async function readReturned(path: string): Promise<ReturnedRow[]> {
  const file = basename(path);
  const bytes = readFileSync(path);
  const isWorkbook = bytes.subarray(0, 2).toString("latin1") === "PK";
  const rows = parseTable(isWorkbook ? await workbookAsCsv(bytes, file) : bytes.toString("utf8"), file, ReturnedRow);
  return rows
    .filter(({ ruling, identification }) => ruling !== "" || identification !== "")
    .map((row) => ({ ...row, file }));
}

/** The first sheet with the columns of a worklist, as CSV: both kinds of file are then read by one contract. */
async function workbookAsCsv(bytes: Buffer, file: string): Promise<string> {
  const { sheets } = await readXlsx(bytes);
  const sheet = sheets.find(({ rows }) => rows[0]?.includes("record") && rows[0]?.includes("ruling"));
  if (sheet === undefined)
    throw new Mistake(
      "the workbook",
      "has no sheet with the columns of a worklist",
      `keep the columns ${WORKLIST_COLUMNS.slice(-7)
        .map(({ name }) => name)
        .join(", ")}`,
      { file },
    );
  return Papa.unparse(sheet.rows.map((row) => row.map((cell) => (cell === null ? "" : String(cell)))));
}
