const ENDS = new Set(['"', "'", " "]);

/**
 * A name as text, cleaned: Unicode NFC, one ordinary space between words, no space or quotation mark at the ends,
 * typographic hyphens and apostrophes made plain, marks without width left out.
 *
 * @example cleanName("  Bombus\u00a0 terrestris ") // "Bombus terrestris"
 */
export function cleanName(text: string): string {
  const plain = text
    .normalize("NFC")
    .replaceAll(/[\u2010-\u2013]/g, "-")
    .replaceAll(/[\u2018\u2019]/g, "'")
    .replaceAll(/[\u00ad\u200b-\u200f\u202a-\u202e\u2060\u2066-\u2069\ufeff]/g, "")
    .replaceAll(/[\s_]+/g, " ");
  // By hand: a pattern for the end takes a square of the time where quotation marks stand in the middle.
  let [from, to] = [0, plain.length];
  while (from < to && ENDS.has(plain.charAt(from))) from += 1;
  while (to > from && ENDS.has(plain.charAt(to - 1))) to -= 1;
  return plain.slice(from, to);
}

/**
 * What is compared of a vernacular name: its letters and digits in lower case, so that hyphens, spaces and
 * apostrophes make no difference.
 *
 * @example vernacularKey("Buff-tailed Bumblebee") // "bufftailedbumblebee"
 */
export function vernacularKey(text: string): string {
  return cleanName(text)
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]/gu, "");
}

/**
 * Edit distance between two texts: the fewest insertions, deletions, replacements and exchanges of neighbours, or
 * `limit` + 1 as soon as it is known to be more than `limit`. (Optimal string alignment, after Damerau 1964,
 * Communications of the ACM 7: 171–176.)
 *
 * @example editDistance("pratorum", "partorum", 3) // 1
 */
export function editDistance(a: string, b: string, limit: number): number {
  const beyond = limit + 1;
  if (Math.abs(a.length - b.length) > limit) return beyond;
  let [beforeLast, last, current] = [0, 1, 2].map(() => new Array<number>(b.length + 1).fill(beyond)) as [
    number[],
    number[],
    number[],
  ];
  for (let column = 0; column <= Math.min(b.length, limit); column++) last[column] = column;
  for (let row = 1; row <= a.length; row++) {
    // A path that strays from the diagonal by more than the limit costs more than the limit.
    const [from, to] = [Math.max(1, row - limit), Math.min(b.length, row + limit)];
    current[from - 1] = from === 1 ? Math.min(row, beyond) : beyond;
    if (to < b.length) current[to + 1] = beyond;
    let least = current[from - 1] ?? beyond;
    for (let column = from; column <= to; column++) {
      const replaced = (last[column - 1] ?? beyond) + (a[row - 1] === b[column - 1] ? 0 : 1);
      let best = Math.min(replaced, (last[column] ?? beyond) + 1, (current[column - 1] ?? beyond) + 1);
      const exchanged = row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1];
      if (exchanged) best = Math.min(best, (beforeLast[column - 2] ?? beyond) + 1);
      current[column] = best;
      if (best < least) least = best;
    }
    if (least > limit) return beyond;
    [beforeLast, last, current] = [last, current, beforeLast];
  }
  return Math.min(last[b.length] ?? beyond, beyond);
}
