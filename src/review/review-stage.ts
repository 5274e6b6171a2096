import { type Database, sqlBeside } from "../engine/database.ts";
import { openTables } from "../engine/saved-tables.ts";
import { layDecisions, layStatedRecords } from "../records/decided-records.ts";
import type { Scheme } from "../scheme/scheme.ts";
import { REVIEW_FINDINGS } from "./check.ts";
import { CHECKS } from "./checks/index.ts";
import { dropTables } from "./drop-tables.ts";

/** Tables the review stage leaves; `openReview` lays the views `record_findings` and `records` over them. */
export const REVIEW_TABLES = [
  "review_findings",
  "decided",
  "decisions_without_record",
  "final_statuses",
  "check_severities",
] as const;

/** Tables that several checks share and nothing needs after them: they hold a row of every record. */
const PASSING_TABLES = ["placed_records", "list_neighbours"];

/**
 * Puts every check's questions to the records, applies the rulings in force, and settles each record's status. Needs the
 * tables of the record stage and the view `record_texts`. Leaves the tables of REVIEW_TABLES and the views
 * `record_findings` and `records`.
 *
 * @param tell called with how many of the checks are done
 */
export async function reviewRecords(
  database: Database,
  scheme: Scheme,
  tell: (done: number, of: number) => void = () => {},
): Promise<void> {
  await fillSeverities(database, scheme);
  await layDecisions(database, scheme.decisions);
  await layStatedRecords(database, scheme.decisions, scheme.sites);
  await database.run(sqlBeside(import.meta.url, "placed-records.sql"));
  await database.run(REVIEW_FINDINGS);
  const { severity } = scheme.settings.checks;
  const asked = CHECKS.filter(({ name }) => severity[name] !== "off");
  for (const [index, check] of asked.entries()) {
    await check.find({ database, scheme });
    tell(index + 1, asked.length);
  }
  await dropTables(database, PASSING_TABLES);
  await database.run(sqlBeside(import.meta.url, "record-findings.sql"));
  await database.run(sqlBeside(import.meta.url, "final-statuses.sql"));
  await database.run(sqlBeside(import.meta.url, "reviewed-records.sql"));
}

/**
 * Opens what an earlier `reviewRecords` left in a folder, over the opened tables of the record stage.
 *
 * @param folder where `saveTables` wrote them
 * @example await openReview(database, ".build/scheme/reviewed/0123")
 */
export async function openReview(database: Database, folder: string): Promise<void> {
  await openTables(database, folder, REVIEW_TABLES);
  for (const file of ["record-findings.sql", "reviewed-records.sql"])
    await database.run(sqlBeside(import.meta.url, file));
}

async function fillSeverities(database: Database, { settings }: Scheme): Promise<void> {
  const rows = Object.entries(settings.checks.severity);
  const filler = await database.fill("check_severities", { check_name: "text", severity: "text" });
  filler.add({ check_name: rows.map(([check]) => check), severity: rows.map(([, severity]) => severity) });
  filler.done();
}
