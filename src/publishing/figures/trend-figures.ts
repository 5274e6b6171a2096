import type { Database } from "../../engine/database.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import type { SeriesRow, SpreadRow, TrendRow } from "../contracts.ts";
import { rowsByTaxon } from "./rows-by-taxon.ts";

/** What each method says of each taxon, the compared periods and the main evidence first. */
export function trendRows(database: Database, _scheme: Scheme): Promise<Map<string, TrendRow[]>> {
  return rowsByTaxon<TrendRow>(
    database,
    `SELECT t.taxon_id, t.method, t.evidence_set, p.id AS from_period, q.id AS to_period, t.n_from, t.n_to, t.n, round(t.estimate, 4) AS estimate, round(t.low, 4) AS low, round(t.high, 4) AS high, t.judged, t.reason
     FROM trends AS t JOIN periods AS p ON p.period = t.from_period JOIN periods AS q ON q.period = t.to_period
     CROSS JOIN compared AS c
     ORDER BY t.taxon_id, t.evidence_set <> 'main', t.evidence_set, t.from_period <> c.from_period OR t.to_period <> c.to_period,
       t.from_period, t.to_period, t.method`,
  );
}

/** Points of every series, by time. */
export function seriesRows(database: Database, _scheme: Scheme): Promise<Map<string, SeriesRow[]>> {
  return rowsByTaxon<SeriesRow>(
    database,
    `SELECT s.taxon_id, s.method, s.unit, CASE s.unit WHEN 'period' THEN p.id ELSE s.time::VARCHAR END AS time, s.n, round(s.estimate, 4) AS estimate, round(s.low, 4) AS low, round(s.high, 4) AS high, s.provisional
     FROM series AS s LEFT JOIN periods AS p ON s.unit = 'period' AND p.period = s.time
     ORDER BY s.taxon_id, s.method, s.unit, s.time`,
  );
}

/** How each taxon spread over the 10 km squares, by year. */
export function spreadRows(database: Database): Promise<Map<string, SpreadRow[]>> {
  return rowsByTaxon<SpreadRow>(
    database,
    "SELECT taxon_id, year, squares_new, squares_total, provisional FROM spread ORDER BY taxon_id, year",
  );
}
