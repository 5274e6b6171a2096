import { decomposed, fitLogistic, type LogisticFit, type NoFit, type Outcomes } from "./logistic.ts";
import { sumRows } from "./logistic-sums.ts";

/**
 * Fits outcomes without the covariates that tell nothing the strata, the factor and the covariates before them do not tell:
 * where all lists are of one length, or all visits of one day.
 *
 * @returns the outcomes as they were fitted, and the fit; or why there is none
 * @example fitWithoutIdle({ ...outcomes, covariates: [new Float64Array(8)] }) // outcomes.covariates: []
 */
export function fitWithoutIdle(outcomes: Outcomes): { outcomes: Outcomes; fit: LogisticFit } | NoFit {
  const fit = fitLogistic(outcomes);
  if (typeof fit !== "string") return { outcomes, fit };
  if (fit !== "collinear") return fit;
  const telling: Float64Array[] = [];
  for (const covariate of outcomes.covariates) {
    telling.push(covariate);
    if (!isDetermined({ ...outcomes, covariates: telling })) telling.pop();
  }
  if (telling.length === outcomes.covariates.length) return "collinear";
  return fitWithoutIdle({ ...outcomes, covariates: telling });
}

/** Whether all effects can be told apart where every stratum has even chances. */
function isDetermined(outcomes: Outcomes): boolean {
  const { levels, covariates, stratum, trials } = outcomes;
  const even = {
    effects: new Float64Array(levels - 1 + covariates.length),
    strata: new Float64Array(stratum === null ? 0 : (stratum.at(-1) ?? -1) + 1),
  };
  return decomposed(sumRows(outcomes, even, 0, trials.length)) !== undefined;
}
