import type { Database } from "../../engine/database.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import type { CheckContext } from "../check.ts";

/** The settings and the checklist as tables: `review_taxa`, `counts_for`, `target_sources`, `rings`. */
export async function layUnexpectedInputs({ database, scheme }: CheckContext): Promise<void> {
  const { taxa, checklist, settings } = scheme;
  const numberOf = new Map(taxa.map(({ taxonID }, index) => [taxonID, index]));
  const allYear = new Set(settings.checks.unexpected.all_year);
  const pairs = taxa.flatMap(({ taxonID }) =>
    [taxonID, ...checklist.ancestors(taxonID)].map(
      (above) => [numberOf.get(taxonID) ?? 0, numberOf.get(above) ?? 0] as const,
    ),
  );
  const rings = settings.checks.unexpected.rings_km.toSorted((a, b) => a - b);
  await fill(
    database,
    "review_taxa",
    { taxon_no: "integer", taxon_id: "text", all_year: "boolean" },
    {
      taxon_no: taxa.map((_, index) => index),
      taxon_id: taxa.map(({ taxonID }) => taxonID),
      all_year: taxa.map(({ taxonID }) => allYear.has(taxonID)),
    },
  );
  await fill(
    database,
    "counts_for",
    { taxon_no: "integer", for_no: "integer" },
    {
      taxon_no: pairs.map(([taxon]) => taxon),
      for_no: pairs.map(([, above]) => above),
    },
  );
  await fill(
    database,
    "target_sources",
    { source: "text" },
    {
      source: settings.sources.filter(({ aim }) => aim === "target species").map(({ id }) => id),
    },
  );
  await fill(
    database,
    "rings",
    { ring: "integer", from_km: "double", to_km: "double" },
    {
      ring: rings.map((_, index) => index),
      from_km: rings.map((_, index) => rings[index - 1] ?? -1),
      to_km: rings,
    },
  );
}

async function fill(
  database: Database,
  table: string,
  types: Parameters<Database["fill"]>[1],
  columns: Record<string, (string | number | boolean)[]>,
): Promise<void> {
  const filler = await database.fill(table, types);
  filler.add(columns);
  filler.done();
}

/** Records whose words say that they are no sign of season: a dead bee, a nest. */
export async function layQuietRecords(database: Database, { settings }: Scheme): Promise<void> {
  const words = settings.checks.unexpected.no_season_words
    .map((word) => word.replaceAll(/[^\p{L}\p{N} -]/gu, ""))
    .filter(Boolean);
  await database.run("CREATE OR REPLACE TABLE quiet_records (record_no INTEGER)");
  if (words.length === 0) return;
  await database.run(
    `INSERT INTO quiet_records SELECT record_no FROM record_texts
     WHERE record_no IN (SELECT d.record_no FROM record_days AS d JOIN days_outside AS o USING (taxon_no, caste, band, day) WHERE o.outside <> 0)
       AND regexp_matches(lower("occurrenceRemarks" || ' ' || "lifeStage"), $pattern)`,
    { pattern: `\\b(${words.map((word) => word.toLowerCase()).join("|")})\\b` },
  );
}
