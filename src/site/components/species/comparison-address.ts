import { address } from "../../address.ts";
import { atlas } from "../../published.ts";

/**
 * The address of the page on which taxa stand side by side: slugs of the atlas in the order of the checklist, then
 * those outside the group.
 *
 * @param slugs two to four taxa, in any order; one the atlas does not know is left out
 * @example comparisonAddress(["red-shanked", "red-tailed"]) // "/tell-apart/red-tailed+red-shanked/"
 */
export function comparisonAddress(slugs: readonly string[]): string {
  const { taxa, outside } = atlas();
  const ordered = [...taxa, ...outside].map(({ slug }) => slug).filter((slug) => slugs.includes(slug));
  return address(`tell-apart/${ordered.join("+")}/`);
}
