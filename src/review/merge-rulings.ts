import { Mistake } from "../mistake.ts";
import { type DecisionRow, IDENTIFICATIONS, RULINGS } from "../scheme/decisions-file.ts";
import type { RecordDecision } from "../scheme/decisions-in-force.ts";
import type { ReturnedRow } from "./returned-rows.ts";

/** What a record says now; a ruling holds against that. */
export type SaidNow = Pick<DecisionRow, "saidName" | "saidDate" | "saidPlace" | "saidKind"> & { mark: string };

/** A ruling to add, before it has an id and a time. */
export type NewDecision = Omit<DecisionRow, "decisionID" | "when">;

/** Something a person must look at: a row that cannot be taken, or rulings that disagree. */
export interface MergeConflict {
  record: string;
  file: string;
  row: number;
  ruling: string;
  problem: string;
}

/** What merging gives: rows to add, what was so already, and what a person must look at. */
export interface Merged {
  decisions: NewDecision[];
  alreadySo: number;
  conflicts: MergeConflict[];
}

/**
 * Merges the rulings of files that came back. Where they agree, each is added: a second opinion that agrees is evidence
 * too. Where they disagree among themselves or with a ruling in force, all are added as opinions, which decide nothing
 * and are shown until somebody rules. Bad rows are told and stop no good ones.
 *
 * @param rows of all files, in order
 * @param saidNow what each record says now, by key; a key that is not there is unknown
 * @param inForce the rulings in force
 * @param final whether the rows stand over what is in force, as the officer's own do
 * @param refuse throws a {@link Mistake} on a value that could not be read as a name, place or date
 */
export function mergeRulings(
  rows: readonly ReturnedRow[],
  {
    saidNow,
    inForce,
    final = false,
    refuse = () => {},
  }: {
    saidNow: ReadonlyMap<string, SaidNow>;
    inForce: ReadonlyMap<string, RecordDecision>;
    final?: boolean;
    refuse?: (row: Pick<DecisionRow, "ruling" | "value" | "identification">) => void;
  },
): Merged {
  const merged: Merged = { decisions: [], alreadySo: 0, conflicts: [] };
  const byRecord = new Map<string, ReturnedRow[]>();
  for (const row of rows) {
    const problem = problemOf(row, saidNow.get(row.record)) ?? refusalOf(row, refuse);
    if (problem !== undefined) merged.conflicts.push(conflict(row, problem));
    else byRecord.set(row.record, [...(byRecord.get(row.record) ?? []), row]);
  }
  for (const [record, all] of byRecord) {
    const opinions = withoutRepeats(all);
    const now = inForce.get(record);
    const said = new Set(opinions.map(statement));
    const standing = now === undefined ? undefined : statementInForce(now);
    if (said.size === 1 && said.has(standing ?? "")) {
      merged.alreadySo += 1;
      continue;
    }
    const disagree = said.size > 1 || (standing !== undefined && !final);
    for (const row of opinions) {
      merged.decisions.push(decisionOf(row, disagree, saidNow.get(record)));
      if (disagree)
        merged.conflicts.push(conflict(row, said.size > 1 ? "others rule otherwise" : `“${standing}” is in force`));
    }
  }
  return merged;
}

function refusalOf(
  { ruling, value, identification }: ReturnedRow,
  refuse: (row: Pick<DecisionRow, "ruling" | "value" | "identification">) => void,
): string | undefined {
  try {
    refuse({ ruling: ruling || "identify", value, identification } as Parameters<typeof refuse>[0]);
    return undefined;
  } catch (error) {
    if (error instanceof Mistake) return error.message;
    throw error;
  }
}

function problemOf(row: ReturnedRow, now: SaidNow | undefined): string | undefined {
  if (now === undefined) return "no record has this key";
  if (row.ruling !== "" && !(RULINGS as readonly string[]).includes(row.ruling)) return `“${row.ruling}” is no ruling`;
  if (!(IDENTIFICATIONS as readonly string[]).includes(row.identification))
    return `“${row.identification}” is no state of an identification`;
  if (["correct", "re-identify", "same as", "not the same"].includes(row.ruling) && row.value === "")
    return `${row.ruling} needs a value`;
  if (row.mark !== "" && row.mark !== now.mark)
    return `the record has changed since: ${[now.saidName, now.saidDate, now.saidPlace, now.saidKind].filter(Boolean).join(", ")}`;
  return undefined;
}

/** A record with several questions has several rows; one person's same ruling on them is one. */
function withoutRepeats(rows: readonly ReturnedRow[]): ReturnedRow[] {
  const seen = new Set<string>();
  return rows.filter((row) => {
    const key = [row.file, row.who, statement(row)].join("\0");
    return seen.size < seen.add(key).size;
  });
}

function statement({
  ruling,
  value,
  identification,
}: Pick<ReturnedRow, "ruling" | "value" | "identification">): string {
  return [ruling || "identify", value, identification].filter(Boolean).join(" ");
}

function statementInForce({ latest, opinions }: RecordDecision): string | undefined {
  return opinions.length > 0 || latest.ruling === "opinion" ? undefined : statement(latest);
}

function decisionOf(row: ReturnedRow, asOpinion: boolean, now: SaidNow | undefined): NewDecision {
  const { record, value, identification, part_seen, why, who } = row;
  return {
    recordKey: record,
    ruling: asOpinion ? "opinion" : ((row.ruling || "identify") as DecisionRow["ruling"]),
    value: asOpinion ? [row.ruling, value].filter(Boolean).join(" ") : value,
    identification: identification as DecisionRow["identification"],
    partSeen: part_seen,
    why,
    who,
    check: "",
    batch: "",
    filter: "",
    count: "",
    saidName: now?.saidName ?? "",
    saidDate: now?.saidDate ?? "",
    saidPlace: now?.saidPlace ?? "",
    saidKind: now?.saidKind ?? "",
  };
}

function conflict(row: ReturnedRow, problem: string): MergeConflict {
  return { record: row.record, file: row.file, row: row.row, ruling: statement(row), problem };
}
