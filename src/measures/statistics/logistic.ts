import { CholeskyDecomposition, Matrix } from "ml-matrix";
import { type Effects, type StrataSums, type Sums, stretchesOf, sumRows } from "./logistic-sums.ts";

/**
 * Counts of successes among trials, one row a pattern, and what their chance depends on: the level of one factor, any
 * number of covariates, and the effect of a stratum. Rows of a stratum must follow each other.
 */
export interface Outcomes {
  readonly successes: Float64Array;
  /** Above 0. */
  readonly trials: Float64Array;
  /** Level of the factor, 0 to `levels` − 1; the first is the one the others are set against. */
  readonly level: Int32Array;
  readonly levels: number;
  /** Each with a value a row, best on a scale of about 1. */
  readonly covariates: readonly Float64Array[];
  /** Numbers from 0, never falling; null for no strata and no constant, which is then a covariate of ones. */
  readonly stratum: Int32Array | null;
  /** Known part of the log-odds of each row; none unless given. */
  readonly offset?: Float64Array;
}

/** The effects of greatest likelihood. */
export interface LogisticFit extends Effects {
  readonly logLikelihood: number;
  readonly iterations: number;
  /** Sums over all rows at these effects, and those of each stratum. */
  readonly sums: Sums;
  readonly strataSums: StrataSums;
}

/** Why there is no fit: an effect has no bound, follows from the others, or was not reached. */
export type NoFit = "separated" | "collinear" | "not converged";

const MOST_ITERATIONS = 40;
/** Growth of the log likelihood, as a share of it, that is none any more. */
const TOLERANCE = 1e-11;
/** A step that is none any more. Along an effect without bound each step stays about 1, however flat the likelihood. */
const STILL = 1e-6;

/**
 * Logistic regression by iteratively reweighted least squares (McCullagh & Nelder 1989, Generalized Linear Models, 2nd
 * ed., §2.5), with halved steps where the likelihood would fall. The effects of the strata are fitted too; each step
 * eliminates them one by one, so that thousands cost no more than one. A stratum in which all trials succeed or none says
 * nothing of the other effects: it is passed over, and its own effect is ±Infinity.
 *
 * @returns a word for the reason where no finite effects have the greatest likelihood
 * @example
 * const common = { levels: 2, covariates: [], stratum: Int32Array.of(0, 0) };
 * const counts = { successes: Float64Array.of(10, 20), trials: Float64Array.of(40, 40), level: Int32Array.of(0, 1) };
 * fitLogistic({ ...common, ...counts }) // effects: [1.0986…], the log of the odds ratio 3
 */
export function fitLogistic(outcomes: Outcomes): LogisticFit | NoFit {
  const rows = outcomes.trials.length;
  let at = startOf(outcomes);
  if (partsByLevel(outcomes, at)) return "separated";
  const size = at.effects.length;
  const count = at.strata.length;
  const room = (): StrataSums => ({
    weights: new Float64Array(count),
    residuals: new Float64Array(count),
    crossed: new Float64Array(count * size),
  });
  let kept = room();
  let spare = room();
  let sums = sumRows(outcomes, at, 0, rows, kept);
  let isFlat = false;
  for (let iterations = 1; iterations <= MOST_ITERATIONS; iterations += 1) {
    const step = newtonStep(sums);
    if (step === undefined) return iterations === 1 ? "collinear" : "separated";
    const before = sums.logLikelihood;
    for (let share = 1; share > 1e-3; share /= 2) {
      const next = moved(at, step, kept, share);
      const told = sumRows(outcomes, next, 0, rows, spare);
      if (!(told.logLikelihood >= before - 1e-9 * (1 + Math.abs(before)))) continue;
      at = next;
      sums = told;
      [kept, spare] = [spare, kept];
      break;
    }
    isFlat = Math.abs(sums.logLikelihood - before) <= TOLERANCE * (1 + Math.abs(before));
    if (isFlat && step.every((part, index) => Math.abs(part) <= STILL * (1 + Math.abs(at.effects[index] as number))))
      return { ...at, logLikelihood: sums.logLikelihood, iterations, sums, strataSums: kept };
  }
  return isFlat ? "separated" : "not converged";
}

/**
 * The lower half of an information matrix as a matrix, and its decomposition; undefined where it determines not all effects.
 *
 * @example decomposed(sumRows(outcomes, fit, 0, rows))?.solve(Matrix.eye(2)) // the covariance that the model itself claims
 */
export function decomposed({
  information,
  scale,
}: Pick<Sums, "information" | "scale">): CholeskyDecomposition | undefined {
  const size = scale.length;
  const matrix = Matrix.zeros(size, size);
  for (let line = 0; line < size; line += 1)
    for (let column = 0; column <= line; column += 1) {
      const cell = information[line * size + column] as number;
      matrix.set(line, column, cell);
      matrix.set(column, line, cell);
    }
  const decomposition = new CholeskyDecomposition(matrix);
  if (!decomposition.isPositiveDefinite()) return undefined;
  const lower = decomposition.lowerTriangularMatrix;
  // A pivot that is nothing beside what the effect had before the others took their share is one that follows from them.
  const isDetermined = (line: number) => lower.get(line, line) ** 2 > 1e-9 * (scale[line] as number);
  return scale.every((_, line) => isDetermined(line)) ? decomposition : undefined;
}

/** No effects yet, and of each stratum the log-odds of its share of successes. */
function startOf({ successes, trials, covariates, levels, stratum }: Outcomes): Effects {
  const strata = new Float64Array(stratum === null ? 0 : (stratum.at(-1) ?? -1) + 1).fill(-Infinity);
  for (const stretch of stretchesOf(stratum, 0, trials.length)) {
    if (stretch.stratum < 0) continue;
    let [of, among] = [0, 0];
    for (let row = stretch.from; row < stretch.past; row += 1) {
      of += successes[row] as number;
      among += trials[row] as number;
    }
    strata[stretch.stratum] = Math.log(of / (among - of));
  }
  return { effects: new Float64Array(levels - 1 + covariates.length), strata };
}

/** Whether at some level all trials of the rows that count succeed, or none. */
function partsByLevel({ successes, trials, level, levels, stratum }: Outcomes, { strata }: Effects): boolean {
  const of = new Float64Array(levels);
  const among = new Float64Array(levels);
  for (let row = 0; row < trials.length; row += 1) {
    if (stratum !== null && !Number.isFinite(strata[stratum[row] as number])) continue;
    const own = level[row] as number;
    of[own] = (of[own] as number) + (successes[row] as number);
    among[own] = (among[own] as number) + (trials[row] as number);
  }
  return of.some((successesOf, own) => (among[own] as number) > 0 && (successesOf === 0 || successesOf === among[own]));
}

function newtonStep(sums: Sums): Float64Array | undefined {
  if (sums.score.length === 0) return new Float64Array(0);
  return decomposed(sums)?.solve(Matrix.columnVector(sums.score)).to1DArray() as unknown as Float64Array;
}

/** Effects moved along a step; each stratum's own by what is left of its score once the others have moved. */
function moved({ effects, strata }: Effects, step: ArrayLike<number>, kept: StrataSums, share: number): Effects {
  const size = effects.length;
  return {
    effects: effects.map((effect, index) => effect + share * (step[index] as number)),
    strata: strata.map((effect, stratum) => {
      if (!Number.isFinite(effect)) return effect;
      let left = kept.residuals[stratum] as number;
      for (let index = 0; index < size; index += 1)
        left -= (kept.crossed[stratum * size + index] as number) * (step[index] as number);
      return effect + (share * left) / (kept.weights[stratum] as number);
    }),
  };
}
