-- Effort of squares and periods: records, visits by the length of their list, lists declared complete, and the fewest taxa
-- that explain the names recorded there. Visits that found nothing, and those of records shown coarser than they are known,
-- which stand apart from the list they were on, are counted as visits and in no class of length.
-- In: sightings, visit_squares, visit_lists, visits, square_territories, counted_names (grid, resolution_m, square, period,
-- alone: names that stand alone in the checklist, tangled: the others), fewest_taxa (tangled, taxa that explain them).
-- Out: square_effort, period_effort (period, visits, without_recorder, …).
CREATE OR REPLACE TABLE square_effort AS
WITH counted AS (
  SELECT grid, 10000 AS resolution_m, hectad AS square, period, count(*) AS records
  FROM sightings WHERE hectad IS NOT NULL GROUP BY grid, hectad, period
  UNION ALL
  SELECT grid, 2000 AS resolution_m, tetrad AS square, period, count(*) AS records
  FROM sightings WHERE tetrad IS NOT NULL GROUP BY grid, tetrad, period
),
visited AS (
  SELECT q.grid, q.resolution_m, q.square, l.period, count(*) AS visits,
    count(*) FILTER (l.list_length = 1 AND NOT l.generalised) AS visits_one_species,
    count(*) FILTER (l.list_length BETWEEN 2 AND 3 AND NOT l.generalised) AS visits_two_or_three,
    count(*) FILTER (l.list_length >= 4 AND NOT l.generalised) AS visits_four_or_more,
    count(*) FILTER (l.complete) AS complete_lists
  FROM visit_squares AS q JOIN visit_lists AS l USING (visit)
  GROUP BY q.grid, q.resolution_m, q.square, l.period
),
named AS (
  SELECT n.grid, n.resolution_m, n.square, n.period, n.alone + coalesce(f.taxa, 0) AS taxa
  FROM counted_names AS n LEFT JOIN fewest_taxa AS f ON f.tangled = n.tangled
)
SELECT t.territory, r.grid, r.resolution_m, r.square, r.period, r.records,
  coalesce(v.visits, 0) AS visits, coalesce(v.visits_one_species, 0) AS visits_one_species,
  coalesce(v.visits_two_or_three, 0) AS visits_two_or_three, coalesce(v.visits_four_or_more, 0) AS visits_four_or_more,
  coalesce(v.complete_lists, 0) AS complete_lists, coalesce(n.taxa, 0)::INTEGER AS taxa
FROM counted AS r
JOIN square_territories AS t ON t.grid = r.grid AND t.resolution_m = r.resolution_m AND t.square = r.square
LEFT JOIN visited AS v
  ON v.grid = r.grid AND v.resolution_m = r.resolution_m AND v.square = r.square AND v.period IS NOT DISTINCT FROM r.period
LEFT JOIN named AS n
  ON n.grid = r.grid AND n.resolution_m = r.resolution_m AND n.square = r.square AND n.period IS NOT DISTINCT FROM r.period;

CREATE OR REPLACE TABLE period_effort AS
SELECT l.period, count(*) AS visits, count(*) FILTER (v.recorder = '') AS without_recorder,
  count(*) FILTER (l.list_length = 1 AND NOT l.generalised) AS visits_one_species,
  count(*) FILTER (l.list_length BETWEEN 2 AND 3 AND NOT l.generalised) AS visits_two_or_three,
  count(*) FILTER (l.list_length >= 4 AND NOT l.generalised) AS visits_four_or_more,
  count(*) FILTER (l.complete) AS complete_lists
FROM visits AS v JOIN visit_lists AS l USING (visit)
GROUP BY l.period;
