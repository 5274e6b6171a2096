import type { Database } from "../engine/database.ts";

/** Lets go of tables that only a check needed, for the measures after it need the memory. Those that are not there are passed over. */
export async function dropTables(database: Database, tables: readonly string[]): Promise<void> {
  for (const table of tables) await database.run(`DROP TABLE IF EXISTS ${table}`);
}
