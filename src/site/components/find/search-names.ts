import { folded } from "./fold.ts";
import { codes, editsAllowed, LONGEST_QUERY, prefixEdits } from "./prefix-edits.ts";
import type { SearchEntry, SearchName } from "./search-file.ts";

/** Something found, with the name that was met and how well. */
export interface Found {
  readonly entry: SearchEntry;
  readonly name: SearchName;
  /** Letters that were put in, left out, changed or swapped. */
  readonly edits: number;
  /** Whether the query is the whole of the name. */
  readonly whole: boolean;
}

interface IndexedName {
  readonly entry: SearchEntry;
  readonly order: number;
  readonly name: SearchName;
  readonly letters: Uint16Array;
  /** Where its words begin. */
  readonly starts: readonly number[];
}

/** Names ready to be compared. */
export type NameIndex = readonly IndexedName[];

/** Makes names ready to be compared; some milliseconds for thousands. @example indexNames(file.entries).length // 412 */
export function indexNames(entries: readonly SearchEntry[]): NameIndex {
  return entries.flatMap((entry, order) =>
    entry.names.map((name) => {
      const text = folded(name[0]);
      const starts = [0, ...[...text.matchAll(/ /g)].map(({ index }) => index + 1)];
      return { entry, order, name, letters: codes(text), starts };
    }),
  );
}

/**
 * Entries a query may mean, likeliest first: those with the fewest edits, then those whose name it is, then those whose name
 * begins with it, then in the order of the file. The query may be half typed, be of any word of a name, and have its
 * words in any order.
 *
 * @param index of the names
 * @param query as typed
 * @param most entries at most
 * @returns one an entry, with the name that fits best
 * @example search(index, "bufftaild", 8)[0]?.entry.title // "Buff-tailed bumblebee"
 */
export function search(index: NameIndex, query: string, most: number): Found[] {
  const text = folded(query).slice(0, LONGEST_QUERY);
  if (text === "") return [];
  const sought = codes(text);
  const words = text.split(" ").map(codes);
  const best = new Map<SearchEntry, Found & { rank: number }>();
  for (const one of index) {
    const fit = fitOf(one, sought, words);
    if (fit === undefined) continue;
    const whole = fit.edits === 0 && one.letters.length === sought.length;
    const rank = fit.edits * 10_000_000 + (whole ? 0 : 100_000) + fit.place * 200_000 + one.order;
    if (rank < (best.get(one.entry)?.rank ?? Number.POSITIVE_INFINITY))
      best.set(one.entry, { entry: one.entry, name: one.name, edits: fit.edits, whole, rank });
  }
  return [...best.values()]
    .sort((one, other) => one.rank - other.rank)
    .slice(0, most)
    .map(({ rank: _, ...found }) => found);
}

/** Place: 0 at the beginning of the name, 1 at a later word, 2 with the words in another order. */
function fitOf(
  { letters, starts }: IndexedName,
  sought: Uint16Array,
  words: readonly Uint16Array[],
): { edits: number; place: 0 | 1 | 2 } | undefined {
  const limit = editsAllowed(sought.length);
  let fit: { edits: number; place: 0 | 1 | 2 } | undefined;
  for (const start of starts) {
    const edits = prefixEdits(sought, letters, start, limit);
    if (edits <= limit && edits < (fit?.edits ?? limit + 1)) fit = { edits, place: start === 0 ? 0 : 1 };
  }
  if (words.length < 2 || fit?.edits === 0) return fit;
  const apart = wordsApart(letters, starts, words);
  return apart === undefined || (fit !== undefined && fit.edits <= apart) ? fit : { edits: apart, place: 2 };
}

/** Edits when each word of the query begins some word of the name; undefined where one begins none. */
function wordsApart(
  letters: Uint16Array,
  starts: readonly number[],
  words: readonly Uint16Array[],
): number | undefined {
  let sum = 0;
  for (const word of words) {
    const limit = editsAllowed(word.length);
    const least = Math.min(...starts.map((start) => prefixEdits(word, letters, start, limit)));
    if (least > limit) return undefined;
    sum += least;
  }
  return sum;
}

/**
 * The one thing a query clearly means: all that was found, or the only one it names without an error.
 *
 * @param found in order, as `search` gives it
 * @returns undefined where several are as likely
 * @example clearAnswer(search(index, "bombus pascuorum", 8))?.entry.title // "Common carder bumblebee"
 */
export function clearAnswer(found: readonly Found[]): Found | undefined {
  const [first, second] = found;
  if (first === undefined || second === undefined) return first;
  if (first.whole !== second.whole) return first;
  return !first.whole && first.edits === 0 && second.edits > 0 ? first : undefined;
}
