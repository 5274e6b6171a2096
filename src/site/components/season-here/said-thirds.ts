/** Thirds of the month for a script of the page, from the messages it carries: the catalogues would weigh too much. */
import type { Say } from "../../words/client.ts";
import { quantileThird } from "../charts/season.ts";
import { thirdValues } from "../text/month-names.ts";

/** Days of a third of the month. @example saidThird(7, say, "en-GB") // "11–20 March" */
export function saidThird(third: number, say: Say, language: string): string {
  return say("text.third", thirdValues(third, language));
}

/**
 * The season in four words: from the tenth to the ninetieth of a hundred records.
 *
 * @param counts records by third of the month, 30 or more
 * @example saidSeason(counts, say, "en-GB") // "mid March to mid October"
 */
export function saidSeason(counts: readonly number[], say: Say, language: string): string {
  const loosely = (share: number) => say("text.third-loosely", thirdValues(quantileThird(counts, share), language));
  const [from, to] = [loosely(0.1), loosely(0.9)];
  return from === to ? from : say("text.span", { from, to });
}
