/** Sets of evidence in the order they are shown: what is counted, and what a row that moves is said to hang on. */
export const EVIDENCE_WORDS: Readonly<Record<string, string>> = {
  main: "All records, without provisional years",
  with_provisional_years: "With provisional years",
  without_single_species_lists: "Without visits that named one species",
  without_targeted: "Without surveys for one species",
  without_mass_events: "Without mass events",
  without_lots: "Without specimens and literature",
  complete_lists: "Only lists declared complete",
};

/**
 * Name of a set of evidence; one that has no words here is shown by its id.
 *
 * @example evidenceName("without_lots") // => "Without specimens and literature"
 */
export function evidenceName(id: string): string {
  return EVIDENCE_WORDS[id] ?? id.replaceAll("_", " ");
}

/** Ids of the given sets, the shown order first. @example evidenceOrder(["without_lots", "main"]) // => ["main", "without_lots"] */
export function evidenceOrder(ids: readonly string[]): string[] {
  const known = Object.keys(EVIDENCE_WORDS);
  const place = (id: string) => (known.includes(id) ? known.indexOf(id) : known.length);
  return [...new Set(ids)].sort((a, b) => place(a) - place(b) || (a < b ? -1 : 1));
}
