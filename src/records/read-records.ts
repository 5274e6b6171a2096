import { rmSync } from "node:fs";
import { join } from "node:path";
import type { Database } from "../engine/database.ts";
import type { SourceSetting } from "../scheme/settings.ts";
import { fileFinding } from "./about-file.ts";
import { readArchive } from "./archive/read-archive.ts";
import { type Detected, detectFormat } from "./detect-format.ts";
import { type FileRead, nothingRead } from "./file-read.ts";
import type { FileFinding } from "./finding.ts";
import { readDelimited } from "./read-delimited.ts";
import { readParquet } from "./read-parquet.ts";
import { readSpreadsheet } from "./spreadsheet/read-spreadsheet.ts";
import { readTextFacts } from "./text-file.ts";
import { undoGzip } from "./undo-gzip.ts";

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

/**
 * Reads records in whichever format they come: that of the source's settings, else what the file's bytes show. Bad input
 * gives findings, and never stops good input.
 *
 * @example (await readRecords(database, { path, name: "records/walks.csv.gz", source, folder }))[0]?.result.how // => "gzip, UTF-8, comma, LF, header in row 1"
 */
export async function readRecords(database: Database, input: RecordsInput): Promise<ReadPart[]> {
  const detected = await detectFormat(input.path);
  if (detected.kind === "gzip") return await readUnpacked(database, input);
  return await readAs(database, input, input.source.format === undefined ? detected : { kind: input.source.format });
}

async function readAs(database: Database, input: RecordsInput, detected: Detected): Promise<ReadPart[]> {
  const { path, name, source, folder } = input;
  const target = join(folder, "rows.parquet");
  const whole = (result: FileRead): ReadPart[] => [{ name, parquet: "rows.parquet", result }];
  switch (detected.kind) {
    case "archive":
      return await readArchive(database, input);
    case "spreadsheet":
      return await readSpreadsheet(database, input);
    case "parquet":
      return whole(await readParquet(database, { path, name, source, target }));
    case "delimited":
      return whole(await readDelimited(database, { path, name, facts: await readTextFacts(path), source, target }));
    case "gzip":
      return whole(foreign(name, { what: "packed by gzip twice", wayOut: "unpack it once" }));
    case "other":
      return whole(foreign(name, detected));
  }
}

/** What a gzip file holds is read as the file itself would be. */
async function readUnpacked(database: Database, input: RecordsInput): Promise<ReadPart[]> {
  const unpacked = join(input.folder, "unpacked.txt");
  const fault = await undoGzip(input.path, unpacked);
  if (fault !== undefined) {
    const result = foreign(input.name, {
      check: "file_damaged",
      what: `damaged and cannot be unpacked whole (${fault})`,
      wayOut: "get the file again",
    });
    return [{ name: input.name, parquet: "rows.parquet", result }];
  }
  try {
    const { format } = input.source;
    const detected = format === undefined ? await detectFormat(unpacked) : { kind: format };
    const parts = await readAs(database, { ...input, path: unpacked }, detected);
    return parts.map((part) => ({ ...part, result: { ...part.result, how: `gzip, ${part.result.how}` } }));
  } finally {
    rmSync(unpacked, { force: true });
  }
}

function foreign(
  name: string,
  { check = "foreign_file", what, wayOut }: { check?: FileFinding["check"]; what: string; wayOut: string },
): FileRead {
  const message = `the file is ${what}; nothing was read`;
  return nothingRead("not read", [fileFinding(name, { check, severity: "blocks", message, wayOut })]);
}
