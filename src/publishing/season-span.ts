/** Fewest dated records of which a season is given: under that its ends grow with the number of records. */
const FEWEST = 30;

/**
 * The thirds of the month in which a tenth and nine tenths of the dated records had been made.
 *
 * @param records by third of the month, 36 whole numbers
 * @returns first and last third, 0 to 35; null under 30 records
 * @example seasonSpan(allInJune) // => [15, 17]
 */
export function seasonSpan(records: readonly number[]): [first: number, last: number] | null {
  const all = records.reduce((sum, count) => sum + count, 0);
  if (all < FEWEST) return null;
  const reached = (share: number) => {
    let before = 0;
    return records.findIndex((count) => {
      before += count;
      return count > 0 && before >= share * all;
    });
  };
  return [reached(0.1), reached(0.9)];
}
