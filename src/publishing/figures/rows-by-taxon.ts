import type { Database } from "../../engine/database.ts";

/** Rows of a query that gives `taxon_id` first, by taxon, in the query's order and without it. */
export async function rowsByTaxon<Row>(database: Database, sql: string): Promise<Map<string, Row[]>> {
  const rows = await database.rows<Row & { taxon_id: string }>(sql);
  const groups = Map.groupBy(rows, ({ taxon_id }) => taxon_id);
  return new Map([...groups].map(([id, own]) => [id, own.map(({ taxon_id: _, ...row }) => row as Row)]));
}
