import type { Outcomes } from "./logistic.ts";

/** Effects on the log-odds: of the factor's levels but the first, then of the covariates; and of each stratum. */
export interface Effects {
  readonly effects: Float64Array;
  /** ±Infinity where all trials of the stratum succeeded, or none. */
  readonly strata: Float64Array;
}

/** What one pass over rows gathers, once the effects of the strata are eliminated. */
export interface Sums {
  /** Rows that were not passed over. */
  rows: number;
  logLikelihood: number;
  /** Slope of the log likelihood in each effect. */
  readonly score: Float64Array;
  /** Information on the effects, row by row; only the lower half is filled. */
  readonly information: Float64Array;
  /** Diagonal of the information before the strata were eliminated. */
  readonly scale: Float64Array;
}

/** Of each stratum: the information on its own effect, its score, and its information crossed with that on the others. */
export interface StrataSums {
  readonly weights: Float64Array;
  readonly residuals: Float64Array;
  readonly crossed: Float64Array;
}

/** Rows from `from` to before `past`, which belong to one stratum, or to none where `stratum` is −1. */
interface Stretch {
  readonly stratum: number;
  readonly from: number;
  readonly past: number;
}

/**
 * Sums over some rows at given effects. Rows of strata with an unbounded effect are passed over.
 *
 * @param from first row, and `past` the row after the last; no stratum may lie across either
 * @param keep where the sums of each stratum are kept
 * @param sums where the sums are gathered, whatever was there before
 * @example sumRows(outcomes, fit, 0, outcomes.trials.length).score // all near 0 at the greatest likelihood
 */
export function sumRows(
  outcomes: Outcomes,
  at: Effects,
  from: number,
  past: number,
  keep?: StrataSums,
  sums: Sums = emptySums(at.effects.length),
): Sums {
  clear(sums);
  const size = at.effects.length;
  const count = outcomes.covariates.length;
  const scratch = {
    crossed: new Float64Array(size),
    values: new Float64Array(count),
    products: new Float64Array((count * (count + 1)) / 2),
  };
  for (const stretch of stretchesOf(outcomes.stratum, from, past)) {
    const { stratum } = stretch;
    if (stratum >= 0 && !Number.isFinite(at.strata[stratum])) continue;
    sums.rows += stretch.past - stretch.from;
    const { weight, residual } = addRows(outcomes, at, stretch, sums, scratch);
    if (stratum < 0) continue;
    eliminate(sums, scratch.crossed, weight, residual);
    if (keep === undefined) continue;
    keep.weights[stratum] = weight;
    keep.residuals[stratum] = residual;
    keep.crossed.set(scratch.crossed, stratum * size);
  }
  return sums;
}

/** Sums of nothing, for a number of effects. @example emptySums(2).score // => [0, 0] */
export function emptySums(size: number): Sums {
  return {
    rows: 0,
    logLikelihood: 0,
    score: new Float64Array(size),
    information: new Float64Array(size * size),
    scale: new Float64Array(size),
  };
}

function clear(sums: Sums): void {
  sums.rows = 0;
  sums.logLikelihood = 0;
  for (const values of [sums.score, sums.information, sums.scale]) values.fill(0);
}

/** The stretches of rows that belong together, in order. */
export function* stretchesOf(stratum: Int32Array | null, from: number, past: number): Generator<Stretch> {
  for (let start = from; start < past; ) {
    const own = stratum === null ? -1 : (stratum[start] as number);
    let next = stratum === null ? past : start + 1;
    while (next < past && stratum?.[next] === own) next += 1;
    yield { stratum: own, from: start, past: next };
    start = next;
  }
}

/** Adds rows to the sums, and what they have in common with their stratum's effect to `crossed`, which is emptied before. */
function addRows(
  { successes, trials, level, levels, covariates, offset }: Outcomes,
  { effects, strata }: Effects,
  { stratum, from, past }: Stretch,
  sums: Sums,
  { crossed, values, products }: Record<"crossed" | "values" | "products", Float64Array>,
): { weight: number; residual: number } {
  const { score, information, scale } = sums;
  const size = effects.length;
  const before = levels - 1;
  const count = covariates.length;
  const base = stratum < 0 ? 0 : (strata[stratum] as number);
  // What the covariates have among themselves is gathered apart: this loop runs hundreds of millions of times.
  crossed.fill(0);
  products.fill(0);
  let [weight, residual, logLikelihood] = [0, 0, 0];
  for (let row = from; row < past; row += 1) {
    const own = (level[row] as number) - 1;
    let logOdds = base;
    if (offset !== undefined) logOdds += offset[row] as number;
    if (own >= 0) logOdds += effects[own] as number;
    for (let j = 0; j < count; j += 1) {
      const value = (covariates[j] as Float64Array)[row] as number;
      values[j] = value;
      logOdds += (effects[before + j] as number) * value;
    }
    const of = successes[row] as number;
    const among = trials[row] as number;
    const small = Math.exp(-Math.abs(logOdds));
    const share = 1 / (1 + small);
    const spread = among * small * share * share;
    const over = of - among * (logOdds < 0 ? small * share : share);
    logLikelihood += of * logOdds - among * (Math.max(logOdds, 0) - Math.log(share));
    weight += spread;
    residual += over;
    if (own >= 0) {
      score[own] = (score[own] as number) + over;
      crossed[own] = (crossed[own] as number) + spread;
    }
    let cell = 0;
    for (let j = 0; j < count; j += 1) {
      const line = before + j;
      const value = values[j] as number;
      const weighted = spread * value;
      score[line] = (score[line] as number) + over * value;
      crossed[line] = (crossed[line] as number) + weighted;
      if (own >= 0) information[line * size + own] = (information[line * size + own] as number) + weighted;
      for (let k = 0; k <= j; k += 1) {
        products[cell] = (products[cell] as number) + weighted * (values[k] as number);
        cell += 1;
      }
    }
  }
  sums.logLikelihood += logLikelihood;
  for (let own = 0; own < before; own += 1) addTo(information, scale, own, own, size, crossed[own] as number);
  let cell = 0;
  for (let j = 0; j < count; j += 1)
    for (let k = 0; k <= j; k += 1) {
      addTo(information, scale, before + j, before + k, size, products[cell] as number);
      cell += 1;
    }
  return { weight, residual };
}

/** Adds to a cell of the information, and to the diagonal before the strata are eliminated where it is on it. */
function addTo(
  information: Float64Array,
  scale: Float64Array,
  line: number,
  column: number,
  size: number,
  amount: number,
): void {
  information[line * size + column] = (information[line * size + column] as number) + amount;
  if (line === column) scale[line] = (scale[line] as number) + amount;
}

/** Takes a stratum's own effect out of what its rows added. */
function eliminate({ score, information }: Sums, crossed: Float64Array, weight: number, residual: number): void {
  const size = crossed.length;
  for (let line = 0; line < size; line += 1) {
    const share = (crossed[line] as number) / weight;
    if (share === 0) continue;
    score[line] = (score[line] as number) - share * residual;
    for (let column = 0; column <= line; column += 1) {
      const cell = line * size + column;
      information[cell] = (information[cell] as number) - share * (crossed[column] as number);
    }
  }
}
