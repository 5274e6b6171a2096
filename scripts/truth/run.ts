import { openDatabase } from "../../src/engine/database.ts";
import { EVIDENCE_SETS } from "../../src/measures/change/evidence-sets.ts";
import { directionOf, type Trend, type TrendMethod } from "../../src/measures/change/trend.ts";
import { countryOf } from "./country.ts";
import { inventGroup } from "./group.ts";
import { type Home, settle } from "./homes.ts";
import { measureInvented } from "./judged.ts";
import { type RawTrend, rawCounts } from "./raw-counts.ts";
import { inventVisits } from "./recording.ts";
import { type InventedRecord, recordVisits } from "./records.ts";
import { scenarioOf } from "./scenarios.ts";

/** One invented country, its group and its recording. */
export interface Trial {
  readonly scenario: string;
  readonly seed: number;
  /** Species of the group. */
  readonly species: number;
  /** Visits of the earlier period. */
  readonly visits: number;
}

/** A method of change, or counting alone. */
export type ToldBy = TrendMethod | RawTrend["method"];

/** What a method says of a species whose true change is known. */
export interface Verdict {
  readonly taxon: string;
  readonly method: ToldBy;
  readonly direction: ReturnType<typeof directionOf>;
  /** Why the method is silent; empty where it speaks. */
  readonly reason: string;
  readonly estimate: number | null;
  readonly low: number | null;
  readonly high: number | null;
  /** What the number of its 2 km squares was multiplied by. */
  readonly change: number;
  /** True changes in per cent: of the 2 km and 10 km squares it lives in, and of the chance to meet it on a visit. */
  readonly tetrads: number;
  readonly hectads: number;
  readonly encounters: number;
}

/** What came of a trial. */
export interface TrialResult extends Trial {
  readonly records: number;
  readonly verdicts: readonly Verdict[];
}

/**
 * Invents the records of a trial and where every species truly lives.
 *
 * @example inventTrial({ scenario: "still", seed: 1, species: 100, visits: 8000 }).records.length // some 58,000
 */
export function inventTrial({ scenario: id, seed, species, visits }: Trial) {
  const scenario = scenarioOf(id);
  const country = countryOf(seed);
  const group = inventGroup(seed, species);
  const homes = settle(country, group, scenario, seed);
  const gone = inventVisits(country, scenario, visits, seed);
  const records: InventedRecord[] = recordVisits(country, group, homes, gone, seed);
  return { country, group, homes, records };
}

/** Shifts of season take half of the time and say nothing of change: they are refused for want of years. */
const WITHOUT_SHIFTS = { season: { minimum_years: 1000 } };

/**
 * Runs a trial through the measures of the program and sets what they say beside the truth.
 *
 * @param spillFolder where the engine may write
 */
export async function runTrial(trial: Trial, spillFolder: string): Promise<TrialResult> {
  const { country, group, homes, records } = inventTrial(trial);
  const taxa = group.map(({ taxonId }) => taxonId);
  const database = await openDatabase({ spillFolder, threads: 1 });
  try {
    await measureInvented(database, country, records, taxa, WITHOUT_SHIFTS);
    const trends = await database.rows<Trend>(
      "SELECT * FROM trends WHERE evidence_set = $set AND from_period = 0 AND to_period = 1 ORDER BY method, taxon_id",
      { set: EVIDENCE_SETS[0]?.id ?? "" },
    );
    const verdicts = [...(await rawCounts(database)), ...trends].map((trend) =>
      verdictOf(trend, homes[taxa.indexOf(trend.taxon_id)] as Home),
    );
    return { ...trial, records: records.length, verdicts };
  } finally {
    database.close();
  }
}

/** Sets what a method says of a species beside its true change. */
export function verdictOf(
  trend: Trend | RawTrend,
  { change, tetrads, hectads, encounters }: Pick<Home, "change" | "tetrads" | "hectads" | "encounters">,
): Verdict {
  const percent = ([earlier, recent]: readonly [number, number]) => 100 * (recent / earlier - 1);
  return {
    taxon: trend.taxon_id,
    method: trend.method,
    direction: directionOf(trend),
    reason: trend.judged ? "" : trend.reason,
    estimate: trend.estimate,
    low: trend.low,
    high: trend.high,
    change,
    tetrads: percent(tetrads),
    hectads: percent(hectads),
    encounters: percent(encounters),
  };
}
