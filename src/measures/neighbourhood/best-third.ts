/** Thirds of the month in a year. */
const THIRDS = 36;

/**
 * How much more often than over the whole year a visit of each third of a month records a taxon: the taxon's share of its
 * year in that third over the group's visits' share of theirs.
 *
 * @param records of the taxon, by third of the year from 0; whole numbers
 * @param visits to the group, by third
 * @param fewest visits below which a third tells nothing
 * @returns one number a third, 0 where there are too few visits; all 0 for a taxon without a dated record
 * @example seasonFactors(twelveInJune, evenVisits, 150)[16] // => 12
 */
export function seasonFactors(records: readonly number[], visits: readonly number[], fewest: number): number[] {
  const all = sum(records);
  const effort = sum(visits);
  return Array.from({ length: THIRDS }, (_, third) => {
    const made = visits[third] ?? 0;
    return all === 0 || made < Math.max(1, fewest) ? 0 : (((records[third] ?? 0) / all) * effort) / made;
  });
}

/**
 * The third of a month in which one visit would add most to a square's list: the largest sum of each taxon's chance times
 * its frequency then, at most 1.
 *
 * @param taxa expected in the square, with their season's factors
 * @returns 0 to 35, the earliest of equals; null where no third promises anything
 * @example bestThird([{ chance: 0.5, frequency: 0.2, season: factors }]) // => 16
 */
export function bestThird(
  taxa: readonly { chance: number; frequency: number; season: readonly number[] }[],
): number | null {
  let best: number | null = null;
  let most = 0;
  for (let third = 0; third < THIRDS; third += 1) {
    const gain = taxa.reduce(
      (total, { chance, frequency, season }) => total + chance * Math.min(1, frequency * (season[third] ?? 0)),
      0,
    );
    if (gain > most) [best, most] = [third, gain];
  }
  return best;
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
