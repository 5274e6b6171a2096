import jStat from "jstat";
import { below, placeIn, type QuantileCells } from "./quantile-regression.ts";
import { addRidge, solvePositive } from "./solve-positive.ts";

/** What the effects are drawn for. */
export interface DrawOptions {
  /** Rows, by which the width is chosen over which their density is taken. */
  readonly rows: number;
  readonly draws: number;
  /** The next number of a stream of chance, from 0 to 1. */
  readonly random: () => number;
}

/**
 * Effects of a quantile regression in draws of whole clusters, as many as there are, each drawn at random. A draw is not
 * fitted anew but goes one of Newton's steps from the fit to all (the k-step bootstrap of Andrews 2002, Econometrica
 * 70:119–162, with one step): it needs the clusters' sums alone, and thousands of draws cost no more than a fit.
 *
 * @param at effects of the fit to all, from `fitQuantile`
 * @example drawEffects(cells, 0.5, at, { rows: 900, draws: 400, random }).length // => 400
 */
export function drawEffects(
  cells: QuantileCells,
  share: number,
  at: Float64Array,
  { rows, draws, random }: DrawOptions,
): Float64Array[] {
  const { size, clusters } = cells;
  const sums = clusterSums(cells, share, at, reachOf(cells, at, densityWidth(rows, share)));
  return Array.from({ length: draws }, () => {
    const slope = new Float64Array(size);
    const curvature = new Float64Array(size * size);
    for (let i = 0; i < clusters; i += 1) {
      const own = sums[Math.floor(random() * clusters)] as ClusterSums;
      for (let j = 0; j < size; j += 1) slope[j] = (slope[j] as number) + (own.slope[j] as number);
      for (let j = 0; j < size * size; j += 1) curvature[j] = (curvature[j] as number) + (own.curvature[j] as number);
    }
    const mean = curvature.reduce((sum, one, j) => sum + (j % (size + 1) === 0 ? one : 0), 0) / size;
    const move = solvePositive(addRidge(curvature, size, 1e-6 * mean), slope, size);
    return move === null ? at : at.map((value, j) => value - (move[j] as number));
  });
}

/**
 * Half of the width, as a share of the rows, over which the density at a quantile is best taken (Hall & Sheather 1988,
 * J. R. Stat. Soc. B 50:381–391).
 *
 * @example densityWidth(1000, 0.5).toFixed(4) // => "0.0972"
 */
export function densityWidth(rows: number, share: number): number {
  const [at, z] = [jStat.normal.inv(share, 0, 1), jStat.normal.inv(0.975, 0, 1)];
  const density = Math.exp((-at * at) / 2) / Math.sqrt(2 * Math.PI);
  return rows ** (-1 / 3) * z ** (2 / 3) * ((1.5 * density ** 2) / (2 * at ** 2 + 1)) ** (1 / 3);
}

/** Half of the width around the plane, in units of the response, that holds twice a share of the weight. */
function reachOf(cells: QuantileCells, at: Float64Array, width: number): number {
  const { first, start, totals } = cells;
  let [low, high] = [0.5, 366];
  while (high - low > 0.1) {
    const reach = (low + high) / 2;
    let [near, all] = [0, 0];
    for (let cell = 0; cell < first.length; cell += 1) {
      const [begin, end] = [start[cell] as number, start[cell + 1] as number];
      const place = placeIn(cells, cell, at);
      near += below(totals, begin, end, place + reach) - below(totals, begin, end, place - reach);
      all += totals[end - 1] as number;
    }
    if (near < 2 * width * all) low = reach;
    else high = reach;
  }
  return (low + high) / 2;
}

/** Slope of the loss and how fast it rises, from the cells of one cluster; of the matrix the lower half, row by row. */
interface ClusterSums {
  readonly slope: Float64Array;
  readonly curvature: Float64Array;
}

function clusterSums(cells: QuantileCells, share: number, at: Float64Array, reach: number): ClusterSums[] {
  const { covariates, size, first, start, totals, cluster, clusters } = cells;
  const sums = Array.from({ length: clusters }, () => ({
    slope: new Float64Array(size),
    curvature: new Float64Array(size * size),
  }));
  for (let cell = 0; cell < first.length; cell += 1) {
    const { slope, curvature } = sums[cluster[cell] as number] as ClusterSums;
    const [begin, end] = [start[cell] as number, start[cell + 1] as number];
    const place = placeIn(cells, cell, at);
    const over = below(totals, begin, end, place) - share * (totals[end - 1] as number);
    const near = (below(totals, begin, end, place + reach) - below(totals, begin, end, place - reach)) / (2 * reach);
    for (let j = 0; j < size; j += 1) {
      const value = covariates[cell * size + j] as number;
      slope[j] = (slope[j] as number) + over * value;
      for (let k = 0; k <= j; k += 1)
        curvature[j * size + k] =
          (curvature[j * size + k] as number) + near * value * (covariates[cell * size + k] as number);
    }
  }
  return sums;
}
