import type { AtlasFile } from "../../publishing/contracts.ts";
import { monthName } from "../components/text/thirds.ts";
import { small } from "../components/text/words.ts";
import { isPublishedText, sayPublished } from "../words/published-text.ts";
import { say } from "../words/say.ts";
import { type PageLanguage, wordsIn } from "./page-language.ts";

const MONTHS = "January February March April May June July August September October November December".split(" ");

/**
 * Which records a rule of the scheme's list is about: territories, castes and months, parted as the tables part them.
 *
 * @param scope as published, in the scheme's first language
 * @param atlas in the language of the pages, and as published
 * @example scopeIn(page, "Ireland; queen; May, June", { shown, published }) // "Irlande; reine; mai, juin"
 */
export function scopeIn(
  page: PageLanguage,
  scope: string,
  { shown, published }: { shown: AtlasFile; published: AtlasFile },
): string {
  const said = (word: string): string => {
    const territory = published.territories.findIndex(({ name }) => name === word);
    const caste = published.castes.findIndex(({ label }) => label.toLowerCase() === word);
    const label = shown.castes[caste]?.label;
    const month = MONTHS.indexOf(word);
    if (month >= 0) return small(monthName(month));
    return (
      shown.territories[territory]?.name ??
      (label === undefined ? undefined : small(label)) ??
      (isPublishedText(word) ? sayPublished(word) : wordsIn(page, "", word))
    );
  };
  const parts = scope === "" ? [] : scope.split("; ");
  return parts.map((part) => part.split(", ").map(said).join(", ")).join(say("text.between"));
}
