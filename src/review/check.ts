import { type Database, sqlText } from "../engine/database.ts";
import type { Severity } from "../records/finding.ts";
import type { Scheme } from "../scheme/scheme.ts";

/** What a check is given: the records as interpreted, before any ruling, and the scheme's own tables and settings. */
export interface CheckContext {
  database: Database;
  scheme: Scheme;
}

/**
 * One check of ours on records: a question it puts to them. It never changes a record. Its title in words stands in
 * `records/finding-titles.ts`, its thresholds in `scheme/check-settings.ts`.
 */
export interface Check {
  /** In snake case, as in tables and in the settings. */
  readonly name: string;
  /** How much its findings matter where the settings do not say. */
  readonly severity: Severity;
  /** What it asks and why, in one or two sentences, for the list of checks and the review desk. */
  readonly asks: string;
  /** Finds what there is to ask, by `addFindings`. */
  find(context: CheckContext): Promise<void>;
}

/** The table checks write to: one row a record and question. */
export const REVIEW_FINDINGS = `CREATE OR REPLACE TABLE review_findings (
  record_no INTEGER, check_name VARCHAR, severity VARCHAR, field VARCHAR, value VARCHAR, subject VARCHAR,
  message VARCHAR, way_out VARCHAR, proposal VARCHAR)`;

/**
 * Adds the findings of a check.
 *
 * @param query a SELECT of `record_no`, `field` (of the record, or empty), `value` (what it says), `subject` (what one
 *   look settles for all records that share it, such as a place and a source; empty where each record is a question of its
 *   own), `message` (what was found, in words a volunteer reads without offence), `way_out` (what would settle it), and
 *   `proposal` (a correction as `field=value; field=value`, or empty)
 * @example await addFindings(database, check, "SELECT record_no, 'eventDate' AS field, … FROM records WHERE …")
 */
export async function addFindings(
  database: Database,
  { name, severity }: Pick<Check, "name" | "severity">,
  query: string,
): Promise<void> {
  await database.run(
    `INSERT INTO review_findings
     SELECT record_no, ${sqlText(name)}, ${sqlText(severity)}, field, value, subject, message, way_out, proposal
     FROM (${query.trim().replace(/;$/, "")})`,
  );
}
