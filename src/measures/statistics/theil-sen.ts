import jStat from "jstat";

/** A line through points by the median of the slopes between them. */
export interface MedianSlope {
  /** Units of y in one of x. */
  readonly slope: number;
  /** 95 % interval; null where no slope can be refused. */
  readonly low: number | null;
  readonly high: number | null;
}

/** How far two lists rise together. */
export interface RankAgreement {
  /** Pairs that rise together less those that do not (Mann 1945, Econometrica 13:245–259). */
  readonly pairs: number;
  /** From −1 to 1, corrected for ties. */
  readonly tau: number;
  /** Two-sided chance under no relation, by the normal approximation without correction for continuity. */
  readonly chance: number;
}

/**
 * The median of the slopes between any two points of different x, with the interval of slopes that a test of rank
 * agreement does not refuse (Theil 1950; Sen 1968, J. Am. Stat. Assoc. 63:1379–1389), ties in either allowed for in its
 * variance. A year far out moves it little.
 *
 * @param x not all alike
 * @returns null where all x are alike or there are no two points
 * @example theilSen([1, 2, 3, 4], [2, 4, 6, 9])?.slope // => 2.1666…, the mean of the middle two of six slopes
 */
export function theilSen(x: readonly number[], y: readonly number[]): MedianSlope | null {
  const slopes: number[] = [];
  for (let i = 0; i < x.length; i += 1)
    for (let j = i + 1; j < x.length; j += 1) {
      const apart = (x[j] as number) - (x[i] as number);
      if (apart !== 0) slopes.push(((y[j] as number) - (y[i] as number)) / apart);
    }
  if (slopes.length === 0) return null;
  slopes.sort((a, b) => a - b);
  const count = slopes.length;
  const slope = ((slopes[(count - 1) >> 1] as number) + (slopes[count >> 1] as number)) / 2;
  const reach = jStat.normal.inv(0.975, 0, 1) * Math.sqrt(pairsVariance(x, y));
  const [lower, upper] = [Math.round((count - reach) / 2) - 1, Math.round((count + reach) / 2)];
  return { slope, low: slopes[lower] ?? null, high: slopes[upper] ?? null };
}

/**
 * Kendall's agreement of ranks, tau-b (Kendall 1938, Biometrika 30:81–93; ties: Kendall 1945, Biometrika 33:239–251).
 *
 * @returns tau and chance NaN where all of one list are alike
 * @example kendall([1, 2, 3], [1, 2, 3]).tau // => 1
 */
export function kendall(x: readonly number[], y: readonly number[]): RankAgreement {
  let pairs = 0;
  for (let i = 0; i < x.length; i += 1)
    for (let j = i + 1; j < x.length; j += 1)
      pairs += Math.sign((x[j] as number) - (x[i] as number)) * Math.sign((y[j] as number) - (y[i] as number));
  const all = (x.length * (x.length - 1)) / 2;
  const untied = (list: readonly number[]) => all - tieSizes(list).reduce((sum, t) => sum + (t * (t - 1)) / 2, 0);
  const tau = pairs / Math.sqrt(untied(x) * untied(y));
  const score = Math.abs(pairs) / Math.sqrt(pairsVariance(x, y));
  return { pairs, tau, chance: 2 * jStat.normal.cdf(-score, 0, 1) };
}

/** Variance of the number of agreeing pairs under no relation, with ties in both lists. */
function pairsVariance(x: readonly number[], y: readonly number[]): number {
  const n = x.length;
  const [ofX, ofY] = [tieSizes(x), tieSizes(y)];
  const sum = (sizes: readonly number[], of: (t: number) => number) => sizes.reduce((total, t) => total + of(t), 0);
  const first = (t: number) => t * (t - 1);
  const second = (t: number) => t * (t - 1) * (t - 2);
  const main = (t: number) => t * (t - 1) * (2 * t + 5);
  const single = (main(n) - sum(ofX, main) - sum(ofY, main)) / 18;
  const triples = n < 3 ? 0 : (sum(ofX, second) * sum(ofY, second)) / (9 * second(n));
  const doubles = n < 2 ? 0 : (sum(ofX, first) * sum(ofY, first)) / (2 * first(n));
  return single + triples + doubles;
}

/** How many are alike, of each value. */
function tieSizes(list: readonly number[]): number[] {
  const sizes = new Map<number, number>();
  for (const value of list) sizes.set(value, (sizes.get(value) ?? 0) + 1);
  return [...sizes.values()];
}
