import { join } from "node:path";
import type { Database } from "../engine/database.ts";
import type { SourceSetting } from "../scheme/settings.ts";
import type { FileRead } from "./file-read.ts";
import { readDelimited } from "./read-delimited.ts";
import { readTextFacts } from "./text-file.ts";

/** A file, or a folder that is one archive, as a source names it. */
export interface RecordsInput {
  path: string;
  /** Its name in findings: its path inside the scheme's folder. */
  name: string;
  source: SourceSetting;
  /** A folder of our own for what is written while reading; it exists and is empty. */
  folder: string;
}

/** One table of records that was read. An archive or a workbook may hold several; their rows are numbered apart. */
export interface ReadPart {
  /** Its name in findings: that of the input, with the table's own inside it where there are several. */
  name: string;
  /** Name of its Parquet file in the input's folder; there is none where no row is usable. */
  parquet: string;
  result: FileRead;
}

/** Reads records in whichever format they come. Bad input gives findings, and never stops good input. */
export async function readRecords(
  database: Database,
  { path, name, source, folder }: RecordsInput,
): Promise<ReadPart[]> {
  const facts = await readTextFacts(path);
  const parquet = "rows.parquet";
  const result = await readDelimited(database, { path, name, facts, source, target: join(folder, parquet) });
  return [{ name, parquet, result }];
}
