import type { Database } from "../../src/engine/database.ts";
import type { Trend } from "../../src/measures/change/trend.ts";
import { netPercent } from "../../src/measures/net-change.ts";

/** What counting alone says: a trend of no method of the program. */
export type RawTrend = Omit<Trend, "method"> & { method: "raw_counts" };

/**
 * What comes of it when the 10 km squares with records are counted in each period and nothing else is asked: which share
 * more or fewer they are, with the interval of squares that changed. No atlas shows it; it is here to be seen to fail.
 *
 * @example (await rawCounts(database))[0]?.method // => "raw_counts"
 */
export async function rawCounts(database: Database): Promise<RawTrend[]> {
  const rows = await database.rows<{ taxon_id: string; retained: number; gained: number; lost: number }>(`
    SELECT taxon_id, count(*) FILTER (earlier AND recent) AS retained, count(*) FILTER (recent AND NOT earlier) AS gained,
      count(*) FILTER (earlier AND NOT recent) AS lost
    FROM (
      SELECT taxon_id, grid, square, bool_or(period = 0) AS earlier, bool_or(period = 1) AS recent
      FROM taxon_squares WHERE resolution_m = 10000 GROUP BY taxon_id, grid, square
    )
    GROUP BY taxon_id ORDER BY taxon_id`);
  return rows.map(({ taxon_id, ...squares }) => {
    const net = netPercent(squares);
    return {
      taxon_id,
      method: "raw_counts",
      evidence_set: "main",
      from_period: 0,
      to_period: 1,
      n_from: squares.retained + squares.lost,
      n_to: squares.retained + squares.gained,
      n: squares.retained,
      estimate: net?.estimate ?? null,
      low: net?.low ?? null,
      high: net?.high ?? null,
      judged: net !== null,
      reason: net === null ? "no square in the earlier period" : "",
    };
  });
}
