import jStat from "jstat";
import type { Database } from "../../engine/database.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import { fitWithoutIdle } from "../statistics/idle-covariates.ts";
import { leaveOneOut, varianceAlong } from "../statistics/leave-one-out.ts";

import { standardRates } from "../statistics/standard-rates.ts";
import { type CompleteLists, type OnLists, readCompleteLists } from "./reporting-rate-lists.ts";
import { type ComparedLists, comparedLists } from "./reporting-rate-outcomes.ts";
import { periodRates, yearRates } from "./reporting-rate-series.ts";
import type { TellChange, Trend } from "./trend.ts";
import { whyNoRate } from "./why-no-rate.ts";

const NOTHING: OnLists = { lists: [], found: [], others: [], squares: new Set() };
const GENERALISED = `
  SELECT DISTINCT c.counts_for AS taxon_id FROM sightings AS s JOIN closure AS c ON c.taxon_id = s.taxon_id
  WHERE s.generalised ORDER BY 1`;

/** Trends that were worked out from the same lists before, by database and lists: most sets hold the same complete lists. */
const toldBefore = new WeakMap<Database, Map<string, readonly Trend[]>>();

/**
 * Change of the share of complete lists that name a taxon, at equal list length, season and place: a logistic model with
 * the logarithm of the number of other taxa on the list (Szabo, Vesk, Baxter & Possingham 2010, Ecological Applications 20:
 * 2157–2169). Two waves of the year, an effect of each 10 km square and the interval by squares are ours.
 *
 * - Lists are those that are declared complete and belong to the set: no lots, no surveys for one species, whose reported
 *   absences say nothing of others. Visits of one recorder, day and 10 km square are one list, so that a walk written down
 *   more finely does not become several short ones. A record of a member names the group too.
 * - Other taxa are the fewest that explain the names beside the taxon and what stands above or below it. A list that names
 *   no other is left out: it would not exist had the taxon not been found, and so can never tell that it was not. Where a
 *   set has no list of one taxon, a list must name two others, and so on.
 * - Squares are those with lists in both periods and a record of the taxon at any time. Comparison is within each of them,
 *   so that visits that move from region to region change nothing.
 * - The estimate is the change in % of the rate that all the compared lists would have had, were they all of one period or
 *   all of the other. Its interval is symmetric in the logarithm, its variance that of leaving out each square in turn, its
 *   quantile Student's with one degree of freedom fewer than there are squares that tell of it.
 *
 * List length stands for what a visit sees: where most of a group grows commoner, lists grow longer for the same walk, and
 * every rate at equal length falls by a part of that.
 *
 * @example (await reportingRate({ database, scheme, set, pairs })).trends[0]?.method // => "reporting_rate"
 */
export const reportingRate: TellChange = async ({ database, scheme, set, pairs }) => {
  const lists = await readCompleteLists(database, scheme, set.where);
  const hidden = new Set((await database.rows<{ taxon_id: string }>(GENERALISED)).map(({ taxon_id }) => taxon_id));
  const known = toldBefore.get(database) ?? new Map<string, readonly Trend[]>();
  toldBefore.set(database, known);
  const key = JSON.stringify([lists.fingerprint, pairs, scheme.settings.change.reporting_rate]);
  const trends =
    known.get(key) ??
    scheme.taxa.flatMap(({ taxonID }) =>
      pairs.map((pair) => trendOf(taxonID, pair, { lists, scheme, isHidden: hidden.has(taxonID) })),
    );
  known.set(key, trends);
  const ofSet = trends.map((trend): Trend => ({ ...trend, evidence_set: set.id }));
  if (set.id !== "main") return { trends: ofSet, series: [] };
  const shown = scheme.taxa.map(({ taxonID }) => taxonID).filter((id) => !hidden.has(id));
  const settled = shown.flatMap((id) => periodRates(id, lists, lists.taxa.get(id) ?? NOTHING, scheme.settings));
  const withProvisional = await readCompleteLists(database, scheme, "established");
  const years = shown.flatMap((id) =>
    yearRates(id, withProvisional, withProvisional.taxa.get(id) ?? NOTHING, scheme.settings),
  );
  return { trends: ofSet, series: [...settled, ...years] };
};

interface Given {
  lists: CompleteLists;
  scheme: Scheme;
  isHidden: boolean;
}

function trendOf(taxon_id: string, pair: readonly [number, number], { lists, scheme, isHidden }: Given): Trend {
  const [from_period, to_period] = pair;
  const timeOf = (list: number) => pair.indexOf(lists.period[list] as number);
  const compared = comparedLists(lists, lists.taxa.get(taxon_id) ?? NOTHING, timeOf, 2, true);
  const inPeriod = (period: number) => lists.period.filter((one) => one === period).length;
  const told =
    whyNoRate(compared, {
      settings: scheme.settings,
      pair,
      listed: [inPeriod(from_period), inPeriod(to_period)],
      isHidden,
    }) || changeOf(compared);
  const isTold = typeof told !== "string";
  return {
    taxon_id,
    method: "reporting_rate",
    evidence_set: "",
    from_period,
    to_period,
    n_from: compared.lists[0] as number,
    n_to: compared.lists[1] as number,
    n: compared.allSquares,
    estimate: isTold ? told.estimate : null,
    low: isTold ? told.low : null,
    high: isTold ? told.high : null,
    judged: isTold,
    reason: isTold ? "" : told,
  };
}

/** Change of the rate between the two times of some lists, in %, with its 95 % interval; or why there is none. */
function changeOf(compared: ComparedLists): { estimate: number; low: number; high: number } | string {
  const fitted = fitWithoutIdle(compared.outcomes);
  if (typeof fitted === "string")
    return fitted === "separated"
      ? "squares where it was found at some visits and not at others are too few to compare"
      : "its lists differ too little to compare";
  const { outcomes, fit } = fitted;
  const left = leaveOneOut(outcomes, fit, outcomes.stratum as Int32Array);
  if (left === undefined) return "what its lists tell hangs on one square";
  const [from, to] = standardRates(outcomes, fit);
  if (from === undefined || to === undefined) return "it has no lists to compare";
  const change = Math.log(to.rate / from.rate);
  const direction = to.slopes.map((slope, index) => slope / to.rate - (from.slopes[index] as number) / from.rate);
  const reach = jStat.studentt.inv(0.975, left.clusters - 1) * Math.sqrt(varianceAlong(left, direction));
  const [low = 0, estimate = 0, high = 0] = [-reach, 0, reach].map((off) => 100 * Math.expm1(change + off));
  return { estimate, low, high };
}
