import jStat from "jstat";

/** A sample whose rows came in clusters, such as visits of one day, which share its weather. */
export interface ClusteredSize {
  /** All weight. */
  readonly total: number;
  /** Sum of the squares of the clusters' weights. */
  readonly squares: number;
  readonly clusters: number;
}

/**
 * Shares of a sample at which the 95 % interval of its median begins and ends: the quantiles there are its ends (Woodruff
 * 1952, J. Am. Stat. Assoc. 47:635–646). The shares are the exact ones of a binomial sample, of the size that would tell
 * as much as the clusters do (Korn & Graubard 1998, Surv. Methodol. 24:193–201). At the median that size needs no more
 * than the clusters' weights: whichever side a cluster lies on, it is one half away.
 *
 * @returns 0 and 1 where there are fewer than two clusters
 * @example medianShares({ total: 100, squares: 100, clusters: 100 }) // => [0.397797…, 0.602202…], of 100 rows on their own
 */
export function medianShares({ total, squares, clusters }: ClusteredSize): [low: number, high: number] {
  if (clusters < 2) return [0, 1];
  const own = (total * total * (clusters - 1)) / (squares * clusters);
  const size = (own * jStat.studentt.inv(0.975, total - 1) ** 2) / jStat.studentt.inv(0.975, clusters - 1) ** 2;
  const half = Math.min(size, total) / 2;
  return [jStat.beta.inv(0.025, half, half + 1), jStat.beta.inv(0.975, half + 1, half)];
}
