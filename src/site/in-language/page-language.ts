/** What the pages of one language have of a scheme: its own language, and the words it has in that of the pages. */
import type { TranslationFile } from "../../publishing/contracts.ts";
import { markLanguage } from "../words/fallback.ts";
import { baseLanguage } from "../words/language.ts";

/** The language of the pages beside that of the scheme. */
export interface PageLanguage {
  /** BCP 47 tag of the scheme's first language. */
  readonly first: string;
  /** BCP 47 tag of the pages. */
  readonly tag: string;
  /** What the scheme has in it; undefined in its first language, and where it has nothing. */
  readonly words: TranslationFile | undefined;
}

/**
 * Words in the page's language, or those of the first language marked as such.
 *
 * @param own words in the page's language; empty or undefined where there are none
 * @param other the first language's
 * @example wordsIn({ first: "en", tag: "fr", words: undefined }, "", "Queen") // markLanguage("Queen", "en")
 */
export function wordsIn({ first, tag }: PageLanguage, own: string | undefined, other: string): string {
  if (own !== undefined && own !== "") return own;
  return first === tag ? other : markLanguage(other, first);
}

interface Named {
  readonly scientific_name: string;
  readonly vernacular_name: string;
  readonly short_name: string;
  readonly vernacular_names: readonly { readonly name: string; readonly language: string }[];
}

/** What a taxon is called on the pages of one language, and what else it is called. */
export interface NamesOnPage {
  vernacular_name: string;
  short_name: string;
  other_names: { name: string; language: string }[];
}

/**
 * The names of a taxon on the pages of a language: the first vernacular name the checklist has in it, else that of the
 * scheme's first language, marked as such; the scientific name where neither has one. Sort and compare such names by
 * `withoutMarks`.
 *
 * @example namesIn({ first: "en-GB", tag: "fr", words: undefined }, taxon).vernacular_name // "Bourdon des pierres"
 */
export function namesIn(page: PageLanguage, taxon: Named): NamesOnPage {
  const { scientific_name, vernacular_name, short_name, vernacular_names } = taxon;
  const others = (shown: string) => vernacular_names.filter(({ name }) => name !== shown);
  if (page.first === page.tag) return { vernacular_name, short_name, other_names: others(vernacular_name) };
  const own = vernacular_names.find(({ language }) => baseLanguage(language) === baseLanguage(page.tag))?.name;
  if (own !== undefined) {
    const shown = own.charAt(0).toLocaleUpperCase(page.tag) + own.slice(1);
    return { vernacular_name: shown, short_name: shown, other_names: others(own) };
  }
  const marked = (name: string) => (name === scientific_name ? name : markLanguage(name, page.first));
  return {
    vernacular_name: marked(vernacular_name),
    short_name: marked(short_name),
    other_names: others(vernacular_name),
  };
}
