/** Visits that recorded a taxon of the group, by square; the taxa of visit v lie from `starts[v]` up to `starts[v + 1]`. */
export interface GroupVisits {
  /** Index of the square, rising. */
  squares: Int32Array;
  periods: Uint8Array;
  /** Third of a month, 0 to 35. */
  thirds: Uint8Array;
  starts: Int32Array;
  taxa: Int32Array;
}

/** Two periods brought to as many visits in each square and part of the season. */
export interface EqualEffort {
  /** Chance of each taxon to be recorded in a square by the visits kept, earlier and recent, at square × taxa + taxon. */
  expected: readonly [Float64Array, Float64Array];
  /** Chance of each visit to be kept; 0 for those of other periods. */
  weights: Float64Array;
}

/** Parts the season is divided into, with about as many visits in each. */
const PARTS = 3;

/**
 * Brings two periods to equal effort: in each square and part of the season as many visits of the one as of the other, those
 * of the period with more being thinned at random. Nothing is drawn: what is given is the chance that some visit kept
 * recorded the taxon, 1 − Π C(n − m, k)/C(n, k) over parts of the season, of n visits m with the taxon and k kept, which is
 * rarefaction (Hurlbert 1971, Ecology 52: 577–586) turned to visits. A square visited in one period only keeps none.
 * The parts of the season are three, of about as many visits of the two periods together.
 *
 * @param sizes numbers of squares and taxa
 * @example atEqualEffort(visits, [0, 1], { squares: 1, taxa: 1 }).expected // two visits then, one with the taxon, and one now without: 0.5 and 0
 */
export function atEqualEffort(
  visits: GroupVisits,
  pair: readonly [from: number, to: number],
  sizes: { squares: number; taxa: number },
): EqualEffort {
  const partOf = partsOfSeason(visits, pair);
  const expected = [0, 1].map(() => new Float64Array(sizes.squares * sizes.taxa)) as [Float64Array, Float64Array];
  const weights = new Float64Array(visits.squares.length);
  let start = 0;
  while (start < visits.squares.length) {
    const square = visits.squares[start] as number;
    let end = start;
    while (visits.squares[end] === square) end++;
    for (let part = 0; part < PARTS; part++) {
      const groups = pair.map((period) =>
        indicesBetween(start, end).filter(
          (at) => visits.periods[at] === period && partOf[visits.thirds[at] as number] === part,
        ),
      );
      const kept = Math.min(...groups.map(({ length }) => length));
      groups.forEach((group, period) => {
        for (const at of group) weights[at] = kept / group.length;
        if (kept > 0) addFinds(visits, group, kept, (expected[period] as Float64Array).subarray(square * sizes.taxa));
      });
    }
    start = end;
  }
  return { expected, weights };
}

function indicesBetween(start: number, end: number): number[] {
  return Array.from({ length: end - start }, (_, index) => start + index);
}

/** Adds to the chances of taxa to be found those of some visits of which a number is kept. */
function addFinds({ starts, taxa }: GroupVisits, group: readonly number[], kept: number, chances: Float64Array): void {
  const finds = new Map<number, number>();
  for (const visit of group)
    for (let at = starts[visit] as number; at < (starts[visit + 1] as number); at++) {
      const taxon = taxa[at] as number;
      finds.set(taxon, (finds.get(taxon) ?? 0) + 1);
    }
  for (const [taxon, found] of finds) {
    let missed = 1;
    for (let index = 0; index < found; index++)
      missed *= Math.max(0, group.length - kept - index) / (group.length - index);
    chances[taxon] = 1 - (1 - (chances[taxon] as number)) * missed;
  }
}

/** The part of the season of each third of a month. */
function partsOfSeason({ periods, thirds }: GroupVisits, pair: readonly number[]): Uint8Array {
  const counts = new Int32Array(36);
  thirds.forEach((third, visit) => {
    if (pair.includes(periods[visit] as number)) counts[third] = (counts[third] as number) + 1;
  });
  const all = counts.reduce((sum, count) => sum + count, 0);
  let before = 0;
  return Uint8Array.from(counts, (count) => {
    const middle = before + count / 2;
    before += count;
    return Math.min(PARTS - 1, Math.floor((PARTS * middle) / Math.max(1, all)));
  });
}
