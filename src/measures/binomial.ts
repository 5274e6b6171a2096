import jStat from "jstat";

/** Two-sided 95 % quantile of the standard normal distribution. */
export const NORMAL_QUANTILE = 1.959963984540054;

/**
 * The exact 95 % interval of a share (Clopper & Pearson 1934, Biometrika 26:404–413): the shares that a two-sided test
 * of 2.5 % on each side does not refuse. It holds the true share at least as often as it says.
 *
 * @param found how many of them, a whole number from 0
 * @param of how many in all; 0 tells nothing, and any share is possible
 * @returns shares from 0 to 1
 * @example exactInterval(0, 20) // => [0, 0.168433…]
 */
export function exactInterval(found: number, of: number): [low: number, high: number] {
  return [
    found === 0 ? 0 : jStat.beta.inv(0.025, found, of - found + 1),
    found === of ? 1 : jStat.beta.inv(0.975, found + 1, of - found),
  ];
}

/**
 * The score interval of a share, 95 % (Wilson 1927, J. Am. Stat. Assoc. 22:209–212): shorter than the exact one, and
 * right on average over shares and not for each of them.
 *
 * @param found how many of them, a whole number from 0
 * @param of how many in all; 0 tells nothing, and any share is possible
 * @returns shares from 0 to 1
 * @example wilsonInterval(81, 263).map((share) => share.toFixed(6)) // => ["0.255289", "0.366210"]
 */
export function wilsonInterval(found: number, of: number): [low: number, high: number] {
  if (of === 0) return [0, 1];
  const share = found / of;
  const shrink = 1 + (NORMAL_QUANTILE * NORMAL_QUANTILE) / of;
  const middle = share + (NORMAL_QUANTILE * NORMAL_QUANTILE) / (2 * of);
  const half =
    NORMAL_QUANTILE * Math.sqrt((share * (1 - share)) / of + (NORMAL_QUANTILE * NORMAL_QUANTILE) / (4 * of * of));
  return [
    found === 0 ? 0 : Math.max(0, (middle - half) / shrink),
    found === of ? 1 : Math.min(1, (middle + half) / shrink),
  ];
}

/**
 * Chance of a split of the changed squares at least as uneven as this one, were gains and losses equally likely: the
 * exact form of the test of McNemar (1947, Psychometrika 12:153–157), two-sided.
 *
 * @returns from 0 to 1; 1 where nothing changed
 * @example exactSplitChance(25, 12).toFixed(8) // => "0.04703103"
 */
export function exactSplitChance(gained: number, lost: number): number {
  const fewer = Math.min(gained, lost);
  // The lower tail of the binomial distribution at one half, as a beta distribution: P(X ≤ k) = I(1/2; n − k, k + 1).
  return Math.min(1, 2 * jStat.beta.cdf(0.5, gained + lost - fewer, fewer + 1));
}
