/**
 * The factor by which rates of Poisson finds must be multiplied for as many to be found as were: m with
 * Σ (1 − exp(−m·rate)) = found. By Newton's rule from below, from where it only rises, to the last few bits.
 *
 * @param rates 0 or more; those of 0 are never found
 * @returns 0 where nothing was found; Infinity where no factor is large enough
 * @example poissonMultiplier([Math.LN2, Math.LN2], 1) // => 1
 */
export function poissonMultiplier(rates: ArrayLike<number>, found: number): number {
  let [total, able] = [0, 0];
  for (let index = 0; index < rates.length; index++) {
    total += rates[index] as number;
    if ((rates[index] as number) > 0) able++;
  }
  if (found <= 0) return 0;
  if (found >= able - 1e-9) return Infinity;
  // Each find is at most its rate, so this is never above the root.
  let multiplier = found / total;
  for (let step = 0; step < 500; step++) {
    let [lacking, slope] = [found, 0];
    for (let index = 0; index < rates.length; index++) {
      const rate = rates[index] as number;
      const miss = Math.exp(-multiplier * rate);
      lacking -= 1 - miss;
      slope += rate * miss;
    }
    const rise = lacking / slope;
    multiplier += rise;
    if (!(Math.abs(rise) > 1e-13 * multiplier)) break;
  }
  return multiplier;
}
