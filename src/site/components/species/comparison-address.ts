import { address } from "../../address.ts";
import { identifyTaxa } from "../identify/gather-identify-taxa.ts";
import { pairPath, preparedComparisons } from "../tell-apart/prepared.ts";

/**
 * The address of the page on which taxa stand side by side.
 *
 * @param slugs two taxa in any order, or one for it beside what it is taken for
 * @returns undefined where the atlas has no such page
 * @example comparisonAddress(["red-shanked", "red-tailed"]) // "/tell-apart/red-tailed+red-shanked/"
 */
export function comparisonAddress(slugs: readonly string[]): string | undefined {
  const all = identifyTaxa();
  const wanted = pairPath(slugs, all);
  return preparedComparisons(all).some(({ path }) => path === wanted) ? address(`tell-apart/${wanted}/`) : undefined;
}
