import { createHash } from "node:crypto";
import { mkdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { type Database, sqlText } from "../engine/database.ts";
import { defused } from "../engine/defused.ts";
import type { DownloadsFile } from "./contracts.ts";
import type { Field, PublishedTable } from "./published-tables.ts";

export type DownloadEntry = DownloadsFile["files"][number];

const INVENTED: Field = {
  name: "invented",
  type: "boolean",
  description: "true: the records are invented, for demonstration",
};

/** Fields of a table as published: a scheme of invented records adds a column that says so. */
export function fieldsOf(table: PublishedTable, invented: boolean): Field[] {
  return invented ? [...table.fields, INVENTED] : table.fields;
}

/**
 * Writes one table as CSV (RFC 4180, UTF-8 without byte order mark) and Parquet, sorted, so that the same input gives
 * the same bytes. Texts that a spreadsheet would run as a formula begin with an apostrophe, in both.
 * The rows stay in the database as `published_<name>`.
 *
 * @param folder where the files go; it is made if need be
 * @returns what the list of downloads says of both files
 * @example (await writeTable(database, publishedTable("taxa"), { folder: "data/1", invented: false })).map(({ path }) => path) // => ["taxa.csv", "taxa.parquet"]
 */
export async function writeTable(
  database: Database,
  table: PublishedTable,
  { folder, invented }: { folder: string; invented: boolean },
): Promise<DownloadEntry[]> {
  mkdirSync(folder, { recursive: true });
  const fields = fieldsOf(table, invented);
  const columns = fields.map((field) =>
    field === INVENTED
      ? "true AS invented"
      : field.type === "string"
        ? `${defused(field.name)} AS ${field.name}`
        : field.name,
  );
  const written = `published_${table.name}`;
  // The order is lost on several threads where anything but the writing comes after the sorting.
  await database.run(
    `CREATE OR REPLACE TEMP TABLE ${written} AS SELECT ${columns.join(", ")} FROM (${table.query}) ORDER BY ${table.order ?? "ALL"}`,
  );
  const [{ rows } = { rows: 0 }] = await database.rows<{ rows: number }>(`SELECT count(*) AS rows FROM ${written}`);
  const entries: DownloadEntry[] = [];
  for (const [format, options] of [
    ["csv", "FORMAT csv, HEADER"],
    ["parquet", "FORMAT parquet, COMPRESSION zstd, ROW_GROUP_SIZE 20480"],
  ] as const) {
    const path = `${table.name}.${format}`;
    await database.run(`COPY ${written} TO ${sqlText(join(folder, path))} (${options})`);
    entries.push(describeFile(folder, path, { table: table.name, title: table.title, format, rows, fields }));
  }
  return entries;
}

/** Size and SHA-256 of a written file, with what is known of its content. */
export function describeFile(
  folder: string,
  path: string,
  about: Pick<DownloadEntry, "table" | "title" | "format" | "rows" | "fields">,
): DownloadEntry {
  const file = join(folder, path);
  return {
    path,
    ...about,
    fields: about.fields.map(({ name, type, description }) => ({ name, type, description })),
    bytes: statSync(file).size,
    sha256: createHash("sha256").update(readFileSync(file)).digest("hex"),
  };
}
