import { type Database, sqlBeside } from "../../engine/database.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import { fillSquareEffort } from "./square-effort.ts";
import { fillSquareRichness } from "./square-richness.ts";

/** Tables that `measureCoverage` leaves for publishing. */
export const COVERAGE_TABLES = ["square_effort", "period_effort", "square_richness", "coverage_rules"] as const;

/**
 * Measures how well squares were visited: effort, expected richness, and how many are covered under two rules. Needs the
 * sightings, visits and lists, `square_names`, `naming_visits` and `square_places`.
 *
 * @example await measureCoverage(database, scheme) // leaves COVERAGE_TABLES
 */
export async function measureCoverage(
  database: Database,
  scheme: Pick<Scheme, "checklist" | "settings">,
): Promise<void> {
  await fillSquareEffort(database, scheme);
  await fillSquareRichness(database, scheme);
  await database.run(sqlBeside(import.meta.url, "coverage-rules.sql"));
}
