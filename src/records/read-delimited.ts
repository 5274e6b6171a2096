import { rmSync } from "node:fs";
import type { Database } from "../engine/database.ts";
import type { RecordField, SourceSetting } from "../scheme/settings.ts";
import { aboutHeader, aboutRecords, aboutText } from "./about-file.ts";
import { mapColumns } from "./column-mapping.ts";
import { copyPlainRows } from "./copy-to-parquet.ts";
import type { FileRead } from "./file-read.ts";
import { type FoundHeader, findHeader, headerInWords } from "./header-row.ts";
import { readAtOnce } from "./read-at-once.ts";
import { type CarefulRead, readCarefully } from "./read-carefully.ts";
import { type Encoding, readBeginning, statedEncoding, type TextFacts } from "./text-file.ts";
import { textRows } from "./text-rows.ts";
import { unmappedColumns } from "./unmapped-columns.ts";

/** What reading a delimited file gave. */
export interface DelimitedRead extends FileRead {
  encoding: Encoding;
  delimiter: string;
  /** Row of the header; 0 where there is none. */
  headerRow: number;
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
  headerRow: number;
  headers: number;
  columns: ReadonlyMap<RecordField, number>;
}

/**
 * Reads one delimited file into a Parquet file of the record fields, whatever its encoding, line endings and
 * delimiter, and whatever stands before its header. The database reads it at once where it can; where it cannot, or
 * would number rows otherwise than a spreadsheet, the file is read row by row. Ragged and broken rows are mended where
 * they can be, else counted and reported: a file never stops a build. Where no row is usable, no Parquet file is written.
 */
export async function readDelimited(database: Database, file: FileToRead): Promise<DelimitedRead> {
  const { path, name, facts, source } = file;
  const encoding = source.encoding === undefined ? facts.encoding : statedEncoding(source.encoding);
  const header = findHeader(readBeginning(path, encoding), source, source.delimiter);
  const { delimiter, headers } = header;
  const mapping = mapColumns(headers, source.columns);
  const findings = [...aboutText(name, { facts, encoding }), ...aboutHeader(name, header, mapping)];
  const shape = { encoding, delimiter, headerRow: header.row, headers: headers.length, columns: mapping.columns };
  const read = (await readAtOnce(database, file, shape)) ?? (await readRowByRow(database, file, shape));
  const records = read.read + read.rescued.length + read.unreadable;
  findings.push(...aboutRecords(name, { records, header, mapping, constants: source.constants }));
  const { findings: rows, ...counts } = read;
  return {
    fields: [...mapping.columns.keys()],
    records,
    ...counts,
    encoding,
    delimiter,
    headerRow: header.row,
    findings: [...findings, ...rows],
    how: howRead(facts, encoding, header),
    unmapped: unmappedColumns(
      headers,
      mapping,
      header.below.map(({ cells }) => cells),
    ),
  };
}

async function readRowByRow(
  database: Database,
  { path, name, target }: FileToRead,
  { encoding, delimiter, headerRow, headers, columns }: FileShape,
): Promise<CarefulRead & Pick<FileRead, "numbering">> {
  const copy = `${target}.csv`;
  try {
    const rows = textRows(path, { encoding, delimiter, width: headers });
    const wanted = [...columns.values()];
    const read = await readCarefully({ rows, name, delimiter, headerRow, headers, columns: wanted, target: copy });
    if (read.read + read.rescued.length > 0) await copyPlainRows(database, copy, target, [...columns.keys()]);
    return { ...read, numbering: "column" };
  } finally {
    rmSync(copy, { force: true });
  }
}

const ENCODINGS: Readonly<Record<Encoding, string>> = {
  "utf-8": "UTF-8",
  "utf-16le": "UTF-16 LE",
  "utf-16be": "UTF-16 BE",
  "windows-1252": "Windows-1252",
};
const DELIMITERS: Readonly<Record<string, string>> = { ",": "comma", ";": "semicolon", "\t": "tab", "|": "bar" };

function howRead(
  facts: TextFacts,
  encoding: Encoding,
  { delimiter, row }: FoundHeader & { delimiter: string },
): string {
  const ends = { LF: "LF", CRLF: "CRLF", CR: "CR", mixed: "mixed line ends", none: "" }[facts.lineEnding];
  const parts = [ENCODINGS[encoding], DELIMITERS[delimiter] ?? `“${delimiter}”`, ends, headerInWords(row)];
  return parts.filter((part) => part !== "").join(", ");
}
