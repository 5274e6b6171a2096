import { address } from "../../address.ts";
import { atlas } from "../../published.ts";
import { escapeHtml } from "../../words/escape-html.ts";
import { language } from "../../words/say.ts";

/** A list of marked-up parts in the language of the page: "A, B and C", or with "or". */
function joined(parts: readonly string[], type: "conjunction" | "disjunction"): string {
  const pieces = new Intl.ListFormat(language(), { type }).formatToParts(parts.map((_, index) => String(index)));
  return pieces
    .map((piece) => (piece.type === "element" ? parts[Number(piece.value)] : escapeHtml(piece.value)))
    .join("");
}

/**
 * Names of taxa of the atlas as links to their pages, in the order of the checklist.
 *
 * @param slugs those the atlas does not have are left out
 * @param type whether all are meant or one of them
 * @example linkedNames(["vestal-cuckoo", "buff-tailed"]) // '<a href="/species/buff-tailed/">Buff-tailed bumblebee</a> and <a …'
 */
export function linkedNames(slugs: readonly string[], type: "conjunction" | "disjunction" = "conjunction"): string {
  const named = atlas().taxa.filter(({ slug }) => slugs.includes(slug));
  return joined(
    named.map(
      ({ slug, vernacular_name }) => `<a href="${address(`species/${slug}/`)}">${escapeHtml(vernacular_name)}</a>`,
    ),
    type,
  );
}

/** Scientific names in italics, with commas. @example italicNames(["Apis muscorum"]) // "<i>Apis muscorum</i>" */
export function italicNames(names: readonly string[]): string {
  return names.map((name) => `<i>${escapeHtml(name)}</i>`).join(", ");
}
