import { whyNotJudged } from "../measures/change/why-not-judged.ts";
import { inWholeSquares, netChangeInterval, netPercent, turnoverPercent } from "../measures/net-change.ts";
import type { ChangeCounts } from "./change-counts.ts";
import type { ChangeRow } from "./contracts.ts";

/** When a figure of change may speak. */
export interface JudgingRules {
  /** Identifiers of the atlas's periods, in order. */
  periods: readonly string[];
  /** Visits with records of other taxa that make a square covered, of the rule that figures are first told under. */
  minimumVisits: number;
  /** Fewest comparable squares. */
  minimumComparable: number;
  /** Share of the taxon's records of each period that must be good to 2 km, in the 10 km squares where both have some. */
  minimumTetradShare: number;
}

/** The figures of compared squares, or why there are none. */
export type ChangeFigures = Pick<
  ChangeRow,
  | "comparable"
  | "net"
  | "net_percent"
  | "interval_low"
  | "interval_high"
  | "turnover"
  | "turnover_low"
  | "turnover_high"
  | "judged"
  | "reason"
>;

const oneDecimal = (value: number | undefined): number | null =>
  value === undefined ? null : Math.round(10 * value) / 10 + 0;

/**
 * Figures of change from counted squares: net change and turnover with their intervals, or why they cannot be judged.
 *
 * @param hidden why squares of that size lack records of the taxon on purpose; empty where they do not
 * @example changeFigures({ retained: 631, gained: 189, lost: 90, … }, rules).net // => 99
 */
export function changeFigures(counts: ChangeCounts, rules: JudgingRules, hidden = ""): ChangeFigures {
  const { retained, gained, lost } = counts;
  const reason = hidden || whyNotCompared(counts, rules);
  const judged = reason === "";
  const [interval_low, interval_high] = judged ? inWholeSquares(netChangeInterval(counts)) : [null, null];
  const net = judged ? netPercent(counts) : null;
  const turnover = judged ? turnoverPercent(counts) : null;
  return {
    comparable: retained + gained + lost,
    net: gained - lost,
    net_percent: oneDecimal(net?.estimate),
    interval_low,
    interval_high,
    turnover: oneDecimal(turnover?.estimate),
    turnover_low: oneDecimal(turnover?.low),
    turnover_high: oneDecimal(turnover?.high),
    judged,
    reason,
  };
}

/**
 * The rows of change of one taxon, one a pair of periods, resolution and territory, under the first rule, each with what
 * the stricter rule says.
 *
 * @param counts under both rules, in order
 * @param hiddenAt why squares lack records of the taxon on purpose, by resolution and territory
 * @example changeRows(counts, rules, () => "")[0]?.stricter?.minimum_visits // => 10
 */
export function changeRows(
  counts: readonly ChangeCounts[],
  rules: JudgingRules,
  hiddenAt: (row: ChangeCounts) => string,
): ChangeRow[] {
  const stricter = counts.filter(({ minimum_visits }) => minimum_visits !== rules.minimumVisits);
  const places = new Map(stricter.map((row) => [placeOf(row), row]));
  return counts
    .filter(({ minimum_visits }) => minimum_visits === rules.minimumVisits)
    .map((row) => {
      const hidden = hiddenAt(row);
      const other = places.get(placeOf(row));
      return {
        ...row,
        from_period: rules.periods[row.from_period] ?? "",
        to_period: rules.periods[row.to_period] ?? "",
        ...changeFigures(row, rules, hidden),
        stricter:
          other === undefined ? null : { minimum_visits: other.minimum_visits, ...changeFigures(other, rules, hidden) },
      };
    })
    .map(({ squares_from: _, squares_to: __, tetrads: ___, ...row }) => row);
}

function placeOf({ from_period, to_period, resolution_m, territory }: ChangeCounts): string {
  return `${from_period} ${to_period} ${resolution_m} ${territory}`;
}

function whyNotCompared(counts: ChangeCounts, { minimumComparable, minimumTetradShare }: JudgingRules): string {
  const why = whyNotJudged(counts, minimumComparable);
  if (counts.resolution_m === 10_000 || counts.squares_from === 0) return why;
  const { records_from, at_tetrad_from, records_to, at_tetrad_to } = counts.tetrads;
  if (records_from === 0 || records_to === 0) return "no 10 km square has records of it in both periods";
  const shares = [at_tetrad_from / records_from, at_tetrad_to / records_to];
  if (Math.min(...shares) >= minimumTetradShare) return why;
  // Rounded down, so that a share that is just too small does not read like one that is enough.
  const [from, to] = shares.map((share) => `${Math.floor(100 * share)} %`);
  return `only ${from} and ${to} of its records of the two periods in the same 10 km squares are good to 2 km; ${Math.round(100 * minimumTetradShare)} % of each are needed`;
}
