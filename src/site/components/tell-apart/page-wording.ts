import { address } from "../../address.ts";
import { atlas } from "../../published.ts";
import { language } from "../../words/say.ts";
import { saysBody } from "../identify/body-says.ts";
import type { IdentifyTaxon } from "../identify/identify-taxa.ts";
import type { Wording } from "./comparison-words.ts";

/** Where a taxon is written of: its own page, or its place among those outside the group. */
export function linkTo({ slug, outside }: Pick<IdentifyTaxon, "slug" | "outside">): string {
  return outside ? `${address("tell-apart/outside/")}#${slug}` : address(`species/${slug}/`);
}

/** The wording of the pages of this build. */
export function pageWording(): Wording {
  const { castes, group, language: schemeTag } = atlas();
  return {
    says: saysBody,
    tag: language(),
    schemeTag,
    link: linkTo,
    labels: new Map(castes.map(({ id, label }) => [id, label])),
    group: group.one,
  };
}
