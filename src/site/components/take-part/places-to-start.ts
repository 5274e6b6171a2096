import { atlas, publishedFolder, region, regions, taxon } from "../../published.ts";
import { language, say } from "../../words/say.ts";
import type { StarterTaxon } from "./starters.ts";

/** A place that has a list to start with: the whole atlas, or a region of the scheme. */
export interface PlaceToStart {
  /** Last part of its address; empty for the whole atlas. */
  readonly slug: string;
  readonly name: string;
}

/** The whole atlas, then its regions. @example placesToStart()[0]?.slug // "" */
export function placesToStart(): PlaceToStart[] {
  const own = regions().layers.flatMap(({ regions: list }) => list.map(({ slug, name }) => ({ slug, name })));
  return [{ slug: "", name: say("take-part.everywhere") }, ...own];
}

/** Records of each taxon in a place. @example recordsIn("").get("tree") // 1900 */
export function recordsIn(slug: string): ReadonlyMap<string, number> {
  if (slug === "") return new Map(atlas().taxa.map((one) => [one.slug, one.records]));
  return new Map(region(slug).taxa_list.map((one) => [one.slug, one.records]));
}

let kept: { key: string; taxa: StarterTaxon[] } | undefined;

/** Every taxon with its characters and seasons. Read once a build. @example starterTaxa().length // 27 */
export function starterTaxa(): readonly StarterTaxon[] {
  const key = `${language()} ${publishedFolder()}`;
  if (kept?.key !== key)
    kept = {
      key,
      taxa: atlas().taxa.map(({ slug }) => {
        const { is_aggregate, generalised_to, castes, characters, within, season_by_caste } = taxon(slug);
        return { slug, is_aggregate, generalised_to, castes, characters, within, season_by_caste };
      }),
    };
  return kept.taxa;
}
