import { type Database, sqlBeside } from "../../engine/database.ts";
import { fillRows } from "../../engine/fill-rows.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import { type UseCounts, useRatio } from "./use-ratio.ts";

type CountRow = UseCounts & { taxon_id: string; caste: string; kind: string; term: string };

/**
 * Fills `surroundings_use`: for each taxon, caste and term of surroundings how often it was stated, the ratio of use to
 * what recorders visited, and whether it was stated often enough for the ratio to be given. A habitat is counted by visits,
 * a flower, nest site or host by taxa on visits. Visited is not preferred: recorders
 * look where flowers are, and write down the habitat when it is worth writing.
 */
export async function measureUse(database: Database, { settings: { surroundings } }: Scheme): Promise<void> {
  await fillRows(
    database,
    "surrounding_kinds",
    { kind: "text", of_visit: "boolean" },
    surroundings.kinds.map(({ id, field }) => ({ kind: id, of_visit: field === "habitat" })),
  );
  await database.run(sqlBeside(import.meta.url, "use-counts.sql"));
  const counted = await database.rows<CountRow>("SELECT * FROM use_counts ORDER BY taxon_id, caste, kind, term");
  const rows = counted.map((row) => {
    const reason = silence(row, surroundings);
    const { ratio, low, high } = useRatio(row);
    const judged = reason === "";
    return {
      ...row,
      ...{ n_taxon_term: row.a, n_term: row.b, n_taxon: row.c, n_all: row.n },
      ratio: judged ? ratio : null,
      low: judged ? low : null,
      high: judged && Number.isFinite(high) ? high : null,
      judged,
      reason,
    };
  });
  await fillRows(
    database,
    "surroundings_use",
    {
      ...{ taxon_id: "text", caste: "text", kind: "text", term: "text" },
      ...{ n_taxon_term: "integer", n_term: "integer", n_taxon: "integer", n_all: "integer" },
      ...{ ratio: "double", low: "double", high: "double", judged: "boolean", reason: "text" },
    },
    rows,
  );
}

function silence({ b, c, clusters }: CountRow, rules: Scheme["settings"]["surroundings"]): string {
  if (c < rules.minimum_visits) return `stated too seldom with it: ${c}, where ${rules.minimum_visits} are needed`;
  if (b < rules.minimum_visits_of_term)
    return `stated too seldom in all: ${b}, where ${rules.minimum_visits_of_term} are needed`;
  return clusters < 2 ? "all of it was stated in one 10 km square" : "";
}
