import type { NameEntry, NameIndex } from "./name-index.ts";
import { editDistance, vernacularKey } from "./name-text.ts";
import { nameKey, type ReadName } from "./read-name.ts";

const NEAREST = 5;

/**
 * The names of a checklist nearest to a name by edit distance, nearest first, at most five: scientific names, a bare
 * epithet or an abbreviated genus by the epithet alone, and vernacular names. As many letters may differ as an eighth
 * of its length, rounded up, and never more than three.
 *
 * @example nearestNames(readName("Bombus partorum"), names) // ["Bombus pratorum"]
 */
export function nearestNames(name: ReadName, names: NameIndex): string[] {
  const scientificKey = nameKey(name);
  const plainKey = vernacularKey(name.text);
  const near = new Map<string, number>();
  const measure = (key: string, entries: readonly NameEntry[], wanted: string): void => {
    const limit = Math.min(3, Math.ceil(wanted.length / 8));
    const distance = editDistance(key, wanted, limit);
    if (distance > limit) return;
    for (const entry of entries) near.set(entry.name, Math.min(distance, near.get(entry.name) ?? distance));
  };
  const bareEpithet = name.epithets.length === 0 ? scientificKey : "";
  for (const [key, entries] of names.scientific) {
    const abbreviated = name.genusAbbreviated && key.startsWith(name.genus.toLowerCase());
    measure(
      abbreviated ? key.slice(key.indexOf(" ") + 1) : key,
      entries,
      abbreviated ? nameKey({ ...name, genus: "" }) : scientificKey,
    );
    if (bareEpithet !== "") measure(key.slice(key.indexOf(" ") + 1), entries, bareEpithet);
  }
  for (const [key, entries] of names.vernacular) measure(key, entries, plainKey);
  return [...near]
    .sort(([a, near1], [b, near2]) => near1 - near2 || (a < b ? -1 : 1))
    .slice(0, NEAREST)
    .map(([found]) => found);
}
