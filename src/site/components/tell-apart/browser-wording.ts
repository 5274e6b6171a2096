import type { Say } from "../../words/client.ts";
import type { Wording } from "./comparison-words.ts";
import type { Caste } from "./views.ts";

/** What a page that identifies tells its script, in an element with the id `identify-facts`. */
export interface PageFacts {
  readonly castes: readonly Caste[];
  /** What one of the animals is called. */
  readonly group: string;
  /** BCP 47 tag of the scheme's own texts. */
  readonly schemeTag: string;
  /** Address of the file of taxa, which lies at the top of the pages of its language. */
  readonly taxa: string;
}

/** Reads the facts of the page. */
export function pageFacts(): PageFacts {
  return JSON.parse(document.querySelector("#identify-facts")?.textContent ?? "{}") as PageFacts;
}

/** The wording of a page in the browser. */
export function wordingInBrowser({ castes, group, schemeTag, taxa }: PageFacts, says: Say): Wording {
  const top = taxa.slice(0, -"identify.json".length);
  return {
    says,
    tag: document.documentElement.lang,
    schemeTag,
    link: ({ slug, outside }) => (outside ? `${top}tell-apart/outside/#${slug}` : `${top}species/${slug}/`),
    labels: new Map(castes.map(({ id, label }) => [id, label])),
    group,
  };
}
