import { randomBytes } from "node:crypto";
import { Mistake } from "../../mistake.ts";
import type { DecisionRow } from "../../scheme/decisions-file.ts";
import { appendDecisions } from "../append-decisions.ts";
import type { NewDecision } from "../merge-rulings.ts";
import type { RulingAnswer, RulingRequest } from "./answers.ts";
import { type Desk, readAgain, takeUpRulings } from "./desk.ts";
import { historyOf } from "./history.ts";
import { groupOf, markOf, openOf } from "./lines.ts";
import { refuseUnread } from "./ruling-request.ts";

/** Records whose sayings are fetched at once. */
const MOST_AT_ONCE = 1000;

type Said = Pick<NewDecision, "recordKey" | "saidName" | "saidDate" | "saidPlace" | "saidKind"> & { record: number };

/**
 * Rules on a record, or on the open records of a look as one batch that is taken back as one.
 *
 * @throws {Mistake} where the ruling's value cannot be read, or the batch is no longer of the records that were shown
 */
export async function rule(desk: Desk, request: RulingRequest): Promise<RulingAnswer> {
  refuseUnread(request, desk.scheme);
  const { group, record } = request;
  const records = group === null ? [record ?? 0] : await recordsOfGroup(desk, group);
  const said = await saidOf(desk, records);
  if (said.length === 0) throw new Mistake(`record ${record ?? ""}`, "is not there", "open the list again");
  const batch = group === null ? "" : `b${randomBytes(5).toString("hex")}`;
  const filter = group === null ? "" : (await groupOf(desk, group.look, group.filter)).filter;
  const { ruling, value, identification, partSeen, why, who, check } = request;
  const rows = said.map(({ record: _, ...sayings }) => ({
    ...sayings,
    ruling: ruling as DecisionRow["ruling"],
    value,
    identification: identification as DecisionRow["identification"],
    partSeen,
    why,
    who,
    check,
    batch,
    filter,
    count: group === null ? "" : String(said.length),
  }));
  const seen = desk.decisions.length;
  const { added, all } = await appendDecisions(desk.scheme.folder, (before) => {
    if (group !== null && before.length !== seen) throw otherwise("has just been ruled on elsewhere");
    return rows;
  });
  await takeUpRulings(desk, all);
  return {
    id: batch || (added[0]?.decisionID ?? ""),
    records,
    words: [ruling, value].filter(Boolean).join(" "),
    history: historyOf(desk, said[0]?.recordKey ?? ""),
  };
}

/**
 * Takes a ruling or a batch back, by a row of its own: nothing is deleted.
 *
 * @param id of the decision or of the batch
 * @throws {Mistake} where there is no such ruling, or it was taken back before
 */
export async function takeBack(desk: Desk, id: string, who: string): Promise<{ records: string[] }> {
  const { all, records } = await takeBackRuling(desk.scheme.folder, id, { who });
  await takeUpRulings(desk, all);
  return { records };
}

/** The same without a desk, for the command. */
export async function takeBackRuling(
  folder: string,
  id: string,
  { who = "", why = "" }: { who?: string; why?: string } = {},
): Promise<{ all: DecisionRow[]; records: string[] }> {
  const { all } = await appendDecisions(folder, (before) => [withdrawal(before, id, who, why)]);
  return { all, records: meant(all, id).map(({ recordKey }) => recordKey) };
}

function meant(rows: readonly DecisionRow[], id: string): DecisionRow[] {
  return rows.filter(({ decisionID, batch, ruling }) => ruling !== "withdraw" && (decisionID === id || batch === id));
}

function withdrawal(before: readonly DecisionRow[], id: string, who: string, why: string): NewDecision {
  const rows = id === "" ? [] : meant(before, id);
  if (rows.length === 0)
    throw new Mistake(`“${id}”`, "is no ruling and no batch of decisions.csv", "give its decisionID or batch");
  if (before.some(({ ruling, value }) => ruling === "withdraw" && value === id))
    throw new Mistake(`“${id}”`, "was taken back before", "rule on the record anew");
  const only = rows.length === 1 ? rows[0] : undefined;
  return {
    recordKey: only?.recordKey ?? "",
    ruling: "withdraw",
    value: id,
    identification: "",
    partSeen: "",
    why,
    who,
    check: "",
    batch: "",
    filter: "",
    count: "",
    saidName: only?.saidName ?? "",
    saidDate: only?.saidDate ?? "",
    saidPlace: only?.saidPlace ?? "",
    saidKind: only?.saidKind ?? "",
  };
}

async function recordsOfGroup(desk: Desk, group: NonNullable<RulingRequest["group"]>): Promise<number[]> {
  await readAgain(desk);
  const open = await openOf(desk, group.look, group.filter);
  const meantRecords = open.filter(({ others }) => group.others || !others).map(({ record }) => record);
  if (meantRecords.length !== group.count)
    throw otherwise(`has ${meantRecords.length} open records now, not ${group.count}`);
  if (markOf(open) !== group.mark) throw otherwise("has other open records now than were shown");
  return meantRecords;
}

function otherwise(found: string): Mistake {
  return new Mistake("the look", found, "look at it again, then rule");
}

/** What records say, each key once: rows that say the same in everything share one. */
async function saidOf({ database }: Desk, records: readonly number[]): Promise<Said[]> {
  const said = new Map<string, Said>();
  const add = async (table: string, numbers: readonly number[]) => {
    const rows = await database.rows<Said>(
      `SELECT record_no AS record, record_key AS "recordKey", said_name AS "saidName", said_date AS "saidDate", said_place AS "saidPlace", said_kind AS "saidKind"
       FROM ${table} WHERE record_no IN (${numbers.join(", ")}) ORDER BY record_no`,
    );
    for (const row of rows) if (!said.has(row.recordKey)) said.set(row.recordKey, row);
    return new Set(rows.map(({ record }) => record));
  };
  for (let start = 0; start < records.length; start += MOST_AT_ONCE) {
    const numbers = records.slice(start, start + MOST_AT_ONCE);
    const ready = await add("desk_texts", numbers);
    const others = numbers.filter((number) => !ready.has(number));
    if (others.length > 0) await add("record_texts", others);
  }
  return [...said.values()];
}
