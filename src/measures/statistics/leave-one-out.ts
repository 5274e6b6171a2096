import type { LogisticFit, Outcomes } from "./logistic.ts";
import { emptySums, stretchesOf, sumRows } from "./logistic-sums.ts";
import { solvePositive } from "./solve-positive.ts";

/** How far the effects move when a cluster is left out: `shifts` has the effects of the first cluster, then of the next. */
export interface LeftOut {
  readonly clusters: number;
  readonly size: number;
  readonly shifts: Float64Array;
}

/**
 * What a fit owes to each cluster of its rows: the first Newton step that its effects take when the cluster is left out.
 * Rows of one place are alike, so that they tell less than as many rows of different places; the spread of these steps
 * shows how much less, and leans to the careful side where clusters are few or unlike (the jackknife form of the
 * covariance by clusters: Bell & McCaffrey 2002, Survey Methodology 28: 169–181).
 *
 * @param cluster numbers that never fall; no stratum may lie in two clusters. Clusters whose every stratum is passed over
 *   in the fit are no clusters
 * @returns undefined where there are fewer than two clusters, or the effects hang on one of them alone
 * @example varianceAlong(leaveOneOut(outcomes, fit, cluster), [1, 0]) // the variance of the first effect
 */
export function leaveOneOut(outcomes: Outcomes, fit: LogisticFit, cluster: Int32Array): LeftOut | undefined {
  const size = fit.effects.length;
  const { information } = fit.sums;
  const own = emptySums(size);
  const without = new Float64Array(size * size);
  const steps: Float64Array[] = [];
  for (const { from, past } of stretchesOf(cluster, 0, outcomes.trials.length)) {
    sumRows(outcomes, fit, from, past, undefined, own);
    if (own.rows === 0) continue;
    for (let cell = 0; cell < without.length; cell += 1)
      without[cell] = (information[cell] as number) - (own.information[cell] as number);
    const step = solvePositive(without, own.score, size);
    if (step === null || !step.every(Number.isFinite)) return undefined;
    steps.push(step);
  }
  if (steps.length < 2) return undefined;
  const shifts = new Float64Array(steps.length * size);
  steps.forEach((step, index) => {
    shifts.set(step, index * size);
  });
  return { clusters: steps.length, size, shifts };
}

/**
 * Variance of a sum of effects, each times its part in a direction, from what each cluster left out moves it by.
 *
 * @param direction a part for each effect
 * @example varianceAlong({ clusters: 2, size: 1, shifts: Float64Array.of(1, -1) }, [3]) // => 9
 */
export function varianceAlong({ clusters, size, shifts }: LeftOut, direction: ArrayLike<number>): number {
  let squares = 0;
  for (let cluster = 0; cluster < clusters; cluster += 1) {
    let along = 0;
    for (let index = 0; index < size; index += 1)
      along += (direction[index] as number) * (shifts[cluster * size + index] as number);
    squares += along * along;
  }
  return ((clusters - 1) / clusters) * squares;
}
