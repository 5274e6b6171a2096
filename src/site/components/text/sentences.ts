import type { Period, SquareFile, TaxonFile } from "../../../publishing/contracts.ts";
import { say } from "../../words/say.ts";
import { since } from "./in-period.ts";
import { inWords } from "./numbers.ts";
import type { Sentence } from "./sentence.ts";
import { capital } from "./words.ts";

export { changeSentence, changeWord, notComparable } from "./change-sentences.ts";
export { since } from "./in-period.ts";
export { flightSentence, seasonWords } from "./season-sentences.ts";
export type { Sentence } from "./sentence.ts";
export { yearsSentence } from "./year-sentences.ts";

/**
 * In how many squares a taxon was recorded, and in how many of them in the latest period.
 *
 * @param periods of the atlas, in order; with one period only the total is given
 * @example rangeSentence({ records: 18826, hectads: 1379, hectads_latest: 1203, generalised_to: "none" }, periods) // "Recorded in **1,379** 10 km squares, **1,203** of them since 2006."
 */
export function rangeSentence(
  {
    records,
    hectads,
    hectads_latest,
    generalised_to,
  }: Pick<TaxonFile, "records" | "hectads" | "hectads_latest" | "generalised_to">,
  periods: readonly Period[],
): Sentence {
  if (records === 0) return say("text.range-no-record");
  if (generalised_to === "withheld") return say("text.range-withheld");
  if (hectads === 0) return say("text.range-no-square");
  const latest = periods.at(-1);
  const squares = { words: inWords(hectads), squares: hectads };
  if (latest === undefined || periods.length < 2) return say("text.range", squares);
  return say("text.range-latest", {
    ...squares,
    latest: hectads_latest,
    latestWords: inWords(hectads_latest),
    since: since(latest),
  });
}

/**
 * How rich the richest squares are, and how many have no species recorded.
 *
 * @param squares how many are in the richest class
 * @param species of that class, as words
 * @param empty squares without a recorded species
 * @example richnessSentence(1, "4", 2) // "1 square has 4 species; 2 have none recorded."
 */
export function richnessSentence(squares: number, species: string, empty: number): Sentence {
  return empty === 0
    ? say("text.richness", { squares, species })
    : say("text.richness-empty", { squares, species, empty });
}

/**
 * What is known of one 10 km square.
 *
 * @example squareSentence(square, periods) // "Ten species, nine of them since 2006. Recorded on 312 visits, in 21 of its 25 tetrads."
 */
export function squareSentence(square: SquareFile, periods: readonly Period[]): Sentence {
  const visits = square.visits.reduce((sum, number) => sum + number, 0);
  if (square.records === 0 && visits === 0) return say("text.square-silent");
  const tetrads = square.tetrads.filter((tetrad) => tetrad.visits > 0).length;
  const visited =
    tetrads === 0 ? say("text.square-visits", { visits }) : say("text.square-tetrads", { visits, tetrads });
  return `${speciesOf(square, periods)} ${visited}`;
}

function speciesOf({ taxa, taxa_all }: SquareFile, periods: readonly Period[]): Sentence {
  const latest = periods.at(-1);
  const recent = taxa.at(-1) ?? 0;
  const all = { n: taxa_all, words: capital(inWords(taxa_all)) };
  if (latest === undefined || periods.length < 2 || taxa_all < 2) return say("text.square-species", all);
  const share = recent >= taxa_all ? "all" : recent === 0 ? "none" : recent === 1 ? "one" : "some";
  return say("text.square-species-latest", { ...all, share, recent: inWords(recent), since: since(latest) });
}
