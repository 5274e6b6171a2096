import { type Database, sqlBeside, sqlPath, sqlText } from "../engine/database.ts";
import type { RecordField } from "../scheme/settings.ts";

const STATEMENT = sqlBeside(import.meta.url, "copy-to-parquet.sql");

/** Where the rows of a file that were used after mending stand, beside its Parquet file. */
export function mendedFile(parquet: string): string {
  return `${parquet}.mended`;
}

/**
 * Copies columns of a delimited file in UTF-8 to Parquet, as trimmed text.
 *
 * @param names what the file's columns are called in `columns`, all of them in order
 * @param columns the Parquet file's names, each with the column it is taken from
 * @param refused name of a table for the rows that do not fit; without it they are an error
 * @returns number of rows
 * @throws {Error} where the file cannot be read so
 */
export async function copyToParquet(
  database: Database,
  {
    file,
    target,
    header,
    delimiter,
    names,
    columns,
    refused,
  }: {
    file: string;
    target: string;
    header: boolean;
    delimiter: string;
    names: readonly string[];
    columns: ReadonlyMap<string, string>;
    refused?: string;
  },
): Promise<number> {
  const types = names.map((name) => `${sqlText(name)}: 'VARCHAR'`).join(", ");
  // Without it the first line break decides, which may stand in a cell.
  const newLine = header ? "" : ", new_line = '\\n'";
  const dialect = `header = ${header}, auto_detect = false, columns = {${types}}, delim = ${sqlText(delimiter)}, quote = '"', escape = '"', strict_mode = true${newLine}`;
  const rejects =
    refused === undefined
      ? ""
      : `, store_rejects = true, rejects_table = ${sqlText(refused)}, rejects_scan = ${sqlText(`${refused}_scan`)}, rejects_limit = 0`;
  await database.run(
    STATEMENT.replace("{columns}", () =>
      [...columns].map(([name, from]) => `trim(coalesce("${from}", '')) AS "${name}"`).join(", "),
    )
      .replace("{file}", () => sqlPath(file))
      .replace("{dialect}", () => dialect + rejects)
      .replace("{target}", () => sqlText(target)),
  );
  const [counted] = await database.rows<{ rows: number }>(
    `SELECT count(*) AS rows FROM read_parquet(${sqlPath(target)})`,
  );
  return counted?.rows ?? 0;
}

/** Copies what `readCarefully` wrote to Parquet: the row's number as `file_row`, then the fields. */
export async function copyPlainRows(
  database: Database,
  file: string,
  target: string,
  fields: readonly RecordField[],
): Promise<void> {
  const names = ["file_row", ...fields];
  await copyToParquet(database, {
    file,
    target,
    header: false,
    delimiter: ",",
    names,
    columns: new Map(names.map((name) => [name, name])),
  });
}

/** Writes what a query gives to Parquet, in its order. */
export async function copyQuery(database: Database, query: string, target: string): Promise<void> {
  await database.run(`COPY (${query}) TO ${sqlText(target)} (FORMAT parquet, COMPRESSION zstd, COMPRESSION_LEVEL 1)`);
}
