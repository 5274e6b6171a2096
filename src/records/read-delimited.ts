import { rmSync } from "node:fs";
import type { Database } from "../engine/database.ts";
import type { RecordField, SourceSetting } from "../scheme/settings.ts";
import { aboutFile, noKnownColumn, noRows } from "./about-file.ts";
import { mapColumns } from "./column-mapping.ts";
import { copyPlainRows } from "./copy-to-parquet.ts";
import type { FileFinding } from "./finding.ts";
import { delimiterOf, firstRow } from "./first-row.ts";
import { missingColumns } from "./missing-columns.ts";
import { readAtOnce } from "./read-at-once.ts";
import { type CarefulRead, readCarefully } from "./read-carefully.ts";
import { type Encoding, readBeginning, type TextFacts } from "./text-file.ts";

/** What reading one file gave. Row numbers count rows as a spreadsheet shows them: the header is row 1. */
export interface FileRead {
  fields: RecordField[];
  /** Records the file holds: `read`, `rescued` and `unreadable` together. */
  records: number;
  /** Rows read as they stand. */
  read: number;
  /** Numbers of the rows that were used after mending. */
  rescued: number[];
  unreadable: number;
  /** Number of the last row, blank ones counted. */
  lastRow: number;
  /**
   * How the rows of the Parquet file are numbered: by its column `file_row`; or, from row 2 on, with the rows left out
   * that are listed, those of them that were rescued standing in a file of their own (`mendedFile`).
   */
  numbering: "column" | number[];
  encoding: Encoding;
  delimiter: string;
  findings: FileFinding[];
}

/** A file, its name in findings, what `readTextFacts` found, its source, and the Parquet file to write. */
export interface FileToRead {
  path: string;
  name: string;
  facts: TextFacts;
  source: SourceSetting;
  target: string;
}

/** How a file is written, and which columns are wanted of it. */
export interface FileShape {
  encoding: Encoding;
  delimiter: string;
  headers: number;
  columns: ReadonlyMap<RecordField, number>;
}

/**
 * Reads one delimited file into a Parquet file of the record fields, whatever its encoding, line endings and
 * delimiter. The database reads it at once where it can; where it cannot, or would number rows otherwise than a
 * spreadsheet, the file is read row by row. Ragged and broken rows are mended where they can be, else counted and
 * reported: a file never stops a build. Where no row is usable, no Parquet file is written.
 */
export async function readDelimited(database: Database, file: FileToRead): Promise<FileRead> {
  const { path, name, facts, source } = file;
  const encoding = source.encoding ?? facts.encoding;
  const beginning = readBeginning(path, encoding);
  const delimiter = source.delimiter ?? delimiterOf(beginning);
  const headers = firstRow(beginning, delimiter);
  const mapping = mapColumns(headers, source.columns);
  const findings = aboutFile(name, { facts, encoding, headers, mapping });
  const shape = { encoding, delimiter, headers: headers.length, columns: mapping.columns };
  const read = (await readAtOnce(database, file, shape)) ?? (await readRowByRow(database, file, shape));
  const records = read.read + read.rescued.length + read.unreadable;
  if (records > 0)
    findings.push(
      ...(mapping.columns.size === 0
        ? [noKnownColumn(name, headers, delimiter)]
        : missingColumns(name, mapping, source.constants)),
    );
  if (records === 0) findings.push(noRows(name));
  const { findings: rows, ...counts } = read;
  return {
    fields: [...mapping.columns.keys()],
    records,
    ...counts,
    encoding,
    delimiter,
    findings: [...findings, ...rows],
  };
}

async function readRowByRow(
  database: Database,
  { path, name, target }: FileToRead,
  { encoding, delimiter, columns }: FileShape,
): Promise<CarefulRead & Pick<FileRead, "numbering">> {
  const copy = `${target}.csv`;
  try {
    const read = await readCarefully({ path, name, encoding, delimiter, columns: [...columns.values()], target: copy });
    if (read.read + read.rescued.length > 0) await copyPlainRows(database, copy, target, [...columns.keys()]);
    return { ...read, numbering: "column" };
  } finally {
    rmSync(copy, { force: true });
  }
}
