import type { SeasonRow } from "../../../publishing/contracts.ts";
import { say } from "../../words/say.ts";
import { FEWEST_FOR_SEASON, quantileThird } from "../charts/season.ts";
import type { Sentence } from "./sentence.ts";
import { thirdDays, thirdLoosely } from "./thirds.ts";
import { capital, listed, plural, small } from "./words.ts";

/**
 * When each caste was recorded: the thirds between which eight in ten of its records lie, and the fullest third.
 * Castes of fewer than 30 dated records are named as too few.
 *
 * @param rows castes in their order; "not_stated" speaks only where no caste was stated
 * @example flightSentence(rows) // "Eight in ten queens were recorded from **11–20 March** to **1–10 June**, most in **21–30 April**. …"
 */
export function flightSentence(rows: readonly SeasonRow[]): Sentence {
  const named = rows.filter(({ caste, total }) => caste !== "not_stated" && total > 0);
  const speaking = named.length > 0 ? named : rows.filter(({ total }) => total > 0);
  const [first, ...later] = speaking.filter(({ total }) => total >= FEWEST_FOR_SEASON);
  if (first === undefined) {
    const dated = rows.reduce((sum, { total }) => sum + total, 0);
    return dated === 0 ? say("text.flight-none") : say("text.flight-few", { dated, fewest: FEWEST_FOR_SEASON });
  }
  const when = { from: thirdAt(first, 0.1), to: thirdAt(first, 0.9), most: thirdDays(fullest(first.records)) };
  const others = later.map((row) => say("text.flight-from", { castes: several(row), from: thirdAt(row, 0.1) }));
  const few = named.filter(({ total }) => total < FEWEST_FOR_SEASON).map(several);
  return [
    named.length > 0
      ? say("text.flight-castes", { castes: several(first), ...when })
      : say("text.flight-records", when),
    others.length === 0 ? "" : say("text.flight-others", { list: capital(listed(others)) }),
    few.length === 0 ? "" : say("text.flight-few-castes", { castes: listed(few) }),
  ]
    .filter(Boolean)
    .join(" ");
}

/** Several of a caste, as the scheme says it, or by the English rules. */
function several({ label, many }: SeasonRow): string {
  return many === undefined || many === "" ? plural(small(label)) : small(many);
}

function thirdAt({ records }: SeasonRow, share: number): string {
  return thirdDays(quantileThird(records, share));
}

function fullest(records: readonly number[]): number {
  return records.indexOf(Math.max(...records));
}

/**
 * The season in four words, for lists.
 *
 * @param counts records by third of the month
 * @returns empty under 30 records
 * @example seasonWords(counts) // "mid March to mid October"
 */
export function seasonWords(counts: readonly number[]): string {
  if (counts.reduce((sum, count) => sum + count, 0) < FEWEST_FOR_SEASON) return "";
  const [from, to] = [quantileThird(counts, 0.1), quantileThird(counts, 0.9)];
  return from === to ? thirdLoosely(from) : say("text.span", { from: thirdLoosely(from), to: thirdLoosely(to) });
}
