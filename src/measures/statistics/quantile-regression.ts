import { addRidge, solvePositive } from "./solve-positive.ts";

/**
 * What a quantile is regressed on: cells of rows that share their covariates and their cluster. The response takes whole
 * numbers, such as days; cell c has the running totals of its weights from `first[c]` on, one a number, at `start[c]`
 * and after, up to before `start[c + 1]`.
 */
export interface QuantileCells {
  /** Covariates a cell, one after another; the first is usually 1, the others best centred and on a scale of about 1. */
  readonly covariates: Float64Array;
  readonly size: number;
  readonly first: Int32Array;
  readonly start: Int32Array;
  readonly totals: Float64Array;
  /** Number of each cell's cluster, from 0. */
  readonly cluster: Int32Array;
  readonly clusters: number;
}

const MOST_STEPS = 60;
/** Share of the whole weight by which the fitted plane may miss its share of rows, in any covariate. */
const ENOUGH = 1e-6;
/** Half of the width, in units of the response, over which the density is taken that the steps go by. */
const REACH = 4;

/**
 * Quantile regression (Koenker & Bassett 1978, Econometrica 46:33–50). The response being whole numbers, each is taken as
 * spread evenly over the unit around it, which makes the loss smooth: the uniform case of convolution smoothing
 * (Fernandes, Guerre & Horta 2021, J. Bus. Econ. Stat. 39:338–357), and what jittering of counts averages to (Machado &
 * Santos Silva 2005, J. Am. Stat. Assoc. 100:1226–1237). Newton's steps with a line search find the least loss. Effects
 * that the rows do not determine stay where they began.
 *
 * @param share of the response below the fitted plane, 0 to 1
 * @param weights how often each cluster counts; each once unless given
 * @returns effects of the covariates, in units of the response
 * @example fitQuantile(cells, 0.5)[1] // slope of the median on the second covariate
 */
export function fitQuantile(cells: QuantileCells, share: number, weights?: ArrayLike<number>): Float64Array {
  const { size } = cells;
  let at = startOf(cells, share);
  let sums = lossSums(cells, share, at, weights);
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const { slope, weight } = sums;
    if (slope.every((one) => Math.abs(one) <= ENOUGH * weight)) break;
    const curvature = addRidge(curvatureAt(cells, at, weights), size, 1e-9 * weight);
    const move = solvePositive(curvature, slope, size);
    const next = move === null ? null : searchAlong(cells, share, { at, sums, move }, weights);
    if (next === null) break;
    ({ at, sums } = next);
  }
  return at;
}

/** The loss's slope in each effect, and all the weight. */
interface LossSums {
  readonly slope: Float64Array;
  readonly weight: number;
}

function lossSums(cells: QuantileCells, share: number, at: Float64Array, weights?: ArrayLike<number>): LossSums {
  const { covariates, size, first, start, totals, cluster } = cells;
  const slope = new Float64Array(size);
  let weight = 0;
  for (let cell = 0; cell < first.length; cell += 1) {
    const times = weights === undefined ? 1 : (weights[cluster[cell] as number] as number);
    if (times === 0) continue;
    const begin = start[cell] as number;
    const end = start[cell + 1] as number;
    const all = totals[end - 1] as number;
    const over = times * (below(totals, begin, end, placeIn(cells, cell, at)) - share * all);
    weight += times * all;
    for (let j = 0; j < size; j += 1) slope[j] = (slope[j] as number) + over * (covariates[cell * size + j] as number);
  }
  return { slope, weight };
}

/** How fast the loss's slopes rise in each effect; the lower half of a matrix, row by row. */
function curvatureAt(cells: QuantileCells, at: Float64Array, weights?: ArrayLike<number>): Float64Array {
  const { covariates, size, first, start, totals, cluster } = cells;
  const curvature = new Float64Array(size * size);
  for (let cell = 0; cell < first.length; cell += 1) {
    const times = weights === undefined ? 1 : (weights[cluster[cell] as number] as number);
    if (times === 0) continue;
    const begin = start[cell] as number;
    const end = start[cell + 1] as number;
    const place = placeIn(cells, cell, at);
    const near = below(totals, begin, end, place + REACH) - below(totals, begin, end, place - REACH);
    if (near === 0) continue;
    const row = cell * size;
    for (let j = 0; j < size; j += 1) {
      const value = (times * near * (covariates[row + j] as number)) / (2 * REACH);
      for (let k = 0; k <= j; k += 1)
        curvature[j * size + k] = (curvature[j * size + k] as number) + value * (covariates[row + k] as number);
    }
  }
  return curvature;
}

/**
 * Where the plane lies in a cell, counted from half a unit before the cell's first number.
 *
 * @example placeIn(cells, 0, effects) // => 12.5
 */
export function placeIn({ covariates, size, first }: QuantileCells, cell: number, at: Float64Array): number {
  let fitted = 0.5 - (first[cell] as number);
  for (let j = 0; j < size; j += 1) fitted += (covariates[cell * size + j] as number) * (at[j] as number);
  return fitted;
}

/**
 * Weight of a cell below a place, counted from half a unit before its first number.
 *
 * @param begin where the cell's running totals begin, and `end` where the next cell's do
 * @example below(Float64Array.of(1, 3), 0, 2, 1.5) // => 2
 */
export function below(totals: Float64Array, begin: number, end: number, place: number): number {
  if (place <= 0) return 0;
  if (place >= end - begin) return totals[end - 1] as number;
  const whole = Math.floor(place);
  const before = whole === 0 ? 0 : (totals[begin + whole - 1] as number);
  return before + (place - whole) * ((totals[begin + whole] as number) - before);
}

/** Goes along a direction until the loss no longer falls much: its slope there rises from below 0, so halving finds it. */
function searchAlong(
  cells: QuantileCells,
  share: number,
  { at, sums, move }: { at: Float64Array; sums: LossSums; move: Float64Array },
  weights?: ArrayLike<number>,
): { at: Float64Array; sums: LossSums } | null {
  const along = ({ slope }: LossSums) => slope.reduce((sum, value, j) => sum - value * (move[j] as number), 0);
  const before = along(sums);
  if (!(before < 0)) return null;
  let [low, high, length] = [0, Number.POSITIVE_INFINITY, 1];
  for (let tries = 0; tries < 40; tries += 1) {
    const there = at.map((value, j) => value - length * (move[j] as number));
    const found = lossSums(cells, share, there, weights);
    const now = along(found);
    if (Math.abs(now) <= 0.4 * -before) return { at: there, sums: found };
    if (now < 0) low = length;
    else high = length;
    length = high === Number.POSITIVE_INFINITY ? 2 * length : (low + high) / 2;
  }
  return null;
}

/** The plain quantile of all for the constant, 0 for the rest. */
function startOf({ size, first, start, totals }: QuantileCells, share: number): Float64Array {
  const at = new Float64Array(size);
  let all = 0;
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let cell = 0; cell < first.length; cell += 1) {
    all += totals[(start[cell + 1] as number) - 1] as number;
    low = Math.min(low, first[cell] as number);
    high = Math.max(high, (first[cell] as number) + (start[cell + 1] as number) - (start[cell] as number));
  }
  while (high - low > 0.5) {
    const middle = (low + high) / 2;
    let under = 0;
    for (let cell = 0; cell < first.length; cell += 1)
      under += below(totals, start[cell] as number, start[cell + 1] as number, middle - (first[cell] as number) + 0.5);
    if (under < share * all) low = middle;
    else high = middle;
  }
  at[0] = (low + high) / 2;
  return at;
}
