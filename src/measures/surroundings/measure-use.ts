import { type Database, sqlBeside } from "../../engine/database.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import { type UseCounts, useRatio } from "./use-ratio.ts";

type CountRow = UseCounts & { taxon_id: string; caste: string; kind: string; term: string };

/**
 * Fills `surroundings_use`: for each taxon, caste and term of surroundings the visits that state it, the ratio of use to
 * what recorders visited, and whether enough visits state it for the ratio to be given. Visited is not preferred: recorders
 * look where flowers are, and write down the habitat when it is worth writing.
 */
export async function measureUse(database: Database, { settings: { surroundings } }: Scheme): Promise<void> {
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
    visits_taxon_term: "integer",
    visits_term: "integer",
    visits_taxon: "integer",
    visits_all: "integer",
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
    visits_taxon_term: column("a"),
    visits_term: column("b"),
    visits_taxon: column("c"),
    visits_all: column("n"),
    ratio: column("ratio"),
    low: column("low"),
    high: column("high"),
    judged: column("judged"),
    reason: column("reason"),
  });
  filler.done();
}

function silence({ b, c, clusters }: CountRow, rules: Scheme["settings"]["surroundings"]): string {
  if (c < rules.minimum_visits)
    return `too few visits with it say where: ${c}, where ${rules.minimum_visits} are needed`;
  if (b < rules.minimum_visits_of_term)
    return `too few visits say so: ${b}, where ${rules.minimum_visits_of_term} are needed`;
  return clusters < 2 ? "all visits are in one 10 km square" : "";
}
