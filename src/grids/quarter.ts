/** Quarters of a hectad, 5 km squares: metres east and north of its south-west corner. Common practice, without a published rule. */
const QUARTERS: Readonly<Record<string, readonly [east: number, north: number]>> = Object.freeze({
  SW: [0, 0],
  NW: [0, 5000],
  SE: [5000, 0],
  NE: [5000, 5000],
});

/**
 * The 5 km quarter of a position inside its hectad.
 *
 * @param east metres from the hectad's west side, 0 to under 10,000
 * @param north metres from its south side, 0 to under 10,000
 * @returns "SW", "NW", "SE" or "NE"
 * @example quarterName(7200, 300); // => "SE"
 */
export function quarterName(east: number, north: number): string {
  if (!(east >= 0 && north >= 0 && east < 10_000 && north < 10_000)) {
    throw new RangeError(`${east} ${north} is not inside a hectad (0 to 9,999 m each way)`);
  }
  return `${north < 5000 ? "S" : "N"}${east < 5000 ? "W" : "E"}`;
}

/**
 * South-west corner of a quarter inside its hectad.
 *
 * @param name "SW", "NW", "SE" or "NE"
 * @returns [metres east, metres north] of the hectad's south-west corner; undefined for anything else
 * @example quarterOffset("NW"); // => [0, 5000]
 */
export function quarterOffset(name: string): readonly [east: number, north: number] | undefined {
  return Object.hasOwn(QUARTERS, name) ? QUARTERS[name] : undefined;
}
