import type { IdentifyTaxon } from "../identify/identify-taxa.ts";

/**
 * Parts that differ between taxa of the checklist. Any other tells only what kind of animal it is, and says so too
 * plainly beside a drawing that asks for that: "pairs of wings: one".
 *
 * @example partsWithin([redTailed, gardenBee, hoverfly]).has("wing-pairs") // false
 */
export function partsWithin(all: readonly IdentifyTaxon[]): Set<string> {
  const rows = all.filter(({ outside }) => !outside).flatMap(({ characters }) => characters);
  const byPart = Map.groupBy(rows, ({ part }) => part);
  return new Set([...byPart].flatMap(([part, own]) => (new Set(own.map(({ state }) => state)).size > 1 ? [part] : [])));
}
