import { type Database, sqlBeside } from "../../engine/database.ts";
import { fewestTaxa } from "../../names/fewest-taxa.ts";
import type { Scheme } from "../../scheme/scheme.ts";

/**
 * Names of each square and period: how many stand alone in the checklist, and those that hold or may be held by another,
 * which count for fewer taxa than names. The two add up, for a taxon that stands alone explains nothing else.
 */
const COUNTED = `
  CREATE OR REPLACE TABLE counted_names AS
  WITH related AS (
    SELECT taxon_id FROM closure WHERE counts_for <> taxon_id UNION SELECT counts_for FROM closure WHERE counts_for <> taxon_id
  )
  SELECT n.grid, n.resolution_m, n.square, n.period,
    (count(*) FILTER (r.taxon_id IS NULL))::INTEGER AS alone,
    string_agg(n.taxon_id, chr(31) ORDER BY n.taxon_id) FILTER (r.taxon_id IS NOT NULL) AS tangled
  FROM square_names AS n LEFT JOIN related AS r ON r.taxon_id = n.taxon_id
  GROUP BY n.grid, n.resolution_m, n.square, n.period`;

/**
 * Fills `square_effort` and `period_effort`: records, visits by the length of their list, complete lists, and the fewest
 * distinct taxa that explain the names of a square and period. Needs the sightings, visits, their lists and `square_names`.
 *
 * @example await fillSquareEffort(database, scheme) // SELECT visits, complete_lists, taxa FROM square_effort
 */
export async function fillSquareEffort(database: Database, { checklist }: Pick<Scheme, "checklist">): Promise<void> {
  await database.run(COUNTED);
  const found = await database.rows<{ tangled: string }>(
    "SELECT DISTINCT tangled FROM counted_names WHERE tangled IS NOT NULL ORDER BY tangled",
  );
  const tangled = found.map((row) => row.tangled);
  const filler = await database.fill("fewest_taxa", { tangled: "text", taxa: "integer" });
  filler.add({ tangled, taxa: tangled.map((names) => fewestTaxa(names.split("\u001f"), checklist)) });
  filler.done();
  await database.run(sqlBeside(import.meta.url, "square-effort.sql"));
}
