import { findingTitle } from "../records/finding-titles.ts";
import { generalisationsOf } from "../scheme/generalisations.ts";
import type { Scheme } from "../scheme/scheme.ts";
import type { Level } from "../scheme/sensitive-list.ts";
import { CHECKS } from "./checks/index.ts";

/** What a question says beside its title. */
export interface AskedText {
  message: string;
  way_out: string;
  proposal: string;
}

/** Findings that quote another record, its file, or what somebody else thinks. */
const QUOTING = ["same_id_other_record", "opinion_waits"];
const COMPARING = new Set(CHECKS.map(({ name }) => name));
const LOOK = "see whether name, place and date are right";

/**
 * A question as it may be put to somebody other than the officer. Of a taxon on the sensitive list it is left out how a
 * question arose, and where it was found by comparing records what would settle it too: all of these could tell where
 * others saw it. Nobody's file or opinion is quoted to anybody.
 *
 * @param taxonID of the record; null where its name is not in the checklist
 * @example forOthers(scheme, "opinion_waits", null, question).message // => "opinions of others wait for a ruling"
 */
export function forOthers(
  scheme: Pick<Scheme, "sensitive" | "checklist">,
  check: string,
  taxonID: string | null,
  question: AskedText,
): AskedText {
  const isQuoting = QUOTING.includes(check);
  if (!isQuoting && !isListed(scheme, taxonID)) return question;
  const title = findingTitle(check);
  return COMPARING.has(check) || isQuoting
    ? { message: title, way_out: LOOK, proposal: "" }
    : { ...question, message: title };
}

/**
 * Whether a taxon, or a member of it, is on the sensitive list for any of its records.
 *
 * @param level where only that one is asked about
 */
export function isListed(
  scheme: Pick<Scheme, "sensitive" | "checklist">,
  taxonID: string | null,
  level?: Level,
): boolean {
  if (taxonID === null) return false;
  return generalisationsOf(scheme, taxonID).some(({ entry }) => level === undefined || entry.level === level);
}
