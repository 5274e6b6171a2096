import jStat from "jstat";
import type { Scheme } from "../../scheme/scheme.ts";
import { fitWithoutIdle } from "../statistics/idle-covariates.ts";
import { leaveOneOut, varianceAlong } from "../statistics/leave-one-out.ts";

import { standardRates } from "../statistics/standard-rates.ts";
import { type CompleteLists, layLists, laySetOfRate, type OnLists, readCompleteLists } from "./reporting-rate-lists.ts";
import { type ComparedLists, comparedLists } from "./reporting-rate-outcomes.ts";
import { seriesOf } from "./reporting-rate-series.ts";
import type { TellChange, Trend, TrendContext } from "./trend.ts";
import { whyNoRate } from "./why-no-rate.ts";

const NOTHING: OnLists = { lists: [], found: [], others: [], squares: new Set() };
const GENERALISED = `
  SELECT DISTINCT c.counts_for AS taxon_id FROM sightings AS s JOIN closure AS c ON c.taxon_id = s.taxon_id
  WHERE s.generalised ORDER BY 1`;

/**
 * Trends by the records they are told from, for each run: most sets of evidence hold the same complete lists. All sets of a
 * run are given the same array of pairs, and no two runs are.
 */
const runs = new WeakMap<TrendContext["pairs"], Map<string, readonly Trend[]>>();

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
  const known = runs.get(pairs) ?? new Map<string, readonly Trend[]>();
  if (!runs.has(pairs)) await layLists(database, scheme);
  runs.set(pairs, known);
  const records = await laySetOfRate(database, set.where);
  const isMain = set.id === "main";
  const before = isMain ? undefined : known.get(records);
  if (before !== undefined) return { trends: before.map((trend) => ({ ...trend, evidence_set: set.id })), series: [] };
  const lists = await readCompleteLists(database, scheme);
  const hidden = new Set((await database.rows<{ taxon_id: string }>(GENERALISED)).map(({ taxon_id }) => taxon_id));
  const trends = pairs.flatMap((pair) => trendsOf(pair, { lists, scheme, hidden }));
  known.set(records, trends);
  const told = trends.map((trend): Trend => ({ ...trend, evidence_set: set.id }));
  if (!isMain) return { trends: told, series: [] };
  const shown = scheme.taxa.map(({ taxonID }) => taxonID).filter((id) => !hidden.has(id));
  await laySetOfRate(database, "established");
  const all = await readCompleteLists(database, scheme);
  return { trends: told, series: shown.flatMap((id) => seriesOf(id, { settled: lists, all }, scheme.settings)) };
};

type Change = Readonly<Record<"estimate" | "low" | "high", number>>;

interface Given {
  lists: CompleteLists;
  scheme: Scheme;
  /** Taxa some of whose records are shown coarser than they are known. */
  hidden: ReadonlySet<string>;
}

function trendsOf(pair: readonly [number, number], { lists, scheme, hidden }: Given): Trend[] {
  const timeOf = lists.period.map((period) => pair.indexOf(period));
  const listed = [0, 1].map((time) => timeOf.reduce((sum, one) => sum + (one === time ? 1 : 0), 0)) as [number, number];
  return scheme.taxa.map(({ taxonID }) => {
    const compared = comparedLists(lists, lists.taxa.get(taxonID) ?? NOTHING, timeOf, 2, true);
    const rules = { settings: scheme.settings, pair, listed, isHidden: hidden.has(taxonID) };
    return trendOf(taxonID, pair, compared, whyNoRate(compared, rules) || changeOf(compared));
  });
}

function trendOf(
  taxon_id: string,
  [from_period, to_period]: readonly [number, number],
  compared: ComparedLists,
  told: Change | string,
): Trend {
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
function changeOf(compared: ComparedLists): Change | string {
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
