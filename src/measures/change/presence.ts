/** Which taxa were recorded in which squares in which periods, laid out so that a square's taxa lie side by side. */
export interface Presence {
  /** Sorted, so that ties are always broken alike. */
  taxa: readonly string[];
  /** Sorted. */
  squares: readonly string[];
  periods: number;
  /** 1 where recorded, at ((period × squares) + square) × taxa + taxon. */
  recorded: Uint8Array;
}

/**
 * Whether each taxon was recorded in each square in any of the periods.
 *
 * @returns 1 where recorded, at square × taxa + taxon
 * @example everRecorded({ taxa: ["a", "b"], squares: ["N00"], periods: 2, recorded: Uint8Array.of(1, 0, 0, 0) }) // => Uint8Array [1, 0]
 */
export function everRecorded({ taxa, squares, periods, recorded }: Presence): Uint8Array {
  const size = taxa.length * squares.length;
  const ever = new Uint8Array(size);
  for (let period = 0; period < periods; period++)
    for (let cell = 0; cell < size; cell++)
      ever[cell] = (ever[cell] as number) | (recorded[period * size + cell] as number);
  return ever;
}

/**
 * Squares of each taxon in each period.
 *
 * @returns counts at period × taxa + taxon
 * @example squaresOfTaxa({ taxa: ["a", "b"], squares: ["N00"], periods: 2, recorded: Uint8Array.of(1, 0, 0, 0) }) // => Int32Array [1, 0, 0, 0]
 */
export function squaresOfTaxa({ taxa, squares, periods, recorded }: Presence): Int32Array {
  const counts = new Int32Array(periods * taxa.length);
  let at = 0;
  for (let period = 0; period < periods; period++)
    for (let square = 0; square < squares.length; square++)
      for (let taxon = 0; taxon < taxa.length; taxon++, at++)
        counts[period * taxa.length + taxon] =
          (counts[period * taxa.length + taxon] as number) + (recorded[at] as number);
  return counts;
}

/**
 * The squares in which any taxon was recorded in both periods.
 *
 * @returns indices of squares, rising
 * @example squaresInBoth({ taxa: ["a"], squares: ["N00", "N01"], periods: 2, recorded: Uint8Array.of(1, 1, 1, 0) }, 0, 1) // => [0]
 */
export function squaresInBoth({ taxa, squares, recorded }: Presence, from: number, to: number): number[] {
  const isRecorded = (period: number, square: number) => {
    const start = (period * squares.length + square) * taxa.length;
    return recorded.subarray(start, start + taxa.length).includes(1);
  };
  return squares.flatMap((_, square) => (isRecorded(from, square) && isRecorded(to, square) ? [square] : []));
}
