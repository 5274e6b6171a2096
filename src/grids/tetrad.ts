/**
 * Letters of the 25 tetrads (2 km squares) of a hectad: A in the south-west, northwards up each column, then
 * eastwards; O is left out. Read along the fourth row from the bottom, the letters spell DINTY.
 */
const LETTERS = "ABCDEFGHIJKLMNPQRSTUVWXYZ";
const SIDE = 2000;
const IN_A_COLUMN = 5;

/**
 * The tetrad letter of a position inside its hectad.
 *
 * @param east metres from the hectad's west side, 0 to under 10,000
 * @param north metres from its south side, 0 to under 10,000
 * @returns one letter
 * @example tetradLetter(8000, 6000); // => "Y"
 */
export function tetradLetter(east: number, north: number): string {
  const letter = LETTERS[IN_A_COLUMN * Math.floor(east / SIDE) + Math.floor(north / SIDE)];
  if (letter === undefined || !(east >= 0 && north >= 0 && east < 10_000 && north < 10_000)) {
    throw new RangeError(`${east} ${north} is not inside a hectad (0 to 9,999 m each way)`);
  }
  return letter;
}

/**
 * South-west corner of a tetrad inside its hectad.
 *
 * @param letter one upper-case letter
 * @returns [metres east, metres north] of the hectad's south-west corner; undefined for O and anything else
 * @example tetradOffset("Y"); // => [8000, 6000]
 */
export function tetradOffset(letter: string): [east: number, north: number] | undefined {
  const index = letter.length === 1 ? LETTERS.indexOf(letter) : -1;
  if (index < 0) return undefined;
  return [SIDE * Math.floor(index / IN_A_COLUMN), SIDE * (index % IN_A_COLUMN)];
}
