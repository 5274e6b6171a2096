-- State of squares for taxa between two periods. Of most pairs of a taxon and a square there is nothing to say but what
-- holds for every taxon, which visited_squares says once; taxon_periods has the others: the taxon was recorded there, or
-- some visits say nothing of other taxa. Periods are kept as bits, so that any two can be compared.
-- A gain or a loss rests on settled records alone: established ones, of no provisional year. A taxon that was seen in a
-- period by other records only stays on the map, and its square says nothing of change.
-- In: taxon_squares, square_territories, naming_visits, own_visits, compared (from_period, to_period; from_period -1 with one
-- period), rules (minimum_visits, stricter_minimum_visits).
-- Out: state_of (macro), visited_squares (covered_* for a taxon without a row in taxon_periods; covered, covered_strictly:
-- bits), taxon_periods (bits: seen, recorded by settled records, covered under each rule), square_states (recorded_* and
-- covered_* flags and state in the compared pair). State NULL: not seen in either period, though perhaps outside both
-- (recorded_ever); with one period always.
CREATE OR REPLACE MACRO in_period(bits, period) AS period >= 0 AND (bits >> greatest(period, 0)::INTEGER) & 1 = 1;

CREATE OR REPLACE MACRO state_of(seen_from, seen_to, recorded_from, recorded_to, covered_both) AS CASE
  WHEN seen_from AND seen_to THEN 'retained'
  WHEN recorded_to AND covered_both THEN 'gained'
  WHEN recorded_from AND covered_both THEN 'lost'
  WHEN seen_to THEN 'not_comparable_since'
  WHEN seen_from THEN 'not_comparable_before'
END;

CREATE OR REPLACE TABLE visited_squares AS
WITH bits AS (
  SELECT t.territory, t.grid, t.resolution_m, t.square,
    coalesce(bit_or(1::BIGINT << v.period) FILTER (v.visits >= r.minimum_visits), 0) AS covered,
    coalesce(bit_or(1::BIGINT << v.period) FILTER (v.visits >= r.stricter_minimum_visits), 0) AS covered_strictly
  FROM square_territories AS t CROSS JOIN rules AS r
  LEFT JOIN naming_visits AS v ON v.grid = t.grid AND v.resolution_m = t.resolution_m AND v.square = t.square
  GROUP BY t.territory, t.grid, t.resolution_m, t.square
)
SELECT b.*, in_period(b.covered, c.from_period) AS covered_from, in_period(b.covered, c.to_period) AS covered_to
FROM bits AS b CROSS JOIN compared AS c;

CREATE OR REPLACE TABLE taxon_periods AS
WITH short AS (
  SELECT o.taxon_id, o.grid, o.resolution_m, o.square,
    coalesce(bit_or(1::BIGINT << o.period) FILTER (n.visits - o.visits < r.minimum_visits), 0) AS uncovered,
    coalesce(bit_or(1::BIGINT << o.period) FILTER (n.visits - o.visits < r.stricter_minimum_visits), 0) AS uncovered_strictly
  FROM own_visits AS o
  JOIN naming_visits AS n ON n.grid = o.grid AND n.resolution_m = o.resolution_m AND n.square = o.square AND n.period = o.period
  CROSS JOIN rules AS r
  GROUP BY o.taxon_id, o.grid, o.resolution_m, o.square
),
found AS (
  SELECT taxon_id, grid, resolution_m, square,
    coalesce(bit_or(1::BIGINT << period), 0) AS seen,
    coalesce(bit_or(1::BIGINT << period) FILTER (settled), 0) AS recorded
  FROM taxon_squares GROUP BY taxon_id, grid, resolution_m, square
)
SELECT taxon_id, v.territory, grid, resolution_m, square,
  f.seen IS NOT NULL AS recorded_ever,
  coalesce(f.seen, 0) AS seen,
  coalesce(f.recorded, 0) AS recorded,
  v.covered & ~coalesce(s.uncovered, 0) AS covered,
  v.covered_strictly & ~coalesce(s.uncovered_strictly, 0) AS covered_strictly
FROM found AS f
FULL JOIN short AS s USING (taxon_id, grid, resolution_m, square)
JOIN visited_squares AS v USING (grid, resolution_m, square);

CREATE OR REPLACE TABLE square_states AS
WITH flags AS (
  SELECT t.taxon_id, t.territory, t.grid, t.resolution_m, t.square, t.recorded_ever,
    in_period(t.seen, c.from_period) AS seen_from,
    in_period(t.seen, c.to_period) AS seen_to,
    in_period(t.recorded, c.from_period) AS recorded_from,
    in_period(t.recorded, c.to_period) AS recorded_to,
    in_period(t.covered, c.from_period) AS covered_from,
    in_period(t.covered, c.to_period) AS covered_to,
    c.from_period >= 0 AS two
  FROM taxon_periods AS t CROSS JOIN compared AS c
)
SELECT taxon_id, territory, grid, resolution_m, square, recorded_ever, recorded_from, recorded_to, covered_from, covered_to,
  CASE WHEN two THEN state_of(seen_from, seen_to, recorded_from, recorded_to, covered_from AND covered_to) END AS state
FROM flags;
