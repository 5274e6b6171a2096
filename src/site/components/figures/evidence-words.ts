import type { Key } from "../../words/catalogue.ts";
import { say } from "../../words/say.ts";

/** Sets of evidence in the order they are shown: what is counted, and what a row that moves is said to hang on. */
export const EVIDENCE_WORDS = {
  main: "lines.set-main",
  with_provisional_years: "lines.set-with-provisional-years",
  without_single_species_lists: "lines.set-without-single-species-lists",
  without_targeted: "lines.set-without-targeted",
  without_mass_events: "lines.set-without-mass-events",
  without_lots: "lines.set-without-lots",
  complete_lists: "lines.set-complete-lists",
} as const satisfies Readonly<Record<string, Key>>;

/**
 * Name of a set of evidence; one that has no words here is shown by its id.
 *
 * @example evidenceName("without_lots") // => "Without specimens and literature"
 */
export function evidenceName(id: string): string {
  return isKnown(id) ? say(EVIDENCE_WORDS[id]) : id.replaceAll("_", " ");
}

function isKnown(id: string): id is keyof typeof EVIDENCE_WORDS {
  return Object.hasOwn(EVIDENCE_WORDS, id);
}

/** Ids of the given sets, the shown order first. @example evidenceOrder(["without_lots", "main"]) // => ["main", "without_lots"] */
export function evidenceOrder(ids: readonly string[]): string[] {
  const known = Object.keys(EVIDENCE_WORDS);
  const place = (id: string) => (known.includes(id) ? known.indexOf(id) : known.length);
  return [...new Set(ids)].sort((a, b) => place(a) - place(b) || (a < b ? -1 : 1));
}
