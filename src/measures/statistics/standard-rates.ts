import type { LogisticFit, Outcomes } from "./logistic.ts";
import { stretchesOf } from "./logistic-sums.ts";

/** The share of trials that would succeed at one level of the factor. */
export interface StandardRate {
  /** 0 to 1. */
  readonly rate: number;
  /** Slope of the rate in each effect, that of the strata following along. */
  readonly slopes: Float64Array;
}

/**
 * For each level of the factor, the share of successes were all trials of all rows at that level and else as they are:
 * marginal standardisation (Lane & Nelder 1982, Biometrics 38: 613–621). Trials of strata that were passed over in the fit
 * count as what they were, all successes or none. The slopes carry the variance of the effects over to the rates (delta
 * method); as an effect moves, the effects of the strata move with it so that each keeps its number of successes.
 *
 * @returns one rate a level, in order
 * @example standardRates(outcomes, fit)[1].rate // the share there would have been in the second period everywhere
 */
export function standardRates(outcomes: Outcomes, fit: LogisticFit): StandardRate[] {
  const { levels, trials, covariates } = outcomes;
  const size = fit.effects.length;
  const kept = fit.strataSums;
  const times = Float64Array.from({ length: levels }, (_, level) =>
    level === 0 ? 1 : Math.exp(fit.effects[level - 1] as number),
  );
  const rates = new Float64Array(levels);
  const slopes = Array.from({ length: levels }, () => new Float64Array(size));
  const odds = baseOdds(outcomes, fit);
  const spreads = new Float64Array(levels);
  let all = 0;
  for (const { stratum, from, past } of stretchesOf(outcomes.stratum, 0, trials.length)) {
    spreads.fill(0);
    for (let row = from; row < past; row += 1) {
      const among = trials[row] as number;
      all += among;
      const own = odds[row] as number;
      if (own === 0) continue;
      if (!Number.isFinite(own)) {
        for (let level = 0; level < levels; level += 1) rates[level] = (rates[level] as number) + among;
        continue;
      }
      for (let level = 0; level < levels; level += 1) {
        const here = own * (times[level] as number);
        const chance = here / (1 + here);
        const spread = (among * chance) / (1 + here);
        rates[level] = (rates[level] as number) + among * chance;
        spreads[level] = (spreads[level] as number) + spread;
        const slope = slopes[level] as Float64Array;
        for (let j = 0; j < covariates.length; j += 1)
          slope[levels - 1 + j] = (slope[levels - 1 + j] as number) + spread * (covariates[j]?.[row] as number);
      }
    }
    for (let level = 0; level < levels; level += 1) {
      const spread = spreads[level] as number;
      if (spread === 0) continue;
      const slope = slopes[level] as Float64Array;
      if (level > 0) slope[level - 1] = (slope[level - 1] as number) + spread;
      if (stratum < 0) continue;
      const share = spread / (kept.weights[stratum] as number);
      for (let j = 0; j < size; j += 1)
        slope[j] = (slope[j] as number) - share * (kept.crossed[stratum * size + j] as number);
    }
  }
  return slopes.map((slope, level) => ({
    rate: (rates[level] as number) / all,
    slopes: slope.map((one) => one / all),
  }));
}

/** Odds of each row at the first level. */
function baseOdds(
  { trials, levels, covariates, stratum, offset }: Outcomes,
  { effects, strata }: LogisticFit,
): Float64Array {
  return trials.map((_, row) => {
    let logOdds = (stratum === null ? 0 : (strata[stratum[row] as number] as number)) + (offset?.[row] ?? 0);
    for (let j = 0; j < covariates.length; j += 1)
      logOdds += (effects[levels - 1 + j] as number) * (covariates[j]?.[row] as number);
    return Math.exp(logOdds);
  });
}
