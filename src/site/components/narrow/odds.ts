/** A chance as people take it in: tenths, and for the least ones a round number of which it is one. */

/**
 * How many of ten squares are filled.
 *
 * @param chance 0 to 1
 * @returns 0 below 1 in 20, 10 from 19 in 20; a candidate in between has at least one, and never all ten
 * @example tenthsOf(0.71) // 7
 */
export function tenthsOf(chance: number): number {
  if (chance < 0.05) return 0;
  return chance >= 0.95 ? 10 : Math.min(9, Math.max(1, Math.round(10 * chance)));
}

/**
 * Of how many it is one, to one figure; at most a million.
 *
 * @param chance above 0
 * @example oneIn(0.0123) // 80
 */
export function oneIn(chance: number): number {
  const of = Math.min(1e6, 1 / chance);
  const step = 10 ** Math.floor(Math.log10(of));
  return Math.min(1e6, Math.round(of / step) * step);
}
