import { Mistake } from "../mistake.ts";
import { CORRECTABLE, type Correctable, DECISIONS_FILE, type DecisionRow } from "./decisions-file.ts";

/** What is in force for one record after all rulings on it. */
export interface RecordDecision {
  recordKey: string;
  /** The latest ruling use, hold or leave out. */
  status: DecisionRow | null;
  /** The latest re-identification or statement on the identification. */
  identification: DecisionRow | null;
  /** Fields that are to be read otherwise than the record says. */
  corrections: Partial<Record<Correctable, string>>;
  /** Keys of records that are this one by another route, and of such that look like it and are not. */
  sameAs: string[];
  notTheSame: string[];
  /** Opinions of others since the last ruling: they decide nothing, and wait for somebody who does. */
  opinions: DecisionRow[];
  /** The latest ruling: what the record said then is what all are about. */
  latest: DecisionRow;
}

/**
 * Which rulings hold: those taken back are left out, and of the others on one record the latest of each kind counts.
 *
 * @param decisions in the file's order
 * @returns by record key, in order of their first ruling
 * @throws {Mistake} where a ruling takes back one that is not there, or corrects a field that cannot be
 * @example decisionsInForce([{ ...row, decisionID: "d1", recordKey: "walks:1", ruling: "use" }]).get("walks:1")?.status?.ruling // => "use"
 */
export function decisionsInForce(decisions: readonly (DecisionRow & { row?: number })[]): Map<string, RecordDecision> {
  const withdrawn = takenBack(decisions);
  const inForce = new Map<string, RecordDecision>();
  for (const decision of decisions) {
    if (decision.ruling === "withdraw" || withdrawn.has(decision.decisionID) || withdrawn.has(decision.batch)) continue;
    const before = inForce.get(decision.recordKey) ?? nothingYet(decision);
    inForce.set(decision.recordKey, apply(before, decision));
  }
  return inForce;
}

/** Ids and batches that a later ruling takes back. */
function takenBack(decisions: readonly (DecisionRow & { row?: number })[]): Set<string> {
  const known = new Set(decisions.flatMap(({ decisionID, batch }) => [decisionID, batch]).filter(Boolean));
  const withdrawn = new Set<string>();
  for (const { ruling, value, row } of decisions) {
    if (ruling !== "withdraw") continue;
    if (!known.has(value))
      throw new Mistake(`“${value}”`, "is no decision and no batch of this file", "write the id that is taken back", {
        file: DECISIONS_FILE,
        ...(row === undefined ? {} : { row }),
        field: "value",
      });
    withdrawn.add(value);
  }
  return withdrawn;
}

function nothingYet(latest: DecisionRow): RecordDecision {
  const { recordKey } = latest;
  return {
    recordKey,
    status: null,
    identification: null,
    corrections: {},
    sameAs: [],
    notTheSame: [],
    opinions: [],
    latest,
  };
}

function apply(before: RecordDecision, decision: DecisionRow & { row?: number }): RecordDecision {
  if (decision.ruling === "opinion") return { ...before, opinions: [...before.opinions, decision], latest: decision };
  const now = { ...before, latest: decision, opinions: [] };
  if (decision.identification !== "") now.identification = decision;
  switch (decision.ruling) {
    case "use":
    case "hold":
    case "leave out":
      return { ...now, status: decision };
    case "correct":
      return { ...now, corrections: corrected(before.corrections, correctionsIn(decision)) };
    case "re-identify":
      return {
        ...now,
        identification: decision,
        corrections: { ...before.corrections, scientificName: decision.value },
      };
    case "identify":
      return { ...now, identification: decision };
    case "same as":
      return { ...now, sameAs: [...before.sameAs, decision.value] };
    case "not the same":
      return { ...now, notTheSame: [...before.notTheSame, decision.value] };
    default:
      return now;
  }
}

/** Whether anything but opinions is in force. */
export function isRuled({ status, identification, corrections, sameAs, notTheSame }: RecordDecision): boolean {
  return (
    status !== null ||
    identification !== null ||
    Object.keys(corrections).length + sameAs.length + notTheSame.length > 0
  );
}

const PLACE = ["gridReference", "decimalLatitude", "decimalLongitude"] as const;

/** A new place takes the place of an earlier one whole, whichever way it is written. */
function corrected(before: RecordDecision["corrections"], now: RecordDecision["corrections"]) {
  const kept = { ...before };
  if (PLACE.some((field) => now[field] !== undefined)) for (const field of PLACE) delete kept[field];
  return { ...kept, ...now };
}

/**
 * The corrections of a ruling's value, "gridReference=SP50; eventDate=2011-07-12".
 *
 * @param row of `decisions.csv`, where it stands there
 * @throws {Mistake} on a field that cannot be corrected, and on a coordinate without the other
 * @example correctionsIn({ value: "gridReference=SP50" }) // => { gridReference: "SP50" }
 */
export function correctionsIn({ value, row }: { value: string; row?: number }): RecordDecision["corrections"] {
  const where = row === undefined ? {} : { file: DECISIONS_FILE, row, field: "value" };
  const corrections: RecordDecision["corrections"] = {};
  for (const part of value.split(";")) {
    const [field = "", ...rest] = part.split("=");
    const name = CORRECTABLE.find((one) => one === field.trim());
    if (name === undefined || rest.length === 0)
      throw new Mistake(
        `“${part.trim()}”`,
        "is no correction",
        `write one of ${CORRECTABLE.join(", ")} and = and the value`,
        where,
      );
    corrections[name] = rest.join("=").trim();
  }
  if ((corrections.decimalLatitude === undefined) !== (corrections.decimalLongitude === undefined))
    throw new Mistake(
      "a coordinate",
      "is corrected without the other",
      "give decimalLatitude and decimalLongitude",
      where,
    );
  return corrections;
}
