import { type CasteVocabulary, widerThan } from "../names/caste-classes.ts";
import type { Settings } from "./settings.ts";

/** Words on age that say nothing of caste. */
const IGNORED = ["adult", "adults", "imago", "imagines"];

/** The vocabulary of castes that the settings lay down. */
export function casteVocabulary({ castes }: Pick<Settings, "castes">): CasteVocabulary {
  return {
    classes: castes.map(({ within, ...caste }) => (within === undefined ? caste : { ...caste, within })),
    ignored: IGNORED,
  };
}

/**
 * The castes that a record of a taxon can state: those the checklist gives it, and the wider classes they are part of,
 * for a worker may be recorded as female.
 *
 * @param castes of the taxon, as in the checklist; empty where all are possible
 * @returns caste ids, each once; empty where all are possible
 * @example possibleCastes(["queen", "worker", "male"], vocabulary) // => ["queen", "female", "worker", "male"]
 */
export function possibleCastes(castes: readonly string[], vocabulary: CasteVocabulary): string[] {
  return [...new Set(castes.flatMap((caste) => [caste, ...widerThan(caste, vocabulary)]))];
}
