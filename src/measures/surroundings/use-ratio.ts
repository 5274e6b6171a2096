import { NORMAL_QUANTILE } from "../binomial.ts";

/**
 * How often a term of surroundings was stated, in visits or in taxa on visits, with the sums over clusters that an
 * interval needs. `a` with the taxon in the term, `b` in the term, `c` with the taxon, `n` in all;
 * `ab` is the sum over clusters of the products of their a and b, and so on.
 */
export interface UseCounts {
  a: number;
  b: number;
  c: number;
  n: number;
  clusters: number;
  aa: number;
  ab: number;
  ac: number;
  an: number;
  bb: number;
  bc: number;
  bn: number;
  cc: number;
  cn: number;
  nn: number;
}

/** A ratio of use to availability with its 95 % interval. */
export interface UseRatio {
  ratio: number;
  low: number;
  high: number;
}

/**
 * Ratio of use to availability: the term's share of the visits with the taxon over its share of all visits, (a/c)/(b/n);
 * 1 where the taxon was recorded as often there as anywhere, 0 where never (Manly, McDonald, Thomas, McDonald & Erickson
 * 2002, Resource Selection by Animals, 2nd ed., ch. 4, where availability is estimated). The interval is symmetric on the
 * log scale; its variance is that of the linearised log ratio between clusters of visits (the sandwich of Liang & Zeger
 * 1986, Biometrika 73: 13–22), because visits to one 10 km square are alike. With each visit a cluster of its own it is
 * the delta-method variance of four multinomial cells. Where a is 0 the upper limit is the exact binomial one, 1 − 0.025^(1/b)
 * of the visits in the term, over c/n.
 *
 * Needs b, c and n above 0 and at least two clusters; else there is no interval, and it is [0, Infinity].
 *
 * @example useRatio({ a: 12, b: 60, c: 20, n: 400, clusters: 400, aa: 12, ab: 12, ac: 12, an: 12, bb: 60, bc: 12, bn: 60, cc: 20, cn: 20, nn: 400 }).ratio // => 4
 */
export function useRatio(counts: UseCounts): UseRatio {
  const { a, b, c, n, clusters } = counts;
  const ratio = a / c / (b / n);
  if (a === 0) return { ratio: 0, low: 0, high: (1 - 0.025 ** (1 / b)) / (c / n) };
  if (clusters < 2) return { ratio, low: 0, high: Infinity };
  const { aa, ab, ac, an, bb, bc, bn, cc, cn, nn } = counts;
  const squares = aa / a ** 2 + bb / b ** 2 + cc / c ** 2 + nn / n ** 2;
  const products = -ab / (a * b) - ac / (a * c) + an / (a * n) + bc / (b * c) - bn / (b * n) - cn / (c * n);
  const variance = Math.max(0, squares + 2 * products) * (clusters / (clusters - 1));
  const reach = NORMAL_QUANTILE * Math.sqrt(variance);
  return { ratio, low: ratio * Math.exp(-reach), high: ratio * Math.exp(reach) };
}
