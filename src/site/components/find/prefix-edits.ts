/** Longest query that is compared; what is longer is cut. */
export const LONGEST_QUERY = 48;

/** Most edits a comparison is asked for. */
const MOST = 2;
const rows = [0, 1, 2].map(() => new Uint8Array(LONGEST_QUERY + MOST + 2)) as [Uint8Array, Uint8Array, Uint8Array];

/**
 * Edits that may stand in a query: none up to three letters, one up to seven, two above.
 *
 * @param length letters of the query
 * @example editsAllowed(8) // 2
 */
export function editsAllowed(length: number): number {
  return length <= 3 ? 0 : length <= 7 ? 1 : MOST;
}

/**
 * The least number of edits that make a query the beginning of a name: a letter put in, left out or changed, or two
 * neighbours swapped (optimal string alignment: no letter is edited twice). Only cells within the limit of the diagonal
 * are filled in, so that thousands of names are compared between two strokes of a key.
 *
 * Source: Damerau (1964), doi:10.1145/363958.363994; banding after Ukkonen (1985), doi:10.1016/S0019-9958(85)80046-2.
 *
 * @param query letters' codes, at most 48
 * @param name letters' codes
 * @param start where in the name the beginning is taken, from 0
 * @param limit edits allowed, 0 to 2
 * @returns 0 to `limit`; `limit` + 1 where more are needed
 * @example prefixEdits(codes("gardne"), codes("garden bumblebee"), 0, 1) // 1
 */
export function prefixEdits(query: Uint16Array, name: Uint16Array, start: number, limit: number): number {
  const length = query.length;
  const width = Math.min(name.length - start, length + limit);
  const beyond = limit + 1;
  if (width < length - limit) return beyond;
  let [beforeLast, last, row] = rows;
  for (let column = 0; column <= width; column += 1) last[column] = Math.min(column, beyond);
  for (let line = 1; line <= length; line += 1) {
    const from = Math.max(1, line - limit);
    const to = Math.min(width, line + limit);
    row[from - 1] = from === 1 ? Math.min(line, beyond) : beyond;
    let best = row[from - 1] ?? beyond;
    for (let column = from; column <= to; column += 1) {
      const letter = name[start + column - 1];
      let edits = (last[column - 1] ?? beyond) + (query[line - 1] === letter ? 0 : 1);
      if (column < line + limit) edits = Math.min(edits, (last[column] ?? beyond) + 1);
      edits = Math.min(edits, (row[column - 1] ?? beyond) + 1, beyond);
      if (line > 1 && column > 1 && query[line - 2] === letter && query[line - 1] === name[start + column - 2])
        edits = Math.min(edits, (beforeLast[column - 2] ?? beyond) + 1);
      row[column] = edits;
      if (edits < best) best = edits;
    }
    if (best > limit) return beyond;
    [beforeLast, last, row] = [last, row, beforeLast];
  }
  let least = beyond;
  for (let column = Math.max(0, length - limit); column <= width; column += 1)
    least = Math.min(least, last[column] ?? beyond);
  return least;
}

/** Codes of a text's letters, as `prefixEdits` compares them. @example codes("ab") // Uint16Array [97, 98] */
export function codes(text: string): Uint16Array {
  return Uint16Array.from({ length: text.length }, (_, index) => text.charCodeAt(index));
}
