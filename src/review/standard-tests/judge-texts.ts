import type { TableFiller } from "../../engine/database.ts";
import { columnsOf } from "./held-tests.ts";
import type { Response } from "./response.ts";
import { isEmpty, type Parameters, type StandardTest } from "./standard-test.ts";

/** One distinct text of some columns, with how many records of a source say it and the first of them. */
export type DistinctText = Readonly<Record<string, string>> & {
  readonly source: string;
  readonly records: number;
  readonly record_no: number;
};

/** Amendments that say in one term what another says already, or assume what nobody stated: counted, and no news. */
const RESTATING: ReadonlySet<string> = new Set([
  "AMENDMENT_EVENT_FROM_EVENTDATE",
  "AMENDMENT_EVENTDATE_FROM_YEARMONTHDAY",
  "AMENDMENT_EVENTDATE_FROM_YEARSTARTDAYOFYEARENDDAYOFYEAR",
  "AMENDMENT_GEODETICDATUM_ASSUMEDDEFAULT",
  "AMENDMENT_OCCURRENCESTATUS_ASSUMEDDEFAULT",
]);

/** Columns of the table of proposals. */
export const PROPOSAL_COLUMNS = {
  source: "text",
  guid: "text",
  label: "text",
  status: "text",
  inputs: "text",
  proposal: "text",
  records: "integer",
  record_no: "integer",
  restates: "boolean",
} as const;

/** How many records of a source a test answered how. */
export interface ResultCount {
  readonly source: string;
  readonly status: string;
  readonly result: string;
  readonly records: number;
}

/**
 * Runs one test on distinct texts; what an amendment proposes goes to the table of proposals.
 *
 * @returns records by source, status and result
 */
export function judgeTexts(
  test: StandardTest,
  texts: readonly DistinctText[],
  parametersOf: (source: string) => Parameters,
  proposals: TableFiller,
): ResultCount[] {
  const counts = new Map<string, ResultCount>();
  const proposed: (readonly [DistinctText, Response])[] = [];
  for (const text of texts) {
    const response = test.run(text, parametersOf(text.source));
    const { status, result } = response;
    const key = `${text.source} ${status} ${result}`;
    const records = (counts.get(key)?.records ?? 0) + text.records;
    counts.set(key, { source: text.source, status, result, records });
    if (response.changes !== undefined) proposed.push([text, response]);
  }
  addProposals(test, proposed, proposals);
  return [...counts.values()];
}

function addProposals(
  test: StandardTest,
  proposed: readonly (readonly [DistinctText, Response])[],
  proposals: TableFiller,
): void {
  proposals.add({
    source: proposed.map(([text]) => text.source),
    guid: proposed.map(() => test.guid),
    label: proposed.map(() => test.label),
    status: proposed.map(([, { status }]) => status),
    inputs: proposed.map(([text]) => inputsOf(test, text)),
    proposal: proposed.map(([, { changes }]) => proposalText(changes ?? {})),
    records: proposed.map(([text]) => text.records),
    record_no: proposed.map(([text]) => text.record_no),
    restates: proposed.map(() => RESTATING.has(test.label)),
  });
}

/** JSON of the terms that are filled and whose text counts, in the order of the record's fields. */
function inputsOf(test: StandardTest, text: DistinctText): string {
  const terms = columnsOf(test).filter((column) => !column.onlyWhetherFilled && !isEmpty(text[column.term]));
  return JSON.stringify(Object.fromEntries(terms.map(({ term }) => [term, text[term]])));
}

function proposalText(changes: Readonly<Record<string, string>>): string {
  return Object.entries(changes)
    .map(([term, value]) => `${term}=${value}`)
    .join("; ");
}
