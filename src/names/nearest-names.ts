import type { NameEntry, NameIndex } from "./name-index.ts";
import { editDistance, vernacularKey } from "./name-text.ts";
import { nameKey, type ReadName } from "./read-name.ts";

const NEAREST = 5;

/** A text, and which kinds of letters it has: one bit each, letters that share a bit taken for one. */
interface Spelling {
  readonly text: string;
  readonly letters: number;
}

/** A name of the checklist as it is compared, whole and without its genus. */
interface Compared {
  readonly whole: Spelling;
  readonly epithets: Spelling;
  readonly entries: readonly NameEntry[];
}

const prepared = new WeakMap<ReadonlyMap<string, readonly NameEntry[]>, readonly Compared[]>();

/**
 * The names of a checklist nearest to a name by edit distance, nearest first, at most five: scientific names, a bare
 * epithet or an abbreviated genus by the epithet alone, and vernacular names. As many letters may differ as an eighth
 * of its length, rounded up, and never more than three.
 *
 * @example nearestNames(readName("Bombus partorum"), names) // ["Bombus pratorum"]
 */
export function nearestNames(name: ReadName, names: NameIndex): string[] {
  const scientific = spelling(nameKey(name));
  const plain = spelling(vernacularKey(name.text));
  const epithets = spelling(name.genusAbbreviated ? nameKey({ ...name, genus: "" }) : "");
  const isBare = name.epithets.length === 0 && scientific.text !== "";
  const near = new Map<string, number>();
  const measure = (known: Spelling, entries: readonly NameEntry[], wanted: Spelling): void => {
    const distance = distanceWithin(known, wanted, Math.min(3, Math.ceil(wanted.text.length / 8)));
    if (distance === undefined) return;
    for (const entry of entries) near.set(entry.name, Math.min(distance, near.get(entry.name) ?? distance));
  };
  const genus = name.genus.toLowerCase();
  for (const known of comparedOf(names.scientific)) {
    const abbreviated = name.genusAbbreviated && known.whole.text.startsWith(genus);
    measure(abbreviated ? known.epithets : known.whole, known.entries, abbreviated ? epithets : scientific);
    if (isBare) measure(known.epithets, known.entries, scientific);
  }
  for (const known of comparedOf(names.vernacular)) measure(known.whole, known.entries, plain);
  return [...near]
    .sort(([a, near1], [b, near2]) => near1 - near2 || (a < b ? -1 : 1))
    .slice(0, NEAREST)
    .map(([found]) => found);
}

/**
 * The edit distance, undefined beyond the limit. An edit takes away or adds one letter at most, so that where one text has more
 * kinds of letters that the other lacks than the limit, nothing need be measured: so it is with nearly all names.
 */
function distanceWithin(a: Spelling, b: Spelling, limit: number): number | undefined {
  if (kinds(a.letters & ~b.letters) > limit || kinds(b.letters & ~a.letters) > limit) return undefined;
  const distance = editDistance(a.text, b.text, limit);
  return distance > limit ? undefined : distance;
}

function comparedOf(names: ReadonlyMap<string, readonly NameEntry[]>): readonly Compared[] {
  const found = prepared.get(names);
  if (found !== undefined) return found;
  const compared = [...names].map(([key, entries]) => ({
    whole: spelling(key),
    epithets: spelling(key.slice(key.indexOf(" ") + 1)),
    entries,
  }));
  prepared.set(names, compared);
  return compared;
}

function spelling(text: string): Spelling {
  let letters = 0;
  for (let index = 0; index < text.length; index += 1) letters |= 1 << (text.charCodeAt(index) & 31);
  return { text, letters };
}

/** How many bits are set. */
function kinds(letters: number): number {
  let count = 0;
  for (let left = letters; left !== 0; left &= left - 1) count += 1;
  return count;
}
