import type { TaxonFile } from "../../../publishing/contracts.ts";
import type { DrawnTaxon } from "../identify/bodies.ts";
import type { PlanRow } from "../identify/body-plan.ts";
import { saysBody } from "../identify/body-says.ts";
import { type RibbonColumn, ribbonColumns } from "../identify/ribbon.ts";

/**
 * Look-alikes of the atlas that have a body, beside the ribbon of a taxon: for each the column of its first caste.
 *
 * @param taxon whose look-alikes are wanted
 * @param most columns that fit beside its own
 * @param shortName of a taxon by slug
 * @example lookAlikeColumns(redTailed, plan.rows, labels, bodies(), shortName, 3)[0]?.name // "Red-tailed cuckoo"
 */
export function lookAlikeColumns(
  { look_alikes }: Pick<TaxonFile, "look_alikes">,
  rows: readonly PlanRow[],
  labels: ReadonlyMap<string, string>,
  drawn: ReadonlyMap<string, DrawnTaxon>,
  shortName: (slug: string) => string,
  most: number,
): { name: string; column: RibbonColumn }[] {
  return look_alikes
    .flatMap(({ slug }) => {
      const body = slug === null ? undefined : drawn.get(slug);
      const column = body === undefined ? undefined : ribbonColumns(body, rows, labels, saysBody)[0];
      return slug === null || column === undefined || column.states.size === 0
        ? []
        : [{ name: shortName(slug), column }];
    })
    .slice(0, Math.max(0, most));
}
