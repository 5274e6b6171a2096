import { mkdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import type { Database } from "../../engine/database.ts";
import type { SourceSetting } from "../../scheme/settings.ts";
import { fileFinding, noRows } from "../about-file.ts";
import { mapColumns } from "../column-mapping.ts";
import { nothingRead } from "../file-read.ts";
import type { FileFinding } from "../finding.ts";
import { type FoundHeader, headerAmong } from "../header-row.ts";
import { missingColumns } from "../missing-columns.ts";
import type { ReadPart, RecordsInput } from "../read-records.ts";
import type { TextRow } from "../row-splitter.ts";
import { openWorkbook, type Workbook } from "./open-workbook.ts";
import { readSheet } from "./read-sheet.ts";
import type { WorkbookSheet } from "./workbook-sheets.ts";

/** A sheet with the header that was found among its first rows. */
interface LookedAt {
  sheet: WorkbookSheet;
  header: FoundHeader;
  /** True where it has columns for most of what a record needs. */
  records: boolean;
}

/**
 * Reads the sheets of a workbook (.xlsx): those the source names; else, of those that are not hidden, every one with
 * columns for most of what a record needs; else the first that is not empty. Sheets that are left out are said.
 *
 * @returns a part a sheet; one without records where the workbook cannot be read
 */
export async function readSpreadsheet(database: Database, input: RecordsInput): Promise<ReadPart[]> {
  const { path, name, source, folder } = input;
  const unpacked = join(folder, "unpacked");
  mkdirSync(unpacked);
  const workbook = await openWorkbook(path, unpacked);
  rmSync(unpacked, { recursive: true, force: true });
  if (typeof workbook === "string") return [unreadable(name, workbook)];
  try {
    const looks: LookedAt[] = [];
    for (const sheet of workbook.sheets) looks.push(await lookAt(workbook, sheet, source));
    const { chosen, findings } = chooseSheets(name, looks, source.sheet);
    const parts: ReadPart[] = [];
    for (const [index, { sheet, header }] of chosen.entries()) {
      const part = {
        name: chosen.length === 1 ? name : `${name}: ${sheet.name}`,
        parquet: `rows-${index + 1}.parquet`,
      };
      const target = join(folder, part.parquet);
      parts.push({
        ...part,
        result: await readSheet(database, { workbook, sheet, header, source, name: part.name, target }),
      });
    }
    const [first] = parts;
    if (first === undefined) return [{ name, parquet: "rows.parquet", result: nothingRead("spreadsheet", findings) }];
    first.result.findings.unshift(...findings);
    return parts;
  } catch (error) {
    return [unreadable(name, error instanceof Error ? error.message : "unknown fault")];
  }
}

function unreadable(name: string, fault: string): ReadPart {
  const finding = fileFinding(name, {
    check: "file_damaged",
    severity: "blocks",
    message: `the spreadsheet cannot be read: ${fault}`,
    wayOut: "open it in the program that made it, save it again, or save the sheet as CSV",
  });
  return { name, parquet: "rows.parquet", result: nothingRead("spreadsheet", [finding]) };
}

const ROWS_LOOKED_AT = 80;

async function lookAt(workbook: Workbook, sheet: WorkbookSheet, source: SourceSetting): Promise<LookedAt> {
  const rows: TextRow[] = [];
  for await (const some of workbook.rows(sheet)) {
    rows.push(...some);
    if (rows.length >= Math.max(ROWS_LOOKED_AT, source.header_row ?? 0)) break;
  }
  const header = headerAmong(rows, source);
  const mapping = mapColumns(header.headers, source.columns);
  return { sheet, header, records: missingColumns("", mapping, source.constants).length <= 1 };
}

function chooseSheets(
  name: string,
  looks: readonly LookedAt[],
  wanted: SourceSetting["sheet"],
): { chosen: LookedAt[]; findings: FileFinding[] } {
  const findings: FileFinding[] = [];
  const say = (severity: "ask" | "note", value: string, message: string, wayOut: string) =>
    findings.push(fileFinding(name, { check: "sheet_not_read", severity, value, message, wayOut }));
  const filled = looks.filter(({ header }) => header.headers.length > 0);
  if (wanted !== undefined) {
    const names = [wanted].flat();
    const there = looks.map(({ sheet }) => sheet.name).join(", ");
    for (const one of names.filter((sheetName) => !looks.some(({ sheet }) => sheet.name === sheetName)))
      say("ask", one, `the settings name sheet “${one}”, which the file does not have`, `name one of: ${there}`);
    return { chosen: looks.filter(({ sheet }) => names.includes(sheet.name)), findings };
  }
  const shown = filled.filter(({ sheet }) => !sheet.hidden);
  const withRecords = shown.filter(({ records }) => records);
  const chosen = withRecords.length > 0 ? withRecords : shown.slice(0, 1);
  if (filled.length === 0) findings.push(noRows(name));
  for (const { sheet, records } of filled) {
    if (chosen.some((one) => one.sheet === sheet)) continue;
    const hidden = sheet.hidden ? "is hidden" : "has no columns for most of what a record needs";
    say(
      sheet.hidden && records ? "ask" : "note",
      sheet.name,
      `sheet “${sheet.name}” ${hidden} and was not read`,
      "name it in sheet in the source if it holds records",
    );
  }
  return { chosen, findings };
}
