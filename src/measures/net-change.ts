/** Two-sided 95 % quantile of the standard normal distribution. */
const Z = 1.959963984540054;

/**
 * The 95 % interval of the net change in squares, gained minus lost, given how many squares changed at all. Among
 * the squares that changed, the share gained has Wilson's score interval (Wilson 1927, J. Am. Stat. Assoc. 22:209–212);
 * the interval of net is that share carried over to squares, rounded outwards. It speaks of chance among the comparable
 * squares only, not of recording effort within them.
 *
 * @param gained squares newly found, a whole number from 0
 * @param lost squares not refound, a whole number from 0
 * @returns [low, high] in squares; [0, 0] where nothing changed
 * @example netChangeInterval(189, 90) // => [67, 129]
 */
export function netChangeInterval(gained: number, lost: number): [low: number, high: number] {
  const changed = gained + lost;
  if (changed === 0) return [0, 0];
  const share = gained / changed;
  const shrink = 1 + (Z * Z) / changed;
  const middle = (share + (Z * Z) / (2 * changed)) / shrink;
  const half = (Z / shrink) * Math.sqrt((share * (1 - share)) / changed + (Z * Z) / (4 * changed * changed));
  const net = (part: number) => changed * (2 * part - 1);
  return [Math.floor(net(Math.max(0, middle - half))) + 0, Math.ceil(net(Math.min(1, middle + half))) + 0];
}
