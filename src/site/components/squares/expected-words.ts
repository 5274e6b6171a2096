import type { ExpectedTaxon } from "../../../publishing/contracts.ts";
import { say } from "../../words/say.ts";
import { inWords } from "../text/numbers.ts";
import type { Sentence } from "../text/sentences.ts";
import { capital } from "../text/words.ts";

/** Chance, of 1,000, from which a taxon is likelier there than not. */
const EVEN = 500;

/**
 * A chance as people say it.
 *
 * @param chance of 1,000
 * @example oddsOf(724) // "about 7 in 10"
 */
export function oddsOf(chance: number): string {
  return chance >= 950 ? say("expected.odds-high") : say("expected.odds", { n: Math.max(1, Math.round(chance / 100)) });
}

/**
 * How many taxa are likelier in a square than not, and which comes first.
 *
 * @param expected at least one, likeliest first
 * @param nameOf the name of a taxon by its slug
 * @example expectedSentence(expected, nameOf) // "**Three more species** have a chance of 1 in 2 or better here: first **Gypsy cuckoo**."
 */
export function expectedSentence(expected: readonly ExpectedTaxon[], nameOf: (slug: string) => string): Sentence {
  const n = expected.filter(({ chance }) => chance >= EVEN).length;
  const name = nameOf(expected[0]?.slug ?? "");
  if (n === 0) return say("expected.none-likely", { name });
  return say("expected.one-likely", { n, words: capital(inWords(n)), name });
}
