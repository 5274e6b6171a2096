-- State of squares for taxa between the two compared periods. Of most pairs of a taxon and a square there is nothing to say
-- but what holds for every taxon, which visited_squares says once; square_states has the others: the taxon was recorded
-- there, or some visits say nothing of other taxa.
-- In: taxon_squares, square_territories, naming_visits, own_visits, compared (from_period, to_period; from_period -1 with one
-- period), rules (minimum_visits).
-- Out: visited_squares (covered_* for a taxon without a row in square_states), square_states (recorded_* and covered_* flags,
-- state). State NULL: not recorded in either period, though perhaps outside both (recorded_ever); with one period always.
CREATE OR REPLACE TABLE visited_squares AS
WITH counted AS (
  SELECT t.territory, t.grid, t.resolution_m, t.square,
    coalesce(sum(v.visits) FILTER (v.period = (SELECT from_period FROM compared)), 0)::BIGINT AS visits_from,
    coalesce(sum(v.visits) FILTER (v.period = (SELECT to_period FROM compared)), 0)::BIGINT AS visits_to
  FROM square_territories AS t
  LEFT JOIN naming_visits AS v ON v.grid = t.grid AND v.resolution_m = t.resolution_m AND v.square = t.square
  GROUP BY t.territory, t.grid, t.resolution_m, t.square
)
SELECT c.*, c.visits_from >= r.minimum_visits AS covered_from, c.visits_to >= r.minimum_visits AS covered_to
FROM counted AS c CROSS JOIN rules AS r;

CREATE OR REPLACE TABLE square_states AS
WITH own AS (
  SELECT taxon_id, grid, resolution_m, square,
    coalesce(sum(visits) FILTER (period = (SELECT from_period FROM compared)), 0) AS visits_from,
    coalesce(sum(visits) FILTER (period = (SELECT to_period FROM compared)), 0) AS visits_to
  FROM own_visits GROUP BY taxon_id, grid, resolution_m, square
),
found AS (
  SELECT taxon_id, grid, resolution_m, square,
    true AS recorded_ever,
    coalesce(bool_or(period = (SELECT from_period FROM compared)), false) AS recorded_from,
    coalesce(bool_or(period = (SELECT to_period FROM compared)), false) AS recorded_to
  FROM taxon_squares GROUP BY taxon_id, grid, resolution_m, square
),
flags AS (
  SELECT taxon_id, s.territory, grid, resolution_m, square,
    coalesce(f.recorded_ever, false) AS recorded_ever,
    coalesce(f.recorded_from, false) AS recorded_from,
    coalesce(f.recorded_to, false) AS recorded_to,
    s.visits_from - coalesce(o.visits_from, 0) >= r.minimum_visits AS covered_from,
    s.visits_to - coalesce(o.visits_to, 0) >= r.minimum_visits AS covered_to
  FROM found AS f
  FULL JOIN own AS o USING (taxon_id, grid, resolution_m, square)
  JOIN visited_squares AS s USING (grid, resolution_m, square)
  CROSS JOIN rules AS r
)
SELECT *,
  CASE
    WHEN (SELECT from_period FROM compared) < 0 THEN NULL
    WHEN recorded_from AND recorded_to THEN 'retained'
    WHEN recorded_to AND covered_from AND covered_to THEN 'gained'
    WHEN recorded_from AND covered_from AND covered_to THEN 'lost'
    WHEN recorded_to THEN 'not_comparable_since'
    WHEN recorded_from THEN 'not_comparable_before'
  END AS state
FROM flags;
