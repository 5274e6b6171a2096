import { rmSync } from "node:fs";
import type { Database } from "../engine/database.ts";
import { sqlPath } from "../engine/database.ts";
import type { SourceSetting } from "../scheme/settings.ts";
import { aboutHeader, aboutRecords, fileFinding } from "./about-file.ts";
import { mapColumns } from "./column-mapping.ts";
import { copyQuery } from "./copy-to-parquet.ts";
import { type FileRead, nothingRead } from "./file-read.ts";
import type { FileFinding } from "./finding.ts";
import { parquetText } from "./parquet-text.ts";
import { LONGEST_CELL, TOO_LONG } from "./read-carefully.ts";
import { unmappedColumns } from "./unmapped-columns.ts";

/** A Parquet file of records, its name in findings, its source, and the Parquet file to write. */
export interface ParquetToRead {
  path: string;
  name: string;
  source: SourceSetting;
  target: string;
}

const ROWS_LOOKED_AT = 80;

/**
 * Reads a Parquet file of records: columns of any type as text, named as the headers of a table are. Its first record is
 * row 2, as under a header.
 */
export async function readParquet(database: Database, file: ParquetToRead): Promise<FileRead> {
  const aside = await database.aside();
  try {
    return await readWhole(aside, file);
  } catch (error) {
    // A column that is broken and not used may show only after the others were written.
    rmSync(file.target, { force: true });
    const fault = (error instanceof Error ? error.message : "unknown fault").split("\n")[0];
    const finding = fileFinding(file.name, {
      check: "file_damaged",
      severity: "blocks",
      message: `the Parquet file cannot be read: ${fault?.replaceAll(file.path, file.name)}`,
      wayOut: "get the file again, or export its records as CSV",
    });
    return nothingRead("Parquet", [finding]);
  } finally {
    aside.close();
  }
}

async function readWhole(database: Database, { path, name, source, target }: ParquetToRead): Promise<FileRead> {
  const from = `read_parquet(${sqlPath(path)}, binary_as_string = true)`;
  const described = await database.rows<{ column_name: string; column_type: string }>(`DESCRIBE SELECT * FROM ${from}`);
  const headers = described.map(({ column_name }) => column_name);
  const mapping = mapColumns(headers, source.columns);
  const texts = described.map(({ column_name, column_type }) => parquetText(column_name, column_type));
  const textOf = (column: number) => texts[column] ?? "''";
  const [counted] = await database.rows<{ records: number }>(`SELECT count(*) AS records FROM ${from}`);
  const records = counted?.records ?? 0;
  const header = { row: 1, headers, before: [] };
  const usable = mapping.columns.size > 0 && records > 0;
  const cut = usable ? await tooLong(database, { from, columns: [...mapping.columns.values()].map(textOf), name }) : [];
  if (usable) {
    const columns = [...mapping.columns].map(
      ([field, column]) => `trim(left(${textOf(column)}, ${LONGEST_CELL})) AS "${field}"`,
    );
    await copyQuery(database, `SELECT ${columns.join(", ")} FROM ${from}`, target);
  }
  const sample = await database.rows<Record<string, string>>(
    `SELECT ${texts.map((text, column) => `${text} AS c${column}`).join(", ")} FROM ${from} LIMIT ${ROWS_LOOKED_AT}`,
  );
  return {
    fields: [...mapping.columns.keys()],
    records,
    read: usable ? records : 0,
    rescued: [],
    unreadable: usable ? 0 : records,
    lastRow: records + 1,
    numbering: [],
    findings: [
      ...aboutHeader(name, header, mapping),
      ...aboutRecords(name, { records, header, mapping, constants: source.constants }),
      ...cut,
    ],
    how: "Parquet",
    unmapped: unmappedColumns(
      headers,
      mapping,
      sample.map((row) => Object.values(row)),
    ),
  };
}

/** A finding for each row with a cell that is cut; of many rows for the first hundred. */
async function tooLong(
  database: Database,
  { from, columns, name }: { from: string; columns: readonly string[]; name: string },
): Promise<FileFinding[]> {
  const rows = await database.rows<{ row: number; value: string }>(
    `SELECT n + 2 AS "row", value FROM (SELECT row_number() OVER () - 1 AS n, unnest([${columns.join(", ")}]) AS value FROM ${from})
     WHERE length(value) > ${LONGEST_CELL} ORDER BY n LIMIT 100`,
  );
  return rows.map(({ row, value }) => fileFinding(name, { row, value: value.slice(0, 200), ...TOO_LONG }));
}
