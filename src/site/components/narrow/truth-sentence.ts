import type { IdentifyTruthFile } from "../../../publishing/contracts.ts";
import { say } from "../../words/say.ts";
import { figured, percent } from "../figures/figure-words.ts";

/**
 * How the helper does when it is told place, date and the most characters that were tried.
 *
 * @returns empty where nothing was tried
 * @example truthSentence(identifyTruth()) // "Of 2,000 invented sightings with place, date and 4 characters …"
 */
export function truthSentence({ rows }: Pick<IdentifyTruthFile, "rows">): string {
  const full = rows.filter(({ place, date }) => place && date).toSorted((a, b) => b.characters - a.characters)[0];
  if (full === undefined) return "";
  const share = (value: number) => percent(figured(100 * value, value < 0.1 ? 1 : 0));
  return say("narrow.truth", {
    ...{ sightings: full.sightings, characters: full.characters },
    ...{ first: share(full.first), three: share(full.first_three), wrong: share(full.wrong_at_nine) },
  });
}
