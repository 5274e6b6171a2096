import { atlas, taxon } from "../../published.ts";
import { language } from "../../words/say.ts";
import { plural, small } from "../text/words.ts";

let kept: { language: string; names: ReadonlyMap<string, string> } | undefined;

/**
 * Several of a caste, as the scheme says it in the language of the page, or by the English rules.
 *
 * @param caste id
 * @example severalOf("queen") // "queens"
 */
export function severalOf(caste: string): string {
  if (kept?.language !== language()) kept = { language: language(), names: severalNames() };
  return kept.names.get(caste) ?? caste;
}

function severalNames(): Map<string, string> {
  const names = new Map<string, string>();
  const castes = new Set(atlas().castes.map(({ id }) => id));
  for (const { slug } of atlas().taxa) {
    if (castes.size === 0) break;
    for (const { caste, label, many } of taxon(slug).season_by_caste)
      if (castes.delete(caste)) names.set(caste, small(many === undefined || many === "" ? plural(label) : many));
  }
  for (const { id, label } of atlas().castes) if (castes.has(id)) names.set(id, plural(small(label)));
  return names;
}
