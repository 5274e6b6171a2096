import type { Database } from "../../src/engine/database.ts";
import { reviewRecords } from "../../src/review/review-stage.ts";
import { DecisionRow } from "../../src/scheme/decisions-file.ts";
import { decisionsInForce } from "../../src/scheme/decisions-in-force.ts";
import type { SiteRow } from "../../src/scheme/sites-file.ts";
import { interpret, type Judged, schemeOf } from "../records/interpreting.ts";

/** A question about a record as a row, as far as tests ask. */
export interface Asked {
  record_no: number;
  row: number;
  check_name: string;
  severity: string;
  field: string;
  value: string;
  subject: string;
  message: string;
  way_out: string;
  proposal: string;
  settled: boolean;
}

/**
 * Reads, interprets and reviews the text of one file a source, and gives all records and questions.
 *
 * @param decisions rows of `decisions.csv`; what is left out of one is empty
 */
export async function review(
  database: Database,
  texts: Readonly<Record<string, string>>,
  {
    decisions = [],
    ...settings
  }: {
    sources?: Readonly<Record<string, object>>;
    more?: object;
    decisions?: readonly Partial<DecisionRow>[];
    sites?: SiteRow[];
  } = {},
): Promise<{ records: Judged[]; findings: Asked[] }> {
  const rows = decisions.map((decision, index) => DecisionRow.parse({ decisionID: `d${index + 1}`, ...decision }));
  const inForce = decisionsInForce(rows);
  await interpret(database, texts, settings, inForce);
  const sources = Object.keys(texts).map((id) => ({
    id,
    files: `${id}.csv`,
    datum: "EPSG:4326",
    ...settings.sources?.[id],
  }));
  await reviewRecords(database, {
    ...schemeOf(sources, settings.more),
    decisions: inForce,
    sites: settings.sites ?? [],
  });
  return {
    records: await database.rows<Judged>(
      "SELECT r.*, r.record_no - f.first_number AS row FROM records AS r JOIN files AS f USING (file_id) ORDER BY record_no",
    ),
    findings: await database.rows<Asked>(
      "SELECT * FROM record_findings ORDER BY record_no, check_name, field, subject, message",
    ),
  };
}
