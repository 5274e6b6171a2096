import { sqlBeside } from "../../engine/database.ts";
import { wilsonInterval } from "../binomial.ts";
import { netPercent } from "../net-change.ts";
import type { SeriesPoint, TellChange, Trend } from "./trend.ts";
import { type Comparison, whyNotJudged } from "./why-not-judged.ts";

interface PairRow extends Comparison {
  taxon_id: string;
  from_period: number;
  to_period: number;
  /** Squares with any record at all, from any evidence. */
  ever_from: number;
}

interface PeriodRow {
  taxon_id: string;
  period: number;
  covered: number;
  held: number;
}

const PAIRS = `
  SELECT s.*, (SELECT count(*) FROM taxon_squares AS t
    WHERE t.taxon_id = s.taxon_id AND t.resolution_m = 10000 AND t.period = s.from_period) AS ever_from
  FROM set_pairs AS s ORDER BY taxon_id, from_period, to_period`;

/**
 * Change told by comparing squares: of the 10 km squares covered in both periods by visits that named other taxa, those
 * that hold the taxon in each. The estimate is the net change in % of those that held it in the earlier period, with its
 * exact interval. It is not corrected for effort: more visits to the same squares find more of every taxon.
 * The series gives, for each period, the covered squares that hold it, in %, with the score interval.
 *
 * @example (await squaresCompared({ database, scheme, set, pairs })).trends[0]?.n // => 910
 */
export const squaresCompared: TellChange = async ({ database, scheme, set }) => {
  await database.run(sqlBeside(import.meta.url, "squares-compared.sql"));
  const minimum = scheme.settings.change.minimum_comparable_squares;
  const pairs = await database.rows<PairRow>(PAIRS);
  const periods = await database.rows<PeriodRow>("SELECT * FROM set_periods ORDER BY taxon_id, period");
  await database.run("DROP TABLE set_names; DROP TABLE set_lists; DROP TABLE set_own_visits; DROP TABLE set_alike");
  return { trends: pairs.map((row) => trendOf(row, set.id, minimum)), series: periods.map(pointOf) };
};

function trendOf(row: PairRow, set: string, minimum: number): Trend {
  const { taxon_id, from_period, to_period, retained, gained, lost, squares_from, ever_from } = row;
  const reason =
    squares_from === 0 && ever_from > 0
      ? "no square in the earlier period from this part of the records"
      : whyNotJudged(row, minimum);
  const change = reason === "" ? netPercent(row) : null;
  return {
    taxon_id,
    method: "squares_compared",
    evidence_set: set,
    from_period,
    to_period,
    n_from: retained + lost,
    n_to: retained + gained,
    n: retained + gained + lost,
    estimate: change?.estimate ?? null,
    low: change?.low ?? null,
    high: change?.high ?? null,
    judged: change !== null,
    reason,
  };
}

function pointOf({ taxon_id, period, covered, held }: PeriodRow): SeriesPoint {
  const [low, high] = wilsonInterval(held, covered);
  const none = covered === 0;
  return {
    taxon_id,
    method: "squares_compared",
    unit: "period",
    time: period,
    n: covered,
    estimate: none ? null : (100 * held) / covered,
    low: none ? null : 100 * low,
    high: none ? null : 100 * high,
    // Provisional years are no part of the set this is told from.
    provisional: false,
  };
}
