/** What of a taxon the helper needs: a part of what `identify.json` holds. */

/** A row of the scheme's table of characters. */
export interface NarrowCharacter {
  /** Castes it holds for; none means all. */
  readonly castes: readonly string[];
  /** Colour form or wear; empty is the usual one. */
  readonly form: string;
  readonly part: string;
  /** A colour, a word, "none", "absent" or "varies". */
  readonly state: string;
  readonly note: string;
  readonly reliability: "settles" | "supports" | "misleads";
  /** sight, photograph or specimen: the least that can show it. */
  readonly evidence: string;
}

/** A taxon of the atlas, a group of taxa, or one outside the atlas that is taken for one of them. */
export interface NarrowTaxon {
  readonly slug: string;
  readonly name: string;
  readonly short: string;
  readonly scientific: string;
  readonly outside: boolean;
  readonly aggregate: boolean;
  /** Slugs of the taxa in this group, those of groups in it too. */
  readonly members: readonly string[];
  readonly castes: readonly string[];
  readonly characters: readonly NarrowCharacter[];
  /** What a record needs, in words. */
  readonly evidence: string;
  /** Dated records of all castes in thirds of the month. */
  readonly season: readonly number[];
  readonly seasons: readonly { readonly caste: string; readonly records: readonly number[] }[];
}

/**
 * The taxa that an animal can be: a group with members is none, it is told by what its members come to. A group whose
 * members the atlas does not list stands for them.
 *
 * @example leavesOf([{ slug: "pair", members: ["a", "b"] }, { slug: "a", members: [] }, { slug: "b", members: [] }]).map(({ slug }) => slug) // ["a", "b"]
 */
export function leavesOf<Taxon extends Pick<NarrowTaxon, "slug" | "members">>(taxa: readonly Taxon[]): Taxon[] {
  const known = new Set(taxa.map(({ slug }) => slug));
  return taxa.filter(({ members }) => !members.some((member) => known.has(member)));
}

/**
 * Slugs of the leaves of a group, through groups within it.
 *
 * @param taxa all of them
 * @param group a taxon with members
 * @example leafMembers([pair, a, b], pair) // ["a", "b"]
 */
export function leafMembers(
  taxa: readonly Pick<NarrowTaxon, "slug" | "members">[],
  group: Pick<NarrowTaxon, "slug" | "members">,
): string[] {
  const bySlug = new Map(taxa.map((taxon) => [taxon.slug, taxon]));
  const leaves = new Set(leavesOf(taxa).map(({ slug }) => slug));
  const found = new Set<string>();
  const seen = new Set<string>();
  const waiting = [...group.members];
  for (let slug = waiting.pop(); slug !== undefined; slug = waiting.pop()) {
    if (seen.has(slug)) continue;
    seen.add(slug);
    if (leaves.has(slug)) found.add(slug);
    else waiting.push(...(bySlug.get(slug)?.members ?? []));
  }
  return [...found].sort();
}
