import jStat from "jstat";
import type { Settings } from "../../scheme/settings.ts";
import { fitWithoutIdle } from "../statistics/idle-covariates.ts";
import { leaveOneOut, varianceAlong } from "../statistics/leave-one-out.ts";

import { standardRates } from "../statistics/standard-rates.ts";
import type { CompleteLists, OnLists } from "./reporting-rate-lists.ts";
import { comparedLists } from "./reporting-rate-outcomes.ts";
import type { SeriesPoint } from "./trend.ts";

type Rules = Pick<Settings, "change" | "periods" | "provisional_years">;
type Rate = Pick<SeriesPoint, "time" | "n" | "estimate" | "low" | "high">;

/**
 * The reporting rate of a taxon in each period: the share of complete lists, in %, that would name it were all lists of the
 * squares where it was ever recorded of that period. Empty where the taxon has too few lists.
 */
export function periodRates(taxon_id: string, lists: CompleteLists, own: OnLists, rules: Rules): SeriesPoint[] {
  const times = rules.periods.map((_, period) => period);
  const { minimum_visits } = rules.change.reporting_rate;
  return ratesOf(lists, own, { times, timeOf: lists.period, fewest: minimum_visits, rules }).map((rate) => ({
    taxon_id,
    method: "reporting_rate",
    unit: "period",
    ...rate,
    provisional: false,
  }));
}

/** The same for each year, provisional years too, which are marked. */
export function yearRates(taxon_id: string, lists: CompleteLists, own: OnLists, rules: Rules): SeriesPoint[] {
  const times = [...new Set(lists.year)].sort((a, b) => a - b);
  const { minimum_visits_a_year } = rules.change.reporting_rate;
  return ratesOf(lists, own, { times, timeOf: lists.year, fewest: minimum_visits_a_year, rules }).map((rate) => ({
    taxon_id,
    method: "reporting_rate",
    unit: "year",
    ...rate,
    provisional: rules.provisional_years.includes(rate.time),
  }));
}

interface Times {
  /** Numbers of the times, and that of each list. */
  times: readonly number[];
  timeOf: Int32Array;
  /** Lists below which a time has no rate. */
  fewest: number;
  rules: Rules;
}

function ratesOf(all: CompleteLists, own: OnLists, { times, timeOf, fewest, rules }: Times): Rate[] {
  const numberOf = new Map(times.map((time, index) => [time, index]));
  const everything = comparedLists(all, own, (list) => numberOf.get(timeOf[list] as number) ?? -1, times.length, false);
  const { minimum_detections, minimum_squares } = rules.change.reporting_rate;
  const named = everything.found.reduce((sum, found) => sum + found, 0);
  if (named < minimum_detections || everything.allSquares < minimum_squares) return [];
  const enough = times.filter((_, index) => (everything.lists[index] as number) >= fewest);
  // A time at which no list names it, or each does, has an effect without bound; the others are as they would be without it.
  const isBetween = (time: number) => {
    const index = numberOf.get(time) as number;
    const found = everything.found[index] as number;
    return found > 0 && found < (everything.lists[index] as number);
  };
  const fitted = fittedRates(all, own, enough.filter(isBetween), timeOf);
  return times.map((time, index): Rate => {
    const n = everything.lists[index] as number;
    const squares = everything.squares[index] as number;
    const isNever = enough.includes(time) && everything.found[index] === 0;
    // Lists of one square are alike, so that squares, not lists, bound a rate of which none is seen.
    const none = { estimate: 0, low: 0, high: 100 * (1 - 0.025 ** (1 / squares)) };
    return { time, n, ...(isNever ? none : (fitted.get(time) ?? { estimate: null, low: null, high: null })) };
  });
}

/** Rates with their 95 % intervals, symmetric in the log-odds, of times at which some lists name the taxon and some do not. */
function fittedRates(all: CompleteLists, own: OnLists, times: readonly number[], timeOf: Int32Array) {
  const rates = new Map<number, Pick<Rate, "estimate" | "low" | "high">>();
  if (times.length < 2) return rates;
  const numberOf = new Map(times.map((time, index) => [time, index]));
  const compared = comparedLists(all, own, (list) => numberOf.get(timeOf[list] as number) ?? -1, times.length, false);
  const fitted = fitWithoutIdle(compared.outcomes);
  if (typeof fitted === "string") return rates;
  const { outcomes, fit } = fitted;
  const left = leaveOneOut(outcomes, fit, outcomes.stratum as Int32Array);
  if (left === undefined) return rates;
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
  return rates;
}
