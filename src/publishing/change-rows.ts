import { inWholeSquares, netChangeInterval } from "../measures/net-change.ts";
import type { ChangeRow } from "./contracts.ts";
import type { ChangeCounts } from "./measured.ts";

/** When a figure of change may speak. */
export interface JudgingRules {
  periods: [from: string, to: string];
  /** Fewest comparable squares. */
  minimumComparable: number;
  /** Share of each compared period's records that is good to 2 km, in the 10 km squares recorded in both, and the share asked for. */
  tetradShares: [from: number, to: number];
  minimumTetradShare: number;
}

/**
 * Figures of change from counted squares: net change with its interval, or why it cannot be judged.
 *
 * @param hidden why squares of that size lack records of the taxon on purpose; empty where they do not
 * @example changeRow({ retained: 631, gained: 189, lost: 90, … }, rules).net // => 99
 */
export function changeRow(counts: ChangeCounts, rules: JudgingRules, hidden = ""): ChangeRow {
  const { resolution_m, territory, retained, gained, lost } = counts;
  const comparable = retained + gained + lost;
  const reason = hidden || whyNotJudged(counts, comparable, rules);
  const judged = reason === "";
  const [low, high] = judged ? inWholeSquares(netChangeInterval(counts)) : [null, null];
  const before = retained + lost;
  return {
    resolution_m,
    territory,
    from_period: rules.periods[0],
    to_period: rules.periods[1],
    comparable,
    retained,
    gained,
    lost,
    net: gained - lost,
    net_percent: judged && before > 0 ? Math.round((1000 * (gained - lost)) / before) / 10 : null,
    interval_low: low,
    interval_high: high,
    recorded_both_not_covered: counts.recorded_both_not_covered,
    not_comparable_since: counts.not_comparable_since,
    not_comparable_before: counts.not_comparable_before,
    covered_both_no_record: counts.covered_both_no_record,
    covered_one_no_record: counts.covered_one_no_record,
    covered_neither: counts.covered_neither,
    judged,
    reason,
  };
}

function whyNotJudged({ resolution_m, retained, lost }: ChangeCounts, comparable: number, rules: JudgingRules): string {
  if (resolution_m === 2_000 && Math.min(...rules.tetradShares) < rules.minimumTetradShare) {
    const shares = rules.tetradShares.map((share) => `${Math.round(100 * share)} %`).join(" and ");
    return `only ${shares} of the two periods' records in the same 10 km squares are good to 2 km; ${Math.round(100 * rules.minimumTetradShare)} % of each are needed`;
  }
  if (retained + lost === 0)
    return comparable === 0 ? "no comparable squares" : "not recorded in the earlier period in any comparable square";
  if (comparable < rules.minimumComparable)
    return `${comparable} comparable ${comparable === 1 ? "square" : "squares"}; ${rules.minimumComparable} are needed`;
  return "";
}
