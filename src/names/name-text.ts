/**
 * A name as text, cleaned: Unicode NFC, one ordinary space between words, no space or quotation mark at the ends,
 * typographic hyphens and apostrophes made plain.
 *
 * @example cleanName("  Bombus\u00a0 terrestris ") // "Bombus terrestris"
 */
export function cleanName(text: string): string {
  return text
    .normalize("NFC")
    .replaceAll(/[\u2010-\u2013]/g, "-")
    .replaceAll(/[\u2018\u2019]/g, "'")
    .replaceAll(/[\u00ad\u200b\ufeff]/g, "")
    .replaceAll(/[\s_]+/g, " ")
    .replaceAll(/^["' ]+|["' ]+$/g, "");
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
  if (Math.abs(a.length - b.length) > limit) return limit + 1;
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row++) {
    const current = [row];
    for (let column = 1; column <= b.length; column++) {
      const replace = (last[column - 1] ?? 0) + (a[row - 1] === b[column - 1] ? 0 : 1);
      let best = Math.min(replace, (last[column] ?? 0) + 1, (current[column - 1] ?? 0) + 1);
      const exchanged = row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1];
      if (exchanged) best = Math.min(best, (beforeLast[column - 2] ?? 0) + 1);
      current.push(best);
    }
    if (Math.min(...current) > limit) return limit + 1;
    [beforeLast, last] = [last, current];
  }
  return Math.min(last[b.length] ?? 0, limit + 1);
}
