import type { AtlasFile, TaxonSummary } from "../../../publishing/contracts.ts";

/** A group by what one sees first, with its members: species before aggregates, the most recorded first. */
export interface FirstSeenGroup {
  readonly id: string;
  readonly title: string;
  readonly look_at: string;
  readonly taxa: readonly TaxonSummary[];
}

/**
 * The groups of the home page, in the checklist's order; a group without members is left out.
 *
 * @param atlas its groups and taxa
 * @returns empty where the scheme has no such groups
 * @example firstSeenGroups(atlas)[0]?.taxa.map(({ slug }) => slug) // ["red-tailed", "red-tailed-cuckoo"]
 */
export function firstSeenGroups({
  first_seen_groups,
  taxa,
}: Pick<AtlasFile, "first_seen_groups" | "taxa">): FirstSeenGroup[] {
  return first_seen_groups.flatMap(({ id, title, look_at }) => {
    const members = taxa
      .filter(({ first_seen }) => first_seen === id)
      .sort((one, other) => Number(one.is_aggregate) - Number(other.is_aggregate) || other.records - one.records);
    return members.length === 0 ? [] : [{ id, title, look_at, taxa: members }];
  });
}
