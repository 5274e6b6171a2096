import { type Database, sqlBeside } from "../../engine/database.ts";
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
  const kinds = await database.fill("surrounding_kinds", { kind: "text", of_visit: "boolean" });
  kinds.add({
    kind: surroundings.kinds.map(({ id }) => id),
    of_visit: surroundings.kinds.map(({ field }) => field === "habitat"),
  });
  kinds.done();
  await database.run(sqlBeside(import.meta.url, "use-counts.sql"));
  const counted = await database.rows<CountRow>("SELECT * FROM use_counts ORDER BY taxon_id, caste, kind, term");
  const rows = counted.map((row) => {
    const reason = silence(row, surroundings);
    const { ratio, low, high } = useRatio(row);
    const judged = reason === "";
    return {
      ...row,
      ratio: judged ? ratio : null,
      low: judged ? low : null,
      high: judged && Number.isFinite(high) ? high : null,
      judged,
      reason,
    };
  });
  const column = <Name extends keyof (typeof rows)[number]>(name: Name) => rows.map((row) => row[name]);
  const filler = await database.fill("surroundings_use", {
    taxon_id: "text",
    caste: "text",
    kind: "text",
    term: "text",
    n_taxon_term: "integer",
    n_term: "integer",
    n_taxon: "integer",
    n_all: "integer",
    ratio: "double",
    low: "double",
    high: "double",
    judged: "boolean",
    reason: "text",
  });
  filler.add({
    taxon_id: column("taxon_id"),
    caste: column("caste"),
    kind: column("kind"),
    term: column("term"),
    n_taxon_term: column("a"),
    n_term: column("b"),
    n_taxon: column("c"),
    n_all: column("n"),
    ratio: column("ratio"),
    low: column("low"),
    high: column("high"),
    judged: column("judged"),
    reason: column("reason"),
  });
  filler.done();
}

function silence({ b, c, clusters }: CountRow, rules: Scheme["settings"]["surroundings"]): string {
  if (c < rules.minimum_visits) return `stated too seldom with it: ${c}, where ${rules.minimum_visits} are needed`;
  if (b < rules.minimum_visits_of_term)
    return `stated too seldom in all: ${b}, where ${rules.minimum_visits_of_term} are needed`;
  return clusters < 2 ? "all of it was stated in one 10 km square" : "";
}
