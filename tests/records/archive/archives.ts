import { mkdirSync, symlinkSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { buffer } from "node:stream/consumers";
import { ZipFile } from "yazl";
import type { Database } from "../../../src/engine/database.ts";
import { readArchive } from "../../../src/records/archive/read-archive.ts";
import type { FileFinding } from "../../../src/records/finding.ts";
import { layTogether } from "../../../src/records/raw-records.ts";
import type { ReadPart } from "../../../src/records/read-records.ts";
import type { RecordField } from "../../../src/scheme/settings.ts";
import { makeTemporaryFolder } from "../../support/temporary-folder.ts";
import { source } from "../reading.ts";

/** Files of an archive by their path in it. */
export type Files = Readonly<Record<string, string | Uint8Array>>;

/** Files as a zip. */
export async function zipOf(files: Files): Promise<Buffer> {
  const zip = new ZipFile();
  for (const [path, content] of Object.entries(files)) zip.addBuffer(Buffer.from(content), path);
  zip.end();
  return await buffer(zip.outputStream);
}

/** Files as a folder, with links by their path and what they point at. */
export function folderOf(files: Files, links: Readonly<Record<string, string>> = {}): string {
  const folder = makeTemporaryFolder();
  for (const [path, content] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), content);
  }
  for (const [path, target] of Object.entries(links)) symlinkSync(target, join(folder, path));
  return folder;
}

/** A record as read: its part's name, its row, and the fields that are not empty. */
export type Row = { part: string; row: number } & Partial<Record<RecordField, string>>;

/** An archive as read: its parts, its records, and its findings. */
export interface ArchiveReading {
  parts: ReadPart[];
  rows: Row[];
  findings: FileFinding[];
  /** Findings as "file:row check". */
  told: string[];
}

/** Reads an archive, given as files, bytes or a folder, through the database and back. */
export async function readFiles(
  database: Database,
  archive: Files | Buffer | string,
  settings: object = {},
): Promise<ArchiveReading> {
  const folder = makeTemporaryFolder();
  const path = typeof archive === "string" ? archive : join(makeTemporaryFolder(), "walks.zip");
  if (Buffer.isBuffer(archive)) writeFileSync(path, archive);
  else if (typeof archive !== "string") writeFileSync(path, await zipOf(archive));
  const from = source({ files: "walks.zip", ...settings });
  const parts = await readArchive(database, { path, name: "walks.zip", source: from, folder });
  await layTogether(
    database,
    parts.map(({ name, parquet, result }) => ({ source: from, name, parquet: join(folder, parquet), result })),
  );
  const first = parts.map((_, index) => parts.slice(0, index).reduce((sum, { result }) => sum + result.lastRow, 0));
  const records = await database.rows<Record<string, string | number>>("SELECT * FROM raw_records ORDER BY record_no");
  const rows = records.map(({ record_no, file_id, source: _, ...fields }) => ({
    part: parts[Number(file_id)]?.name ?? "",
    row: Number(record_no) - (first[Number(file_id)] ?? 0),
    ...Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== "")),
  }));
  // Most tables here have few columns; what is said of those they lack is tested by itself.
  const findings = parts.flatMap(({ result }) => result.findings.filter(({ check }) => check !== "missing_column"));
  return { parts, rows, findings, told: findings.map(({ file, row, check }) => `${file}:${row} ${check}`) };
}

/** A term's IRI: Darwin Core's where it is given by its name. */
export function iri(term: string): string {
  return term.includes(":") ? term : `http://rs.tdwg.org/dwc/terms/${term}`;
}

/** A table of a description: its files, its columns' terms in order, and attributes beside. */
export interface Table {
  rowType: string;
  /** One file, or several parted by spaces. */
  file: string;
  /** Column of the id; none where it is null. */
  id?: number | null;
  /** Terms of columns, from 0; an empty one is no field. */
  columns: readonly string[];
  /** Fields as XML, beside the columns. */
  more?: string;
  /** Attributes as XML, in place of a comma and one header line. */
  attributes?: string;
}

/** A meta.xml with a core and extensions. */
export function metaXml(core: Table | undefined, ...extensions: Table[]): string {
  const tables = [
    ...(core === undefined ? [] : [tableXml("core", "id", core)]),
    ...extensions.map((table) => tableXml("extension", "coreid", table)),
  ];
  return `<?xml version="1.0" encoding="UTF-8"?>\n<archive xmlns="http://rs.tdwg.org/dwc/text/">${tables.join("\n")}</archive>`;
}

function tableXml(element: string, idElement: string, table: Table): string {
  const { rowType, file, id = 0, columns, more = "", attributes = 'ignoreHeaderLines="1"' } = table;
  const fields = columns.map((term, index) => (term === "" ? "" : `<field index="${index}" term="${iri(term)}"/>`));
  return `<${element} rowType="${iri(rowType)}" ${attributes}>
    <files>${file
      .split(" ")
      .map((location) => `<location>${location}</location>`)
      .join("")}</files>
    ${id === null ? "" : `<${idElement} index="${id}"/>`}${fields.join("")}${more}</${element}>`;
}
