import type { Character, TaxonFile } from "../../../publishing/contracts.ts";

/** One part of the body that a photograph should show, with what it decides. */
export interface DecidingPart {
  readonly part: string;
  readonly decides: readonly { readonly slug: string; readonly castes: readonly string[] }[];
}

/**
 * Parts that settle a name in a photograph, those that decide most first. Members and groups count alike.
 *
 * @param taxa with their characters
 * @example decidingParts(taxa)[0] // { part: "hind-leg", decides: [{ slug: "red-tailed", castes: ["queen", "worker"] }] }
 */
export function decidingParts(taxa: readonly Pick<TaxonFile, "slug" | "characters">[]): DecidingPart[] {
  const parts = new Map<string, Map<string, Set<string>>>();
  for (const { slug, characters } of taxa)
    for (const { part, castes } of characters.filter(settlesInPhotograph)) {
      const bySlug = parts.get(part) ?? new Map<string, Set<string>>();
      bySlug.set(slug, new Set([...(bySlug.get(slug) ?? []), ...castes]));
      parts.set(part, bySlug);
    }
  return [...parts]
    .map(([part, bySlug]) => ({ part, decides: [...bySlug].map(([slug, castes]) => ({ slug, castes: [...castes] })) }))
    .sort((one, other) => other.decides.length - one.decides.length || (one.part < other.part ? -1 : 1));
}

function settlesInPhotograph({ reliability, evidence }: Character): boolean {
  return reliability === "settles" && evidence === "photograph";
}

/** Ways of taking a picture of a part; `other` for any that is not known. */
export type HowToPhotograph = "face" | "thorax" | "abdomen" | "leg" | "wings" | "size" | "antenna" | "coat" | "other";

const HOW: readonly (readonly [RegExp, HowToPhotograph])[] = [
  [/^(?:face|face-length|eyes|head)$/, "face"],
  [/^(?:collar|mid-thorax|rear-thorax|thorax|wing-base)$/, "thorax"],
  [/^(?:[ST]\d+|tail|tip|abdomen|underside|appendages)$/i, "abdomen"],
  [/leg/, "leg"],
  [/^wings?$/, "wings"],
  [/^size$/, "size"],
  [/^antennae?$/, "antenna"],
  [/^coat$/, "coat"],
];

/** How a part is photographed. @example howToPhotograph("T4") // "abdomen" */
export function howToPhotograph(part: string): HowToPhotograph {
  return HOW.find(([pattern]) => pattern.test(part))?.[1] ?? "other";
}

/** Parts that one picture shows. */
export interface Picture {
  readonly how: HowToPhotograph;
  readonly parts: readonly DecidingPart[];
}

/**
 * The same by the picture that shows them, the one that decides most first.
 *
 * @example picturesOf(decidingParts(taxa))[0]?.how // "leg"
 */
export function picturesOf(parts: readonly DecidingPart[]): Picture[] {
  const decided = ({ parts: own }: Picture) => own.reduce((sum, { decides }) => sum + decides.length, 0);
  return [...Map.groupBy(parts, ({ part }) => howToPhotograph(part))]
    .map(([how, own]) => ({ how, parts: own }))
    .sort((one, other) => decided(other) - decided(one));
}
