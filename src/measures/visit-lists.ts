import { type Database, sqlBeside } from "../engine/database.ts";
import { fewestTaxa } from "../names/fewest-taxa.ts";
import type { Scheme } from "../scheme/scheme.ts";

/** Names with a member or an aggregate on the same visit, which count for fewer taxa than names. */
const TANGLED = `
  SELECT visit, string_agg(DISTINCT taxon_id, chr(31) ORDER BY taxon_id) AS names
  FROM sightings
  WHERE visit IS NOT NULL AND present
  GROUP BY visit
  HAVING bool_or(taxon_id IN (SELECT counts_for FROM closure WHERE counts_for <> taxon_id)) AND count(DISTINCT taxon_id) > 1
  ORDER BY visit`;

/**
 * Fills `visit_lists`: each visit with its list length, the fewest distinct taxa that explain its names, its class, and
 * whether it was declared complete. Needs `sightings`, `visits` and `closure`; leaves the view `evidence` too.
 *
 * @example await fillVisitLists(database, scheme) // a list of terrestris and its group is of length 1
 */
export async function fillVisitLists(database: Database, { checklist }: Pick<Scheme, "checklist">): Promise<void> {
  const known = new Map<string, number>();
  const lengthOf = (names: string): number => {
    const length = known.get(names) ?? fewestTaxa(names.split("\u001f"), checklist);
    known.set(names, length);
    return length;
  };
  const visits: number[] = [];
  const lengths: number[] = [];
  await database.batches(TANGLED, (columns, size) => {
    for (let index = 0; index < size; index += 1) {
      visits.push(Number(columns["visit"]?.[index]));
      lengths.push(lengthOf(String(columns["names"]?.[index])));
    }
  });
  const filler = await database.fill("list_lengths", { visit: "integer", list_length: "integer" });
  filler.add({ visit: visits, list_length: lengths });
  filler.done();
  await database.run(sqlBeside(import.meta.url, "visit-lists.sql"));
}
