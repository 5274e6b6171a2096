import type { IdentifyTaxon } from "../identify/identify-taxa.ts";

/** Most taxa of an atlas of which every two have a page of their own. */
export const MOST_FOR_ALL_PAIRS = 40;

/** A comparison that has a page. */
export interface Prepared {
  /** Part of its address: slugs in the order of the atlas joined by a plus sign, or one slug. */
  readonly path: string;
  readonly taxa: readonly IdentifyTaxon[];
  /** Of one taxon with others: how they were chosen. */
  readonly by: "pair" | "alike" | "group";
}

/**
 * The address of a pair.
 *
 * @param all every taxon, in the order of the atlas, those outside the group last
 * @example pairPath(["garden", "buff-tailed"], all) // "buff-tailed+garden"
 */
export function pairPath(slugs: readonly string[], all: readonly Pick<IdentifyTaxon, "slug">[]): string {
  const order = new Map(all.map(({ slug }, index) => [slug, index]));
  return [...slugs].sort((one, other) => (order.get(one) ?? 0) - (order.get(other) ?? 0)).join("+");
}

/**
 * Pairs that are taken for each other, whichever of the two says so.
 *
 * @example confusedPairs(all).map(([one, other]) => `${one.slug}+${other.slug}`) // ["red-tailed+red-tailed-cuckoo", …]
 */
export function confusedPairs(all: readonly IdentifyTaxon[]): [IdentifyTaxon, IdentifyTaxon][] {
  return pairsOf(all).filter(
    ([one, other]) => one.lookAlikes.includes(other.slug) || other.lookAlikes.includes(one.slug),
  );
}

function pairsOf(all: readonly IdentifyTaxon[]): [IdentifyTaxon, IdentifyTaxon][] {
  return all.flatMap((one, index) => all.slice(index + 1).map((other): [IdentifyTaxon, IdentifyTaxon] => [one, other]));
}

/**
 * Every comparison that has a page: each taxon of the atlas with what it is taken for; pairs that are confused; and in an
 * atlas of at most 40 taxa every pair of its own.
 *
 * @example preparedComparisons(all).length // 19 for six taxa, one of them outside the group
 */
export function preparedComparisons(all: readonly IdentifyTaxon[]): Prepared[] {
  const described = all.filter(({ characters }) => characters.length > 0);
  const own = described.filter(({ outside }) => !outside);
  const pairs = new Map<string, Prepared>();
  const wanted = [...confusedPairs(described), ...(own.length <= MOST_FOR_ALL_PAIRS ? pairsOf(own) : [])];
  for (const taxa of wanted) {
    const path = pairPath(
      taxa.map(({ slug }) => slug),
      all,
    );
    pairs.set(path, { path, taxa, by: "pair" });
  }
  return [...own.flatMap((taxon) => ownComparison(taxon, described)), ...pairs.values()];
}

/** A taxon with up to three it is taken for; where nobody says which, with others that are first seen alike. */
function ownComparison(taxon: IdentifyTaxon, all: readonly IdentifyTaxon[]): Prepared[] {
  const named = taxon.lookAlikes.flatMap((slug) => all.find((other) => other.slug === slug) ?? []);
  const alike = named.filter((other) => !taxon.within.includes(other.slug));
  const seen = all.filter((other) => other !== taxon && !other.outside && other.firstSeen === taxon.firstSeen);
  const others = (alike.length > 0 ? alike : seen).slice(0, 3);
  if (others.length === 0) return [];
  return [{ path: taxon.slug, taxa: [taxon, ...others], by: alike.length > 0 ? "alike" : "group" }];
}
