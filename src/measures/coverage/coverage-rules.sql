-- How many squares on land are covered in the compared periods under the rule in force and under a stricter one, for a
-- taxon that was never recorded there; for one that was, its own records do not count and a little less is covered.
-- In: square_places, naming_visits, compared (from_period -1 with one period), rules (minimum_visits,
-- stricter_minimum_visits). Out: coverage_rules; squares are those on land, at 2 km only those with a record.
CREATE OR REPLACE TABLE coverage_rules AS
WITH visited AS (
  SELECT p.territory, p.resolution_m, c.from_period >= 0 AS two,
    coalesce(sum(n.visits) FILTER (n.period = c.from_period), 0) AS visits_from,
    coalesce(sum(n.visits) FILTER (n.period = c.to_period), 0) AS visits_to
  FROM square_places AS p
  CROSS JOIN compared AS c
  LEFT JOIN naming_visits AS n ON n.grid = p.grid AND n.resolution_m = p.resolution_m AND n.square = p.square
  WHERE p.on_land
  GROUP BY p.territory, p.grid, p.resolution_m, p.square, c.from_period
),
ruled AS (
  SELECT 'in force' AS rule, minimum_visits FROM rules
  UNION ALL
  SELECT 'stricter', stricter_minimum_visits FROM rules
)
SELECT coalesce(v.territory, 'all') AS territory, v.resolution_m, r.rule, r.minimum_visits, count(*)::INTEGER AS squares,
  CASE WHEN v.two THEN (count(*) FILTER (v.visits_from >= r.minimum_visits))::INTEGER END AS covered_from,
  (count(*) FILTER (v.visits_to >= r.minimum_visits))::INTEGER AS covered_to,
  CASE WHEN v.two
    THEN (count(*) FILTER (v.visits_from >= r.minimum_visits AND v.visits_to >= r.minimum_visits))::INTEGER END AS covered_both
FROM visited AS v CROSS JOIN ruled AS r
GROUP BY GROUPING SETS ((v.territory, v.resolution_m, v.two, r.rule, r.minimum_visits), (v.resolution_m, v.two, r.rule, r.minimum_visits));
