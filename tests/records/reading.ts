import { mkdtempSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { afterAll, beforeAll } from "vitest";
import { type Database, openDatabase } from "../../src/engine/database.ts";
import type { FileRead } from "../../src/records/file-read.ts";
import { layTogether } from "../../src/records/raw-records.ts";
import { type DelimitedRead, readDelimited } from "../../src/records/read-delimited.ts";
import { type ReadPart, readRecords } from "../../src/records/read-records.ts";
import { readTextFacts } from "../../src/records/text-file.ts";
import { type RecordField, SourceSetting } from "../../src/scheme/settings.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

/** A database for the tests of one file, opened before them and closed after. */
export function useDatabase(): () => Database {
  let database: Database | undefined;
  beforeAll(async () => {
    database = await openDatabase({ spillFolder: join(makeSpillFolder(), "spill"), threads: 2 });
  });
  afterAll(() => database?.close());
  return () => {
    if (database === undefined) throw new Error("the database is open only while tests run");
    return database;
  };
}

function makeSpillFolder(): string {
  return join(process.env["TMPDIR"] ?? "/tmp", `atlaswright-test-${process.pid}`);
}

/** A source as the settings give it. */
export function source(more: object = {}): SourceSetting {
  return SourceSetting.parse({ id: "walks", files: "records/walks.csv", ...more });
}

/** A file as read: what reading says, and its records with the fields that are not empty. */
export interface Reading extends DelimitedRead {
  rows: ({ row: number } & Partial<Record<RecordField, string>>)[];
}

/** Reads text or bytes as a file of records, through the database and back. */
export async function readText(
  database: Database,
  content: string | Uint8Array,
  settings: object = {},
  folder = makeTemporaryFolder(),
): Promise<Reading> {
  const path = join(folder, "walks.csv");
  writeFileSync(path, content);
  const parquet = join(folder, "rows.parquet");
  const from = source(settings);
  const result = await readDelimited(database, {
    path,
    name: "records/walks.csv",
    facts: await readTextFacts(path),
    source: from,
    target: parquet,
  });
  await layTogether(database, [{ source: from, name: "records/walks.csv", parquet, result }]);
  const records = await database.rows<Record<string, string | number>>("SELECT * FROM raw_records ORDER BY record_no");
  const rows = records.map(({ record_no, file_id: _, source: __, ...fields }) => ({
    row: Number(record_no),
    ...Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== "")),
  }));
  // Most texts here have few columns; what is said of those they lack is tested by itself.
  const findings = result.findings.filter(({ check }) => check !== "missing_column");
  return { ...result, findings, rows };
}

/** An input as read: its parts, and all their records with the fields that are not empty. */
export interface PartsRead {
  parts: ReadPart[];
  rows: ({ file: number; row: number } & Partial<Record<RecordField, string>>)[];
}

/**
 * Reads a file of records of any format, through the database and back.
 *
 * @param name of the file, by which some formats are known
 */
export async function readBytes(
  database: Database,
  name: string,
  content: string | Uint8Array,
  settings: object = {},
  folder = makeTemporaryFolder(),
): Promise<PartsRead> {
  const path = join(folder, name);
  writeFileSync(path, content);
  return await readInput(database, path, settings, folder);
}

/** Reads a file or folder of records that is there already. */
export async function readInput(
  database: Database,
  path: string,
  settings: object = {},
  folder = makeTemporaryFolder(),
): Promise<PartsRead> {
  // A folder never used before: the engine remembers files by their paths.
  const target = mkdtempSync(join(folder, "read-"));
  const from = source(settings);
  const parts = await readRecords(database, { path, name: `records/${basename(path)}`, source: from, folder: target });
  const files = parts.map(({ name, parquet, result }) => ({
    source: from,
    name,
    parquet: join(target, parquet),
    result,
  }));
  await layTogether(database, files);
  const records = await database.rows<Record<string, string | number>>(
    "SELECT r.record_no - f.first_number AS row, r.* FROM raw_records AS r JOIN files AS f USING (file_id) ORDER BY record_no",
  );
  const rows = records.map(({ row, record_no: _, file_id, source: __, ...fields }) => ({
    file: Number(file_id),
    row: Number(row),
    ...Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== "")),
  }));
  return { parts, rows };
}

/** Findings as "row 3: check", in order. */
export function told(reading: FileRead): string[] {
  return reading.findings.map(({ row, check }) => `row ${row}: ${check}`);
}
