import type { Database } from "../../engine/database.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import type { EvidenceSet } from "./evidence-sets.ts";

/**
 * The lines a trend is told by.
 * - `squares_compared`: net change in comparable squares, % of the earlier period's; not corrected for effort
 * - `relative_change`: squares against what the group leads to expect, in standard deviations
 * - `local_frequency`: change of the time factor, %, at equal effort and season, against the mean of the group
 * - `reporting_rate`: change of the share of complete lists that name it, %, at equal list length, season and place
 */
export const TREND_METHODS = ["squares_compared", "relative_change", "local_frequency", "reporting_rate"] as const;
export type TrendMethod = (typeof TREND_METHODS)[number];

/** What one method says of one taxon between two periods, from one set of evidence. */
export interface Trend {
  taxon_id: string;
  method: TrendMethod;
  evidence_set: string;
  /** Numbers of the periods, the earlier first. */
  from_period: number;
  to_period: number;
  /**
   * What the figure rests on. In each period the squares with the taxon (all of them for `local_frequency`, else those
   * compared), or for `reporting_rate` the complete lists compared; in all the 10 km squares compared.
   */
  n_from: number;
  n_to: number;
  n: number;
  /** Null where the method does not speak. */
  estimate: number | null;
  /** 95 % interval; null where there is none. */
  low: number | null;
  high: number | null;
  /** Whether the method speaks; where not, `reason` says why in words that end a sentence after "not applicable: ". */
  judged: boolean;
  reason: string;
}

/** One point of a series, by period or year. */
export interface SeriesPoint {
  taxon_id: string;
  method: TrendMethod;
  unit: "period" | "year";
  /** Number of the period, or the year. */
  time: number;
  n: number;
  estimate: number | null;
  low: number | null;
  high: number | null;
  provisional: boolean;
}

/** What a method is given. The view `set_evidence` holds the set's rows, `taxon_ids` the taxa, `square_places` all squares. */
export interface TrendContext {
  database: Database;
  scheme: Scheme;
  set: EvidenceSet;
  /** Pairs of periods to compare, earlier first; the first pair is that of the maps. */
  pairs: readonly (readonly [from: number, to: number])[];
}

/** What a method says: a trend of every taxon for every pair, and its series; series of all sets but the first are not kept. */
export interface Told {
  trends: Trend[];
  series: SeriesPoint[];
}

/** A method of telling change: pure but for what it reads of the database. It need work out series in the set "main" only. */
export type TellChange = (context: TrendContext) => Promise<Told>;

/**
 * What a trend says of its direction: its interval leaves 0 out above or below, or holds it. Null where not judged.
 *
 * @example directionOf({ judged: true, low: -12, high: -3 }) // => "fewer"
 */
export function directionOf({
  judged,
  low,
  high,
}: Pick<Trend, "judged" | "low" | "high">): "more" | "fewer" | "none" | null {
  if (!judged || low === null || high === null) return null;
  if (low > 0) return "more";
  return high < 0 ? "fewer" : "none";
}
