import { rmSync } from "node:fs";
import { join } from "node:path";
import type { Database } from "../../engine/database.ts";
import type { RecordField, SourceSetting } from "../../scheme/settings.ts";
import { copyToParquet } from "../copy-to-parquet.ts";
import type { FileFinding } from "../finding.ts";
import { type CarefulRead, readCarefully } from "../read-carefully.ts";
import type { ArchiveFiles } from "./archive-files.ts";
import { type ArchiveRemark, remarkFinding } from "./archive-remark.ts";
import { type Binding, bindFields, type TableFields } from "./bind-fields.ts";
import type { TableDescription } from "./description.ts";
import { locate } from "./locate.ts";
import { lookAtTable, type TableLook } from "./look-at-table.ts";
import { tableRows } from "./table-rows.ts";
import { termName } from "./terms.ts";

/** Terms of an archive that hold no field of a record and lead to one. */
export const LINKS = ["parentEventID", "accessURI", "identifier", "references"] as const;
export type Link = (typeof LINKS)[number];

/** One file of a table, read. */
export interface LoadedFile {
  /** Its path in the archive. */
  path: string;
  /** Its name in findings. */
  name: string;
  look: TableLook;
  fields: TableFields;
  links: Map<Link, Binding>;
  id: number | undefined;
  read: CarefulRead;
  parquet: string;
  findings: FileFinding[];
}

/** Files of a table, or of several of the same kind, read; and what is said of those that could not be. */
export interface LoadedTable {
  files: LoadedFile[];
  remarks: ArchiveRemark[];
}

/** The archive that is being read, for its tables. */
export interface Reading {
  database: Database;
  files: ArchiveFiles;
  /** The archive's name in findings. */
  archive: string;
  /** Folder of the description in the archive. */
  within: string;
  source: SourceSetting;
  /** Folder for Parquet files in between. */
  folder: string;
  /** The name in findings of a file of the archive. */
  nameOf(path: string): string;
}

/** Reads every file of the tables. */
export async function loadTables(
  reading: Reading,
  kind: string,
  tables: readonly TableDescription[],
): Promise<LoadedTable> {
  const loaded: LoadedTable = { files: [], remarks: [] };
  for (const table of tables)
    for (const location of table.locations) {
      const path = locate(reading.files, location, reading.within);
      const taken = typeof path === "string" ? await reading.files.take(path) : path;
      if (typeof path !== "string" || typeof taken !== "string") {
        if (typeof taken !== "string") loaded.remarks.push(taken);
        continue;
      }
      const parquet = join(reading.folder, `${kind}-${loaded.files.length}.parquet`);
      loaded.files.push(await loadFile(reading, table, { path, taken, parquet }));
    }
  return loaded;
}

async function loadFile(
  { database, source, nameOf }: Reading,
  table: TableDescription,
  { path, taken, parquet }: { path: string; taken: string; parquet: string },
): Promise<LoadedFile> {
  const name = nameOf(path);
  const look = await lookAtTable(taken, table, source);
  const headers = Array.from({ length: look.width }, (_, column) => look.header[column] ?? "");
  const fields = bindFields(table, headers, source.columns);
  const links = linksOf(table);
  const bound = [...fields.fields.values(), ...links.values(), { index: table.id }].map(({ index }) => index);
  const columns = [...new Set(bound)].filter((index) => index !== undefined && index < look.width) as number[];
  const read = await readRows(database, { path: taken, name, look, columns, target: parquet });
  const findings = [...look.remarks.map((remark) => remarkFinding(name, remark)), ...read.findings];
  return { path, name, look, fields, links, id: table.id, read, parquet, findings };
}

/** Reads the rows of a file into a Parquet file: `file_row`, then the columns, each named by `columnName`. */
async function readRows(
  database: Database,
  {
    path,
    name,
    look,
    columns,
    target,
  }: { path: string; name: string; look: TableLook; columns: readonly number[]; target: string },
): Promise<CarefulRead> {
  const copy = `${target}.csv`;
  const { delimiter, headers: headerRow } = look.shape;
  const rows = tableRows(path, look);
  const read = await readCarefully({ rows, name, delimiter, headerRow, headers: look.width, columns, target: copy });
  const names = ["file_row", ...columns.map(columnName)];
  const file = { file: copy, target, header: false, delimiter: ",", names };
  if (read.read + read.rescued.length > 0)
    await copyToParquet(database, { ...file, columns: new Map(names.map((column) => [column, column])) });
  rmSync(copy);
  return read;
}

/** The name of a column, numbered from 0, in the Parquet file of a table. */
export function columnName(index: number): string {
  return `c${index}`;
}

function linksOf({ fields }: TableDescription): Map<Link, Binding> {
  const links = new Map<Link, Binding>();
  for (const field of fields) {
    const link = LINKS.find((name) => name === termName(field.term));
    if (link !== undefined && !links.has(link)) links.set(link, field);
  }
  return links;
}

/** The fields at least one file of a table binds. */
export function fieldsOf({ files }: LoadedTable): Set<RecordField> {
  return new Set(files.flatMap(({ fields }) => [...fields.fields.keys()]));
}
