import { type Database, sqlBeside } from "../../engine/database.ts";
import { fewestTaxa } from "../../names/fewest-taxa.ts";
import type { Scheme } from "../../scheme/scheme.ts";

/** Names of each square and period, numbered; `tangled` lists them where one may hold another. */
const NUMBERED = `
  CREATE OR REPLACE TABLE numbered_names AS
  SELECT row_number() OVER (ORDER BY grid, resolution_m, square, period) AS square_no, grid, resolution_m, square, period,
    count(*)::INTEGER AS names,
    CASE WHEN count(*) > 1 AND bool_or(taxon_id IN (SELECT counts_for FROM closure WHERE counts_for <> taxon_id))
      THEN string_agg(taxon_id, chr(31) ORDER BY taxon_id) END AS tangled
  FROM square_names GROUP BY grid, resolution_m, square, period`;

/**
 * Fills `square_effort` and `period_effort`: records, visits by the length of their list, complete lists, and the fewest
 * distinct taxa that explain the names of a square and period. Needs the sightings, visits, their lists and `square_names`.
 *
 * @example await fillSquareEffort(database, scheme) // SELECT visits, complete_lists, taxa FROM square_effort
 */
export async function fillSquareEffort(database: Database, { checklist }: Pick<Scheme, "checklist">): Promise<void> {
  const known = new Map<string, number>();
  const fewest = { square_no: [] as number[], taxa: [] as number[] };
  await database.run(NUMBERED);
  await database.batches(
    "SELECT square_no, tangled FROM numbered_names WHERE tangled IS NOT NULL ORDER BY square_no",
    (columns, size) => {
      for (let index = 0; index < size; index += 1) {
        const names = String(columns["tangled"]?.[index]);
        const taxa = known.get(names) ?? fewestTaxa(names.split("\u001f"), checklist);
        known.set(names, taxa);
        fewest.square_no.push(Number(columns["square_no"]?.[index]));
        fewest.taxa.push(taxa);
      }
    },
  );
  const filler = await database.fill("fewest_taxa", { square_no: "integer", taxa: "integer" });
  filler.add(fewest);
  filler.done();
  await database.run(sqlBeside(import.meta.url, "square-effort.sql"));
}
