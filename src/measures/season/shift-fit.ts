import jStat from "jstat";
import { quantiles } from "../statistics/quantile.ts";
import { drawEffects } from "../statistics/quantile-draws.ts";
import { fitQuantile } from "../statistics/quantile-regression.ts";
import { seededRandom } from "../statistics/seeded-random.ts";
import type { ShiftDesign } from "./shift-design.ts";

/** Draws of years from which standard errors are taken. */
const DRAWS = 400;

/** The effects of one share, and of draws of whole years: as many years as there are, each drawn at random. */
export interface ShiftFit {
  readonly effects: Float64Array;
  readonly drawn: readonly Float64Array[];
}

/**
 * Fits one share, and the same to draws of whole years: all that is about in one year shares its weather.
 *
 * @param name of the stream of chance
 * @example fitWithDraws(design, 0.5, "season/a/queen").drawn.length // => 400
 */
export function fitWithDraws({ cells, n }: ShiftDesign, share: number, name: string): ShiftFit {
  const effects = fitQuantile(cells, share);
  const random = seededRandom(`${name}/${share}`);
  const drawn = drawEffects(cells, share, effects, { rows: n, draws: DRAWS, random });
  return { effects, drawn };
}

/**
 * Half of the 95 % interval of what is made of the effects: draws of years scatter as a line's residuals do, about its own
 * two numbers too little. The standard error is that of their middle 95 %, which a draw of too few years for a slope moves
 * by nothing.
 *
 * @param of the number made of them
 * @example halfWidth(fit, 24, ([, slope]) => slope) // => 2.4 days a decade
 */
export function halfWidth({ drawn }: ShiftFit, years: number, of: (effects: Float64Array) => number): number {
  const values = Float64Array.from(drawn, of).sort();
  const [low = 0, high = 0] = quantiles({ values, weights: values.map(() => 1) }, [0.025, 0.975]);
  const error = (high - low) / 2 / jStat.normal.inv(0.975, 0, 1);
  return jStat.studentt.inv(0.975, years - 2) * error * Math.sqrt(years / (years - 2));
}

/**
 * The median of each year, what the regression found of latitude, territory and caste taken out.
 *
 * @example mediansAllowedFor(design, fit.effects) // => [121.5, 119.25, …], one a year
 */
export function mediansAllowedFor({ cells, years }: ShiftDesign, effects: Float64Array): number[] {
  const days = years.map((): [day: number, weight: number][] => []);
  for (let cell = 0; cell < cells.first.length; cell += 1) {
    let allowed = 0;
    for (let j = 2; j < cells.size; j += 1)
      allowed += (effects[j] as number) * (cells.covariates[cell * cells.size + j] as number);
    const begin = cells.start[cell] as number;
    for (let at = begin; at < (cells.start[cell + 1] as number); at += 1) {
      const weight = (cells.totals[at] as number) - (at === begin ? 0 : (cells.totals[at - 1] as number));
      if (weight > 0)
        days[cells.cluster[cell] as number]?.push([(cells.first[cell] as number) + at - begin - allowed, weight]);
    }
  }
  return days.map((own) => weightedMedian(own));
}

function weightedMedian(own: [day: number, weight: number][]): number {
  own.sort(([a, v], [b, w]) => a - b || v - w);
  const total = own.reduce((sum, [, weight]) => sum + weight, 0);
  // Scaled to the number of days they are: quantiles of type 8 need the size of the sample.
  const weights = own.map(([, weight]) => (weight * own.length) / total);
  return quantiles({ values: own.map(([day]) => day), weights }, [0.5])[0] as number;
}
