import type { Character } from "../../../publishing/contracts.ts";

/**
 * What a page needs of a taxon to compare, practise or narrow down: one entry of `identify.json`, in the language of
 * the page. Taxa of the atlas in the order of the checklist, then those outside the group.
 */
export interface IdentifyTaxon {
  readonly slug: string;
  readonly name: string;
  readonly short: string;
  readonly scientific: string;
  /** Not of the atlas's group: no records, no page of its own. */
  readonly outside: boolean;
  /** What it is in a word, of a taxon outside; else empty. */
  readonly kind: string;
  readonly aggregate: boolean;
  readonly members: readonly string[];
  readonly within: readonly string[];
  /** Castes told apart; empty where all look alike. */
  readonly castes: readonly string[];
  /** Id of its body plan; empty for none. */
  readonly plan: string;
  /** Of all castes and forms; those of every taxon of the group stand last. */
  readonly characters: readonly Character[];
  /** Body lengths from and to, in millimetres. */
  readonly sizes: readonly { readonly caste: string; readonly mm: readonly [number, number] }[];
  /** What a record needs, in words. */
  readonly evidence: string;
  /** Records in thirds of the month, of all castes and of each; 36 numbers, none of a taxon outside. */
  readonly season: readonly number[];
  readonly seasons: readonly { readonly caste: string; readonly records: readonly number[] }[];
  /** Habitats it was recorded in more than recorders were; at most three. */
  readonly habitats: readonly string[];
  /** Group of taxa by what is seen first. */
  readonly firstSeen: string;
  /** Slugs, those of taxa outside too. */
  readonly lookAlikes: readonly string[];
  readonly records: number;
}

/**
 * Body lengths from characters of the part "size", for a taxon that has no others.
 *
 * @returns lengths that are not written as "11–17 mm" are left out
 * @example sizesFrom([{ part: "size", state: "11–17 mm", castes: [] }]) // [{ caste: "", mm: [11, 17] }]
 */
export function sizesFrom(
  characters: readonly Pick<Character, "part" | "state" | "castes">[],
): { caste: string; mm: readonly [number, number] }[] {
  return characters.flatMap(({ part, state, castes }) => {
    const [, from, to] = state.match(/^([\d.]+)\s*[–-]\s*([\d.]+)\s*mm$/) ?? [];
    if (part !== "size" || from === undefined || to === undefined) return [];
    const mm = [Number(from), Number(to)] as const;
    return (castes.length === 0 ? [""] : castes).map((caste) => ({ caste, mm }));
  });
}
