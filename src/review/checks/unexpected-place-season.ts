import { sqlBeside } from "../../engine/database.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import { addFindings, type Check, type CheckContext } from "../check.ts";
import { dropTables } from "../drop-tables.ts";
import { layNeighbours } from "../neighbouring-squares.ts";
import { layEvidence } from "../record-evidence.ts";
import { layExpectedShares } from "./expected-shares.ts";
import { writeUnexpected } from "./unexpected-findings.ts";
import { layQuietRecords, layUnexpectedInputs } from "./unexpected-inputs.ts";

/** Mean diameter of the Earth in kilometres, as in neighbouring-squares.ts. */
const EARTH_DIAMETER_KM = 2 * 6371.0088;

const PASSING_TABLES = [
  ...["observations", "support", "effort", "taxon_reports", "region_support", "rings", "ring_neighbours"],
  ...["window_support", "few_in_square", "few_around", "doubtful_places", "place_rings", "place_years", "place_shares"],
  ...["record_days", "season_counts", "season_bounds", "days_outside", "season_weeks", "season_factors"],
  ...["quiet_records", "unexpected_records", "far_places", "reported_squares", "nearest_squares"],
  ...["unexpected_findings", "record_evidence", "confirmed_records", "review_squares", "neighbouring_squares"],
];

/**
 * Whether a record is unexpected here and now, given all that was reported around it.
 *
 * Place: of the visits by other people in rings around the record's 10 km square, in its block of years and the ones
 * beside it, the share that reported the taxon, drawn towards that of the wider ring, the outermost towards that of the
 * whole atlas in those years, and that towards the taxon's share of all visits; each wider share is worth `prior_visits`
 * (`expectedShare`: beta-binomial smoothing). Season: that share is multiplied by how much oftener or less often than on
 * average the taxon is reported in these five weeks at this latitude. Asked where the product, the share of visits expected to report it here and now, is below one in `one_visit_in`. Beside
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
  find,
};

async function find(context: CheckContext): Promise<void> {
  const { database, scheme } = context;
  await layUnexpectedInputs(context);
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
  await dropTables(database, PASSING_TABLES);
}

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
