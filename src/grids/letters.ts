/**
 * The block of 25 letters both national grids are lettered by: A to Z without I, from the north-west corner
 * eastwards, rows going south. Source: Ordnance Survey, "The National Grid".
 */
const BLOCK = "ABCDEFGHJKLMNOPQRSTUVWXYZ";
const SIDE = 5;

/**
 * Column and row of a letter in the block.
 *
 * @param letter one upper-case letter
 * @returns [column from the west, row from the south], each 0 to 4; undefined for I and anything not a letter
 * @example columnAndRowOf("V"); // => [0, 0]
 */
export function columnAndRowOf(letter: string): [column: number, row: number] | undefined {
  const index = letter.length === 1 ? BLOCK.indexOf(letter) : -1;
  if (index < 0) return undefined;
  return [index % SIDE, SIDE - 1 - Math.floor(index / SIDE)];
}

/**
 * The letter at a column and row of the block.
 *
 * @param column 0 to 4 from the west
 * @param row 0 to 4 from the south
 * @returns the letter; undefined outside the block
 * @example letterAt(0, 0); // => "V"
 */
export function letterAt(column: number, row: number): string | undefined {
  if (!(column >= 0 && column < SIDE && row >= 0 && row < SIDE)) return undefined;
  return BLOCK[(SIDE - 1 - row) * SIDE + column];
}
