import jStat from "jstat";
import type { Settings } from "../../scheme/settings.ts";
import { fitWithoutIdle } from "../statistics/idle-covariates.ts";
import { leaveOneOut, varianceAlong } from "../statistics/leave-one-out.ts";

import { standardRates } from "../statistics/standard-rates.ts";
import type { CompleteLists, OnLists } from "./reporting-rate-lists.ts";
import { type ComparedLists, comparedLists } from "./reporting-rate-outcomes.ts";
import type { SeriesPoint } from "./trend.ts";

type Rules = Pick<Settings, "change" | "periods" | "provisional_years">;
const NOTHING: OnLists = { lists: [], found: [], others: [], squares: new Set() };

interface Rates {
  rates: Rate[];
  weights: readonly number[] | null;
}

type Rate = Pick<SeriesPoint, "time" | "n" | "estimate" | "low" | "high">;

/** Lists in which a taxon may be named: those of settled years alone, and with provisional ones. */
interface Lists {
  settled: CompleteLists;
  all: CompleteLists;
}

/**
 * The reporting rate of a taxon in each period, then in each year, provisional years too, which are marked: the share of
 * complete lists, in %, that would name it were all lists of the squares where it was ever recorded of that time. Empty
 * where the taxon has too few lists. What length and season weigh is found once, from the periods: for the years they are
 * one covariate, so that forty years cost little more than two periods.
 *
 * @example seriesOf("a", { settled, all }, settings).filter(({ unit }) => unit === "year").length // => 40
 */
export function seriesOf(taxon_id: string, { settled, all }: Lists, rules: Rules): SeriesPoint[] {
  const { minimum_visits, minimum_visits_a_year } = rules.change.reporting_rate;
  const common = { taxon_id, method: "reporting_rate" } as const;
  const periods = rules.periods.map((_, period) => period);
  const years = [...new Set(all.year)].sort((one, other) => one - other);
  const byPeriod = ratesOf(settled, settled.taxa.get(taxon_id) ?? NOTHING, {
    ...{ times: periods, timeOf: settled.period, fewest: minimum_visits, rules, weights: null },
  });
  const byYear = ratesOf(all, all.taxa.get(taxon_id) ?? NOTHING, {
    ...{ times: years, timeOf: all.year, fewest: minimum_visits_a_year, rules, weights: byPeriod.weights },
  });
  return [
    ...byPeriod.rates.map((rate) => ({ ...common, unit: "period" as const, ...rate, provisional: false })),
    ...byYear.rates.map((rate) => ({
      ...common,
      unit: "year" as const,
      ...rate,
      provisional: rules.provisional_years.includes(rate.time),
    })),
  ];
}

interface Times {
  /** Numbers of the times, and that of each list. */
  times: readonly number[];
  timeOf: Int32Array;
  /** Lists below which a time has no rate. */
  fewest: number;
  rules: Rules;
  /** What each covariate weighs; null where that is to be found. */
  weights: readonly number[] | null;
}

function ratesOf(all: CompleteLists, own: OnLists, { times, timeOf, fewest, rules, weights }: Times): Rates {
  const everything = comparedLists(all, own, numbered(timeOf, times), times.length, false);
  const { minimum_detections, minimum_squares } = rules.change.reporting_rate;
  const named = everything.found.reduce((sum, found) => sum + found, 0);
  if (named < minimum_detections || everything.allSquares < minimum_squares) return { rates: [], weights: null };
  const enough = times.filter((_, index) => (everything.lists[index] as number) >= fewest);
  // A time at which no list names it, or each does, has an effect without bound; the others are as they would be without it.
  const isBetween = (time: number) => {
    const index = times.indexOf(time);
    const found = everything.found[index] as number;
    return found > 0 && found < (everything.lists[index] as number);
  };
  const between = enough.filter(isBetween);
  const compare = (of: readonly number[]) =>
    of.length === times.length ? everything : comparedLists(all, own, numbered(timeOf, of), of.length, false);
  const fitted = fittedRates(between, compare, weights);
  const rates = times.map((time, index): Rate => {
    const n = everything.lists[index] as number;
    const squares = everything.squares[index] as number;
    const isNever = enough.includes(time) && everything.found[index] === 0;
    // Lists of one square are alike, so that squares, not lists, bound a rate of which none is seen.
    const none = { estimate: 0, low: 0, high: 100 * (1 - 0.025 ** (1 / squares)) };
    return { time, n, ...(isNever ? none : (fitted.rates.get(time) ?? { estimate: null, low: null, high: null })) };
  });
  return { rates, weights: fitted.weights };
}

/** The times but for the one at which the fewest lists name the taxon, the first of several. */
function withoutScarcest(times: readonly number[], { found }: ComparedLists): number[] {
  const scarcest = times.reduce((least, _, at) => ((found[at] as number) < (found[least] as number) ? at : least), 0);
  return times.filter((_, at) => at !== scarcest);
}

/** Rates with their 95 % intervals, symmetric in the log-odds, of times at which some lists name the taxon and some do not. */
function fittedRates(
  times: readonly number[],
  compare: (times: readonly number[]) => ComparedLists,
  weights: readonly number[] | null,
): { rates: Map<number, Pick<Rate, "estimate" | "low" | "high">>; weights: readonly number[] | null } {
  const rates = new Map<number, Pick<Rate, "estimate" | "low" | "high">>();
  const silent = { rates, weights: null };
  if (times.length < 2) return silent;
  const compared = compare(times);
  const { covariates } = compared.outcomes;
  const weighed = weights === null ? covariates : [weighedTogether(covariates, weights)];
  const fitted = fitWithoutIdle({ ...compared.outcomes, covariates: weighed });
  // A single find in a square where nothing else is found gives its time an effect without bound: told by how few they are.
  if (fitted === "separated") return fittedRates(withoutScarcest(times, compared), compare, weights);
  if (typeof fitted === "string") return silent;
  const { outcomes, fit } = fitted;
  const left = leaveOneOut(outcomes, fit, outcomes.stratum as Int32Array);
  if (left === undefined) return silent;
  const quantile = jStat.studentt.inv(0.975, left.clusters - 1);
  standardRates(outcomes, fit).forEach(({ rate, slopes }, index) => {
    const reach = (quantile * Math.sqrt(varianceAlong(left, slopes))) / (rate * (1 - rate));
    const shown = (logOdds: number) => 100 / (1 + Math.exp(-logOdds));
    const middle = Math.log(rate / (1 - rate));
    rates.set(times[index] as number, {
      estimate: 100 * rate,
      low: shown(middle - reach),
      high: shown(middle + reach),
    });
  });
  const found = weighed.map((covariate) => {
    const index = outcomes.covariates.indexOf(covariate);
    return index < 0 ? 0 : (fit.effects[times.length - 1 + index] as number);
  });
  return { rates, weights: found };
}

/** Covariates as one, each by its weight. */
function weighedTogether(covariates: readonly Float64Array[], weights: readonly number[]): Float64Array {
  const sum = new Float64Array(covariates[0]?.length ?? 0);
  covariates.forEach((covariate, index) => {
    const weight = weights[index] as number;
    for (let row = 0; row < sum.length; row += 1) sum[row] = (sum[row] as number) + weight * (covariate[row] as number);
  });
  return sum;
}

/** The place of each list's time among some times; −1 for none of them. */
function numbered(timeOf: Int32Array, times: readonly number[]): Int32Array {
  const numberOf = new Map(times.map((time, index) => [time, index]));
  return timeOf.map((time) => numberOf.get(time) ?? -1);
}
