-- Change of each taxon between the compared periods, at both resolutions, in each territory and in all.
-- Only squares covered in both periods count as retained, gained or lost; the rest is counted beside. Squares without a
-- row in square_states are counted for all taxa at once, less those that have one.
-- In: square_states, visited_squares, land_hectads (territory, grid, square; empty where the scheme has no list), taxon_ids.
-- Out: change_counts; land nobody visited is covered in neither period.
CREATE OR REPLACE TABLE change_counts AS
WITH every AS (
  SELECT resolution_m, coalesce(territory, 'all') AS territory,
    count(*) FILTER (covered_from AND covered_to) AS covered_both,
    count(*) FILTER (covered_from <> covered_to) AS covered_one,
    count(*) FILTER (NOT covered_from AND NOT covered_to) AS covered_neither
  FROM (
    SELECT territory, resolution_m, covered_from, covered_to FROM visited_squares
    UNION ALL
    SELECT l.territory, 10000, false, false FROM land_hectads AS l
    WHERE NOT EXISTS (SELECT 1 FROM visited_squares AS v WHERE v.resolution_m = 10000 AND v.grid = l.grid AND v.square = l.square)
  )
  GROUP BY GROUPING SETS ((resolution_m, territory), (resolution_m))
),
own AS (
  SELECT s.taxon_id, s.resolution_m, coalesce(s.territory, 'all') AS territory,
    count(*) FILTER (s.state = 'retained' AND s.covered_from AND s.covered_to) AS retained,
    count(*) FILTER (s.state = 'gained') AS gained,
    count(*) FILTER (s.state = 'lost') AS lost,
    count(*) FILTER (s.state = 'retained' AND NOT (s.covered_from AND s.covered_to)) AS recorded_both_not_covered,
    count(*) FILTER (s.state = 'not_comparable_since') AS not_comparable_since,
    count(*) FILTER (s.state = 'not_comparable_before') AS not_comparable_before,
    count(*) FILTER (NOT s.recorded_ever AND s.covered_from AND s.covered_to)
      - count(*) FILTER (v.covered_from AND v.covered_to) AS more_covered_both,
    count(*) FILTER (NOT s.recorded_ever AND s.covered_from <> s.covered_to)
      - count(*) FILTER (v.covered_from <> v.covered_to) AS more_covered_one,
    count(*) FILTER (NOT s.recorded_ever AND NOT s.covered_from AND NOT s.covered_to)
      - count(*) FILTER (NOT v.covered_from AND NOT v.covered_to) AS more_covered_neither,
    count(*) FILTER (s.recorded_from) AS squares_from,
    count(*) FILTER (s.recorded_to) AS squares_to
  FROM square_states AS s
  JOIN visited_squares AS v ON v.grid = s.grid AND v.resolution_m = s.resolution_m AND v.square = s.square
  GROUP BY GROUPING SETS ((s.taxon_id, s.resolution_m, s.territory), (s.taxon_id, s.resolution_m))
)
SELECT t.taxon_id, e.resolution_m, e.territory,
  coalesce(o.retained, 0) AS retained,
  coalesce(o.gained, 0) AS gained,
  coalesce(o.lost, 0) AS lost,
  coalesce(o.recorded_both_not_covered, 0) AS recorded_both_not_covered,
  coalesce(o.not_comparable_since, 0) AS not_comparable_since,
  coalesce(o.not_comparable_before, 0) AS not_comparable_before,
  e.covered_both + coalesce(o.more_covered_both, 0) AS covered_both_no_record,
  e.covered_one + coalesce(o.more_covered_one, 0) AS covered_one_no_record,
  e.covered_neither + coalesce(o.more_covered_neither, 0) AS covered_neither,
  coalesce(o.squares_from, 0) AS squares_from,
  coalesce(o.squares_to, 0) AS squares_to
FROM taxon_ids AS t
CROSS JOIN every AS e
LEFT JOIN own AS o ON o.taxon_id = t.taxon_id AND o.resolution_m = e.resolution_m AND o.territory = e.territory;
