import { leafMembers, leavesOf, type NarrowTaxon } from "./narrow-taxa.ts";

/** What the atlas knows of how often each taxon is met, as shares of everyday visits that recorded it. */
export interface Frequencies {
  /** Over the whole atlas, by slug: 0 to 1. */
  readonly everywhere: ReadonlyMap<string, number>;
  /** Visits the whole atlas is told from. */
  readonly visits: number;
  /** Round one square; left out where no place is told. */
  readonly here?: Neighbourhood | undefined;
}

/** Visits round one square, each weighted by how near it is: 1 in the square itself. */
export interface Neighbourhood {
  /** Sum of the weights. */
  readonly visits: number;
  /** Weighted share of them that recorded a taxon, by slug; left out is none. */
  readonly shares: ReadonlyMap<string, number>;
}

/**
 * Visits added to those of a neighbourhood, which find what the whole atlas finds. A place with fewer visits than this
 * is told mostly by the atlas, one with many by itself; and nothing is ever impossible because nobody has found it yet.
 */
export const PSEUDO_VISITS = 5;
/** A share of all visits stands for no more than this, so that its rate stays finite. */
const MOST = 0.99;

/**
 * Expected encounters a visit of each taxon that an animal can be: rate = −ln(1 − f), where f is the share of visits
 * that recorded it, smoothed. A group whose records exceed what its members' come to, because many are named to the
 * group alone, raises its members in proportion.
 *
 * @param taxa of the atlas, groups too; those outside it have no records and are left out
 * @param frequencies from the published tables
 * @returns above 0 for every leaf, by slug
 * @example encounterRates([common], { everywhere: new Map([["common", 0.5]]), visits: 999 }).get("common") // −ln(1 − (0.5 × 999 + 0.5) / 1000) = 0.693
 */
export function encounterRates(
  taxa: readonly Pick<NarrowTaxon, "slug" | "members" | "outside">[],
  { everywhere, visits, here }: Frequencies,
): Map<string, number> {
  const inAtlas = taxa.filter(({ outside }) => !outside);
  const rateOf = (slug: string) => {
    const overall = ((everywhere.get(slug) ?? 0) * visits + 0.5) / (visits + 1);
    const share =
      here === undefined
        ? overall
        : ((here.shares.get(slug) ?? 0) * here.visits + PSEUDO_VISITS * overall) / (here.visits + PSEUDO_VISITS);
    return -Math.log(1 - Math.min(share, MOST));
  };
  const rates = new Map(leavesOf(inAtlas).map(({ slug }) => [slug, rateOf(slug)]));
  const raised = new Map<string, number>();
  for (const group of inAtlas.filter(({ slug }) => !rates.has(slug))) {
    const members = leafMembers(inAtlas, group);
    const factor = rateOf(group.slug) / members.reduce((sum, slug) => sum + (rates.get(slug) ?? 0), 0);
    for (const slug of members) raised.set(slug, Math.max(raised.get(slug) ?? 1, factor));
  }
  return new Map([...rates].map(([slug, rate]) => [slug, rate * (raised.get(slug) ?? 1)]));
}
