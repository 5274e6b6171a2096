import { type Database, sqlBeside } from "../engine/database.ts";
import type { RecordDecision } from "../scheme/decisions-in-force.ts";

/**
 * Ways in which two places may be one, the surest first: the same place of a visit; the same 2 km square; the same 10 km
 * square where one of the two is known no better, and then only where each source has a single such record.
 */
const SQUARES = [
  { square: "visit_place", onlyWhere: "true" },
  { square: "tetrad", onlyWhere: "true" },
  { square: "hectad", onlyWhere: "count(*) FILTER (tetrad IS NULL) > 0 AND count(*) = count(DISTINCT source)" },
] as const;
/** First where both say the same of the caste, then where one of the two says nothing. */
const CASTES = ["coalesce(castes, '')", "''"] as const;

/**
 * Finds records that reached the scheme by two routes: table `twins` (record_no, twin_of: the record that counts, how).
 * By id first, then by what they say, then by what people ruled. Twins are linked and counted once, never deleted;
 * different castes, dates, taxa and specimens are never joined.
 *
 * @param inForce rulings, as `decisionsInForce` gives them
 */
export async function findTwins(database: Database, inForce: ReadonlyMap<string, RecordDecision>): Promise<void> {
  const run = (file: string) => database.run(sqlBeside(import.meta.url, file));
  await run("twins-by-id.sql");
  await run("likely-twins.sql");
  const pass = sqlBeside(import.meta.url, "twins-by-content.sql");
  for (const { square, onlyWhere } of SQUARES)
    for (const castes of CASTES)
      await database.run(
        pass.replaceAll("{square}", square).replaceAll("{castes}", castes).replaceAll("{only_where}", onlyWhere),
      );
  const ruled = pairsRuled(inForce);
  if (ruled.length === 0) return;
  const filler = await database.fill("ruled_pairs", { record_key: "text", other_key: "text", same: "boolean" });
  filler.add({
    record_key: ruled.map(({ key }) => key),
    other_key: ruled.map(({ other }) => other),
    same: ruled.map(({ same }) => same),
  });
  filler.done();
  await run("ruled-twins.sql");
}

function pairsRuled(inForce: ReadonlyMap<string, RecordDecision>): { key: string; other: string; same: boolean }[] {
  return [...inForce.values()].flatMap(({ recordKey: key, sameAs, notTheSame }) => [
    ...sameAs.map((other) => ({ key, other, same: true })),
    ...notTheSame.map((other) => ({ key, other, same: false })),
  ]);
}
