import { join } from "node:path";
import { type Database, sqlPath, sqlText } from "./database.ts";

/** Writes tables to a folder, one Parquet file each, so that a later stage or build can take them up. */
export async function saveTables(database: Database, folder: string, tables: readonly string[]): Promise<void> {
  for (const table of tables)
    await database.run(
      `COPY ${table} TO ${sqlText(join(folder, `${table}.parquet`))} (FORMAT parquet, COMPRESSION zstd, COMPRESSION_LEVEL 1)`,
    );
}

/** Makes views of the tables `saveTables` wrote. */
export async function openTables(database: Database, folder: string, tables: readonly string[]): Promise<void> {
  for (const table of tables)
    await database.run(
      `CREATE OR REPLACE VIEW ${table} AS SELECT * FROM read_parquet(${sqlPath(join(folder, `${table}.parquet`))})`,
    );
}
