import { type Database, sqlText } from "../engine/database.ts";
import { RECORD_FIELDS, type RecordField, type SourceSetting } from "../scheme/settings.ts";
import type { FileRead } from "./read-delimited.ts";

/** A file that was read: its source, its name in findings, what reading gave, and its Parquet file. */
export interface ReadFile {
  source: SourceSetting;
  name: string;
  parquet: string;
  result: FileRead;
}

/**
 * Lays the files that were read together as one view `raw_records`, with every record field as text (empty where a file
 * has none), and the table `files`. A record's number is its file's first number plus its row in the file.
 */
export async function layTogether(database: Database, files: readonly ReadFile[]): Promise<void> {
  const first = files.map((_, index) => files.slice(0, index).reduce((sum, { result }) => sum + result.records + 1, 0));
  const filler = await database.fill("files", { file_id: "integer", source: "text", file: "text", first_number: "integer" });
  filler.add({
    file_id: files.map((_, index) => index),
    source: files.map(({ source }) => source.id),
    file: files.map(({ name }) => name),
    first_number: first,
  });
  filler.done();
  const parts: string[] = [];
  for (const [index, file] of files.entries()) {
    if (file.result.read > 0) parts.push(await readPart(database, file, index, first[index] ?? 0));
    if (file.result.rescued.length > 0) parts.push(await rescuedPart(database, file, index, first[index] ?? 0));
  }
  const nothing = `SELECT 0 AS record_no, 0 AS file_id, '' AS source, ${RECORD_FIELDS.map((field) => `'' AS "${field}"`).join(", ")} WHERE false`;
  await database.run(`CREATE OR REPLACE VIEW raw_records AS ${parts.length === 0 ? nothing : parts.join("\nUNION ALL\n")}`);
}

async function readPart(database: Database, { source, parquet, result }: ReadFile, index: number, first: number): Promise<string> {
  const gaps = `gaps_${index}`;
  const shifted = result.gaps.length > 0;
  if (shifted) {
    const filler = await database.fill(gaps, { after: "integer", shift: "integer" });
    let shift = 0;
    filler.add({ after: result.gaps.map(({ after }) => after), shift: result.gaps.map(({ rows }) => (shift += rows)) });
    filler.done();
    await database.run(`CREATE OR REPLACE TABLE ${gaps} AS SELECT after, max(shift) AS shift FROM ${gaps} GROUP BY after`);
  }
  const rowNumber = `${first} + f.file_row_number + 2${shifted ? " + coalesce(g.shift, 0)" : ""}`;
  const columns = fieldColumns(source, (field) => (result.fields.includes(field) ? `f."${field}"` : undefined));
  const join = shifted ? ` ASOF LEFT JOIN ${gaps} AS g ON g.after <= f.file_row_number` : "";
  return `SELECT ${rowNumber} AS record_no, ${index} AS file_id, ${sqlText(source.id)} AS source, ${columns} FROM read_parquet(${sqlText(parquet)}, file_row_number = true) AS f${join}`;
}

async function rescuedPart(database: Database, { source, result }: ReadFile, index: number, first: number): Promise<string> {
  const table = `rescued_${index}`;
  const filler = await database.fill(table, { row: "integer", ...Object.fromEntries(RECORD_FIELDS.map((field) => [`"${field}"`, "text" as const])) });
  filler.add({
    row: result.rescued.map(({ row }) => row),
    ...Object.fromEntries(RECORD_FIELDS.map((field) => [`"${field}"`, result.rescued.map(({ cells }) => cells[field] ?? "")])),
  });
  filler.done();
  return `SELECT ${first} + r.row AS record_no, ${index} AS file_id, ${sqlText(source.id)} AS source, ${fieldColumns(source, (field) => `r."${field}"`)} FROM ${table} AS r`;
}

/** Every field as an expression: the file's column, the source's constant where that is empty, or empty text. */
function fieldColumns(source: SourceSetting, columnOf: (field: RecordField) => string | undefined): string {
  return RECORD_FIELDS.map((field) => {
    const column = columnOf(field);
    const constant = source.constants[field];
    const filled = column === undefined ? sqlText(constant ?? "") : constant === undefined ? column : `coalesce(nullif(${column}, ''), ${sqlText(constant)})`;
    return `${filled} AS "${field}"`;
  }).join(", ");
}
