-- Change of each taxon between each two compared periods, under each coverage rule, at both resolutions, in each territory
-- and in all. Only squares covered in both periods, with settled records, count as retained, gained or lost; the rest is
-- counted beside. Squares without a row in taxon_periods are counted for all taxa at once, less those that have one.
-- In: taxon_periods, visited_squares, state_of and in_period (macros), land_hectads (territory, grid, square; empty where the
-- scheme has no list), taxon_ids, rules, pairs (from_period, to_period).
-- Out: change_counts; land nobody visited is covered in neither period.
CREATE OR REPLACE TABLE change_counts AS
WITH asked AS (
  SELECT p.from_period, p.to_period, r.minimum_visits, false AS strictly FROM pairs AS p CROSS JOIN rules AS r
  UNION ALL
  SELECT p.from_period, p.to_period, r.stricter_minimum_visits, true FROM pairs AS p CROSS JOIN rules AS r
  WHERE r.stricter_minimum_visits <> r.minimum_visits
),
visited AS (
  SELECT territory, resolution_m, covered, covered_strictly, count(*) AS squares
  FROM (
    SELECT territory, resolution_m, covered, covered_strictly FROM visited_squares
    UNION ALL
    SELECT l.territory, 10000, 0, 0 FROM land_hectads AS l
    WHERE NOT EXISTS (SELECT 1 FROM visited_squares AS v WHERE v.resolution_m = 10000 AND v.grid = l.grid AND v.square = l.square)
  )
  GROUP BY ALL
),
every AS (
  SELECT from_period, to_period, minimum_visits, resolution_m, coalesce(territory, 'all') AS territory,
    coalesce(sum(squares) FILTER (covered_from AND covered_to), 0) AS covered_both,
    coalesce(sum(squares) FILTER (covered_from <> covered_to), 0) AS covered_one,
    coalesce(sum(squares) FILTER (NOT covered_from AND NOT covered_to), 0) AS covered_neither
  FROM (
    SELECT a.from_period, a.to_period, a.minimum_visits, v.resolution_m, v.territory, v.squares,
      in_period(CASE WHEN a.strictly THEN v.covered_strictly ELSE v.covered END, a.from_period) AS covered_from,
      in_period(CASE WHEN a.strictly THEN v.covered_strictly ELSE v.covered END, a.to_period) AS covered_to
    FROM visited AS v CROSS JOIN asked AS a
  )
  GROUP BY GROUPING SETS (
    (from_period, to_period, minimum_visits, resolution_m, territory), (from_period, to_period, minimum_visits, resolution_m))
),
alike AS (
  SELECT t.taxon_id, t.resolution_m, t.territory, t.recorded_ever, t.seen, t.recorded, t.covered, t.covered_strictly,
    v.covered AS usual, v.covered_strictly AS usual_strictly, count(*) AS squares
  FROM taxon_periods AS t
  JOIN visited_squares AS v ON v.grid = t.grid AND v.resolution_m = t.resolution_m AND v.square = t.square
  GROUP BY ALL
),
flags AS (
  SELECT a.from_period, a.to_period, a.minimum_visits, o.taxon_id, o.resolution_m, o.territory, o.squares, o.recorded_ever,
    in_period(o.seen, a.from_period) AS seen_from,
    in_period(o.seen, a.to_period) AS seen_to,
    in_period(o.recorded, a.from_period) AS recorded_from,
    in_period(o.recorded, a.to_period) AS recorded_to,
    in_period(CASE WHEN a.strictly THEN o.covered_strictly ELSE o.covered END, a.from_period) AS covered_from,
    in_period(CASE WHEN a.strictly THEN o.covered_strictly ELSE o.covered END, a.to_period) AS covered_to,
    in_period(CASE WHEN a.strictly THEN o.usual_strictly ELSE o.usual END, a.from_period) AS usual_from,
    in_period(CASE WHEN a.strictly THEN o.usual_strictly ELSE o.usual END, a.to_period) AS usual_to
  FROM alike AS o CROSS JOIN asked AS a
),
stated AS (
  SELECT *, covered_from AND covered_to AS covered_both, recorded_from AND recorded_to AS recorded_both,
    state_of(seen_from, seen_to, recorded_from, recorded_to, covered_from AND covered_to) AS state
  FROM flags
),
own AS (
  SELECT from_period, to_period, minimum_visits, taxon_id, resolution_m, coalesce(territory, 'all') AS territory,
    sum(squares) FILTER (recorded_both AND covered_both) AS retained,
    sum(squares) FILTER (state = 'gained') AS gained,
    sum(squares) FILTER (state = 'lost') AS lost,
    sum(squares) FILTER (recorded_both AND NOT covered_both) AS recorded_both_not_covered,
    sum(squares) FILTER (state = 'retained' AND NOT recorded_both) AS recorded_both_unsettled,
    sum(squares) FILTER (state = 'not_comparable_since') AS not_comparable_since,
    sum(squares) FILTER (state = 'not_comparable_before') AS not_comparable_before,
    coalesce(sum(squares) FILTER (NOT recorded_ever AND covered_both), 0)
      - coalesce(sum(squares) FILTER (usual_from AND usual_to), 0) AS more_covered_both,
    coalesce(sum(squares) FILTER (NOT recorded_ever AND covered_from <> covered_to), 0)
      - coalesce(sum(squares) FILTER (usual_from <> usual_to), 0) AS more_covered_one,
    coalesce(sum(squares) FILTER (NOT recorded_ever AND NOT covered_from AND NOT covered_to), 0)
      - coalesce(sum(squares) FILTER (NOT usual_from AND NOT usual_to), 0) AS more_covered_neither,
    sum(squares) FILTER (seen_from) AS squares_from,
    sum(squares) FILTER (seen_to) AS squares_to
  FROM stated
  GROUP BY GROUPING SETS (
    (from_period, to_period, minimum_visits, taxon_id, resolution_m, territory),
    (from_period, to_period, minimum_visits, taxon_id, resolution_m))
)
SELECT t.taxon_id, e.from_period, e.to_period, e.minimum_visits, e.resolution_m, e.territory,
  coalesce(o.retained, 0)::BIGINT AS retained,
  coalesce(o.gained, 0)::BIGINT AS gained,
  coalesce(o.lost, 0)::BIGINT AS lost,
  coalesce(o.recorded_both_not_covered, 0)::BIGINT AS recorded_both_not_covered,
  coalesce(o.recorded_both_unsettled, 0)::BIGINT AS recorded_both_unsettled,
  coalesce(o.not_comparable_since, 0)::BIGINT AS not_comparable_since,
  coalesce(o.not_comparable_before, 0)::BIGINT AS not_comparable_before,
  (e.covered_both + coalesce(o.more_covered_both, 0))::BIGINT AS covered_both_no_record,
  (e.covered_one + coalesce(o.more_covered_one, 0))::BIGINT AS covered_one_no_record,
  (e.covered_neither + coalesce(o.more_covered_neither, 0))::BIGINT AS covered_neither,
  coalesce(o.squares_from, 0)::BIGINT AS squares_from,
  coalesce(o.squares_to, 0)::BIGINT AS squares_to
FROM taxon_ids AS t
CROSS JOIN every AS e
LEFT JOIN own AS o
  ON o.taxon_id = t.taxon_id AND o.from_period = e.from_period AND o.to_period = e.to_period
  AND o.minimum_visits = e.minimum_visits AND o.resolution_m = e.resolution_m AND o.territory = e.territory;
