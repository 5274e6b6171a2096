import { writeFileSync } from "node:fs";
import { writeXlsx } from "hucre/xlsx";
import type { Database } from "../engine/database.ts";
import { IDENTIFICATIONS, RULINGS } from "../scheme/decisions-file.ts";
import { worklistQuery } from "./worklist.ts";
import { type RULED_COLUMNS, WORKLIST_COLUMNS } from "./worklist-columns.ts";

/** A longer list is no list to work through, and would not fit in memory: the CSV has all of it. */
const MOST_ROWS = 20_000;

/**
 * Writes the worklist as a workbook: the list, with rulings to choose from, and a sheet that says what the columns hold.
 *
 * @returns how many rows it holds: the worst 20,000 at most
 */
export async function writeWorklistWorkbook(database: Database, file: string, condition?: string): Promise<number> {
  const rows = await database.rows<Record<string, string | number>>(
    `SELECT * FROM (${worklistQuery(condition)}) LIMIT ${MOST_ROWS}`,
  );
  const names = WORKLIST_COLUMNS.map(({ name }) => name);
  const last = Math.max(2, rows.length + 1);
  const choice = (column: (typeof RULED_COLUMNS)[number], values: readonly string[]) => {
    const letter = columnLetter(names.indexOf(column));
    return { type: "list" as const, values: [...values], allowBlank: true, range: `${letter}2:${letter}${last}` };
  };
  const workbook = await writeXlsx({
    sheets: [
      {
        name: "worklist",
        columns: WORKLIST_COLUMNS.map(({ name, width }) => ({ header: name, key: name, width })),
        data: rows,
        freezePane: { rows: 1 },
        autoFilter: { range: `A1:${columnLetter(names.length - 1)}${last}` },
        dataValidations: [choice("ruling", RULINGS.slice(0, 6)), choice("identification", IDENTIFICATIONS.slice(1))],
      },
      {
        name: "columns",
        columns: [
          { header: "column", key: "column", width: 16 },
          { header: "what stands in it", key: "says", width: 90 },
        ],
        data: WORKLIST_COLUMNS.map(({ name, says }) => ({ column: name, says })),
      },
    ],
  });
  writeFileSync(file, workbook);
  return rows.length;
}

/** Name of a spreadsheet's column: A to Z, then AA. */
function columnLetter(index: number): string {
  return index < 26
    ? String.fromCharCode(65 + index)
    : columnLetter(Math.floor(index / 26) - 1) + String.fromCharCode(65 + (index % 26));
}
