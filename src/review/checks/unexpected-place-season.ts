import { type Database, sqlBeside } from "../../engine/database.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import { addFindings, type Check, type CheckContext } from "../check.ts";
import { layNeighbours } from "../neighbouring-squares.ts";
import { layEvidence } from "../record-evidence.ts";
import { layExpectedShares } from "./expected-shares.ts";
import { writeUnexpected } from "./unexpected-findings.ts";

/** Mean diameter of the Earth in kilometres, as in neighbouring-squares.ts. */
const EARTH_DIAMETER_KM = 2 * 6371.0088;

/**
 * Whether a record is unexpected here and now, given all that was reported around it.
 *
 * Place: of the visits by other people in rings around the record's 10 km square, in its block of years and the ones
 * beside it, the share that reported the taxon, drawn towards that of the wider ring, and the outermost towards the taxon's
 * share of all visits, which are worth `prior_visits` (`expectedShare`: beta-binomial smoothing). Season: that share is
 * multiplied by how much oftener or less often than on average the taxon is reported in these five weeks at this latitude.
 * Asked where the product, the share of visits expected to report it here and now, is below one in `one_visit_in`. Beside
 * that, how many days a date lies outside the days between the first and the last `season_percent` of records, by caste and
 * latitude; and a first for a territory.
 *
 * It is leave-one-out: what the recorder reported around there, and what nameless records said of the same day, never
 * speaks for the record. All records that are used or held speak for those of others, asked about or not, so that it does
 * not learn only from what it let through; but one person's word alone counts half, a place is expected once
 * `independent_recorders` other people reported the taxon there, and one confirmed record counts as so many.
 *
 * It assumes that visits are alike in effort, and that where most visits around did not report a taxon it is seldom met.
 * It says nothing of records without a 10 km square, of dates wider than a block of years, of places where the visits around
 * would bring fewer than `expected_reports` if the taxon were spread evenly, and so of very scarce taxa, first years and
 * squares with few visits; nor of a season of fewer than `season_minimum` records. It never holds a record back.
 */
export const unexpectedPlaceSeason: Check = {
  name: "unexpected_place_season",
  severity: "ask",
  asks: "Is a taxon reported where or when others around did not report it? A reason with its numbers each: far from other records, outside the recorded season, first for a territory, evidence that does not show the part that settles it.",
  async find(context) {
    const { database, scheme } = context;
    await fillInputs(context);
    await layEvidence(database, scheme);
    await layNeighbours(database, scheme, Math.max(...scheme.settings.checks.unexpected.rings_km));
    const run = (file: string) => database.run(withSettings(sqlBeside(import.meta.url, file), scheme));
    await run("unexpected-observations.sql");
    await run("unexpected-place.sql");
    await run("unexpected-season.sql");
    await layExpectedShares(database, scheme);
    await layQuietRecords(database, scheme);
    await run("unexpected-asked.sql");
    await writeUnexpected(database, scheme);
    for (const severity of ["ask", "note"] as const)
      await addFindings(
        database,
        { name: "unexpected_place_season", severity },
        `SELECT record_no, field, value, subject, message, way_out, '' AS proposal FROM unexpected_findings WHERE severity = '${severity}' ORDER BY record_no`,
      );
  },
};

function withSettings(sql: string, { settings }: Scheme): string {
  const rules = settings.checks.unexpected;
  const values: Record<string, number> = {
    years: rules.years,
    independent: rules.independent_recorders,
    percent: rules.season_percent,
    minimum: rules.season_minimum,
    first_after: rules.first_after_visits,
    one_visit_in: rules.one_visit_in,
    season_days: rules.season_days,
    diameter: EARTH_DIAMETER_KM,
  };
  return sql.replaceAll(/\{(\w+)\}/g, (whole, name: string) => String(values[name] ?? whole));
}

async function fillInputs({ database, scheme }: CheckContext): Promise<void> {
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
async function layQuietRecords(database: Database, { settings }: Scheme): Promise<void> {
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
