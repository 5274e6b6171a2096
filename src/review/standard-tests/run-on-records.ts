import type { IntervalEnd } from "../../dates/event-date.ts";
import { type Database, sqlBeside, sqlText } from "../../engine/database.ts";
import type { SourceSetting } from "../../scheme/settings.ts";
import { columnSql, heldTests, type TestGroup } from "./held-tests.ts";
import { type DistinctText, judgeTexts, PROPOSAL_COLUMNS, type ResultCount } from "./judge-texts.ts";
import type { Parameters, StandardTest } from "./standard-test.ts";

const SCIENTIFIC_NAME_FOUND = "3f335517-f442-4b98-b149-1e87ff16de45";

/** What the tests of a scheme's records need beside them. */
export interface StandardTestRules {
  /** The day taken as the present, YYYY-MM-DD: the edition's. */
  readonly today: string;
  /**
   * How the scheme reads the end of an interval. The tests always read it inclusively; with "exclusive" no interval is
   * proposed, since it would lose its last day when it is read again.
   */
  readonly intervalEnd: IntervalEnd;
  /** Whether the checklist has a name; without it the test of it answers that it has no list. */
  readonly hasName?: (scientificName: string) => boolean;
}

/**
 * Runs every test whose terms are held on every source: once for each distinct text of its columns in `raw_records`, the
 * records as read. It changes no record, and leaves two tables.
 * - `standard_results` (source, guid, label, status, result, records)
 * - `standard_proposals` (source, guid, label, status, inputs, proposal, records, record_no, restates): one row a distinct
 *   input that an amendment would change. `inputs` is JSON of the filled terms whose text counts, `proposal` reads
 *   `term=value; term=value`, `record_no` is the first record of them, and `restates` is true where the record says it
 *   already in another term or a default is assumed. `layProposalRecords` finds all their records.
 *
 * @param sources of the scheme; what they declare of dates decides which are plain
 * @example await runStandardTests(database, settings.sources, { today: settings.edition.date, intervalEnd: settings.dates.interval_end })
 */
export async function runStandardTests(
  database: Database,
  sources: readonly SourceSetting[],
  rules: StandardTestRules,
): Promise<void> {
  await database.run(sqlBeside(import.meta.url, "run-on-records.sql"));
  const bySource = new Map(sources.map((source) => [source.id, parametersOf(source, rules)]));
  const results: (ResultCount & { test: StandardTest })[] = [];
  const proposals = await database.fill("proposals_found", PROPOSAL_COLUMNS);
  for (const group of heldTests()) {
    await database.batches(distinctTexts(group), (columns, size) => {
      const texts = Array.from({ length: size }, (_, index) => textAt(columns, index));
      for (const test of group.tests) {
        const parameters = (source: string) => withList(test, bySource.get(source) ?? undeclared(rules), rules);
        results.push(...judgeTexts(test, texts, parameters, proposals).map((count) => ({ ...count, test })));
      }
    });
  }
  proposals.done();
  if (rules.intervalEnd === "exclusive")
    await database.run(
      "DELETE FROM proposals_found WHERE regexp_matches(proposal, '(eventDate|dateIdentified)=[^;]*/')",
    );
  await fillResults(database, results);
  await database.run(sqlBeside(import.meta.url, "sorted-results.sql"));
}

/**
 * Writes `standard_results` as CSV, sorted: source, test, guid, status, result, records. Nothing in it is about a person.
 *
 * @param file where it is written; its folder must be there
 * @example await writeStandardResults(database, "review/standard-tests.csv")
 */
export async function writeStandardResults(database: Database, file: string): Promise<void> {
  await database.run(
    `COPY (SELECT source, label AS test, guid, status, result, records FROM standard_results ORDER BY ALL)
     TO ${sqlText(file)} (FORMAT csv, HEADER)`,
  );
}

function distinctTexts({ columns }: TestGroup): string {
  return `SELECT source, ${columns.map(columnSql).join(", ")}, count(*)::INTEGER AS records, min(record_no) AS record_no
    FROM raw_records GROUP BY ALL`;
}

function textAt(columns: Record<string, unknown[]>, index: number): DistinctText {
  return Object.fromEntries(Object.entries(columns).map(([name, values]) => [name, values[index]])) as DistinctText;
}

function parametersOf(source: SourceSetting, { today }: StandardTestRules): Parameters {
  const pivot = source.two_digit_pivot;
  return { today, dates: { format: source.date_format, ...(pivot === undefined ? {} : { twoDigitPivot: pivot }) } };
}

function undeclared({ today }: StandardTestRules): Parameters {
  return { today, dates: { format: "iso" } };
}

function withList(test: StandardTest, parameters: Parameters, { hasName }: StandardTestRules): Parameters {
  return test.guid === SCIENTIFIC_NAME_FOUND ? { ...parameters, sourceAuthority: hasName ?? null } : parameters;
}

async function fillResults(
  database: Database,
  results: readonly (ResultCount & { test: StandardTest })[],
): Promise<void> {
  const filler = await database.fill("results_found", {
    source: "text",
    guid: "text",
    label: "text",
    status: "text",
    result: "text",
    records: "integer",
  });
  filler.add({
    source: results.map(({ source }) => source),
    guid: results.map(({ test }) => test.guid),
    label: results.map(({ test }) => test.label),
    status: results.map(({ status }) => status),
    result: results.map(({ result }) => result),
    records: results.map(({ records }) => records),
  });
  filler.done();
}
