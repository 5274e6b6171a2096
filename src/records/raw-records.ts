import { type Database, sqlBeside, sqlPath, sqlText } from "../engine/database.ts";
import { RECORD_FIELDS, type RecordField, type SourceSetting } from "../scheme/settings.ts";
import { mendedFile } from "./copy-to-parquet.ts";
import type { FileRead } from "./file-read.ts";

/** A file that was read: its source, its name in findings, what reading gave, and its Parquet file. */
export interface ReadFile {
  source: SourceSetting;
  name: string;
  parquet: string;
  result: FileRead;
}

/**
 * Lays the files that were read together as one view `raw_records`, with every record field as text (empty where a file
 * has none), the view `record_texts` over it with each record's key, and the table `files`. A record's number is its file's first number plus its row in the file.
 */
export async function layTogether(database: Database, files: readonly ReadFile[]): Promise<void> {
  const first = files.map((_, index) => files.slice(0, index).reduce((sum, { result }) => sum + result.lastRow, 0));
  const filler = await database.fill("files", {
    file_id: "integer",
    source: "text",
    file: "text",
    first_number: "integer",
  });
  filler.add({
    file_id: files.map((_, index) => index),
    source: files.map(({ source }) => source.id),
    file: files.map(({ name }) => name),
    first_number: first,
  });
  filler.done();
  const parts: string[] = [];
  for (const [index, file] of files.entries()) parts.push(...partsOf(file, index, first[index] ?? 0));
  const nothing = `SELECT 0 AS record_no, 0 AS file_id, '' AS source, ${RECORD_FIELDS.map((field) => `'' AS "${field}"`).join(", ")} WHERE false`;
  await database.run(
    `CREATE OR REPLACE VIEW raw_records AS ${parts.length === 0 ? nothing : parts.join("\nUNION ALL\n")}`,
  );
  await database.run(sqlBeside(import.meta.url, "record-texts.sql"));
}

function partsOf({ source, parquet, result }: ReadFile, index: number, first: number): string[] {
  const { numbering, read, rescued, fields } = result;
  const columns = fieldColumns(source, (field) => (fields.includes(field) ? `f."${field}"` : undefined));
  const part = (file: string, row: string) =>
    `SELECT (${first} + ${row})::INTEGER AS record_no, ${index} AS file_id, ${sqlText(source.id)} AS source, ${columns} FROM read_parquet(${sqlPath(file)}, file_row_number = true) AS f`;
  const byColumn = (file: string) => part(file, "f.file_row::INTEGER");
  if (numbering === "column") return read + rescued.length === 0 ? [] : [byColumn(parquet)];
  const main = read === 0 ? [] : [part(parquet, `f.file_row_number + 2 + ${rowsLeftOut(numbering)}`)];
  return rescued.length === 0 ? main : [...main, byColumn(mendedFile(parquet))];
}

/** How many of the rows left out stand before a row, as a search by halves over the row's place among those that are there. */
function rowsLeftOut(rows: readonly number[]): string {
  const search = (from: number, to: number): string => {
    if (from === to) return String(from);
    const middle = (from + to) >> 1;
    const placesBefore = (rows[middle] ?? 0) - 2 - middle;
    return `CASE WHEN f.file_row_number < ${placesBefore} THEN ${search(from, middle)} ELSE ${search(middle + 1, to)} END`;
  };
  return search(0, rows.length);
}

/** Every field as an expression: the file's column, the source's constant where that is empty, or empty text. */
function fieldColumns(source: SourceSetting, columnOf: (field: RecordField) => string | undefined): string {
  return RECORD_FIELDS.map((field) => {
    const column = columnOf(field);
    const constant = source.constants[field];
    const filled =
      column === undefined
        ? sqlText(constant ?? "")
        : constant === undefined
          ? column
          : `coalesce(nullif(${column}, ''), ${sqlText(constant)})`;
    return `${filled} AS "${field}"`;
  }).join(", ");
}
