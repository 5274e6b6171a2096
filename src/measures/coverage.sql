-- Effort and coverage. A square is covered for a taxon in a period when at least minimum_visits visits there recorded
-- OTHER taxa: visits whose every name lies within the taxon's own lineage (itself, its aggregates, its members) do not count,
-- so that a species' own record can make neither its gain nor its loss.
-- In: visits, visit_squares, visit_taxa, sightings, lineage (of_taxon, taxon_id), rules (minimum_visits), periods.
-- Out: square_effort (visits, records, taxa by square and period), own_visits (visits that say nothing of other taxa).
CREATE OR REPLACE TABLE square_records AS
SELECT grid, 10000 AS resolution_m, hectad AS square, period, count(*) AS records, any_value(territory) AS territory
FROM sightings WHERE hectad IS NOT NULL GROUP BY grid, hectad, period
UNION ALL
SELECT grid, 2000 AS resolution_m, tetrad AS square, period, count(*) AS records, any_value(territory) AS territory
FROM sightings WHERE tetrad IS NOT NULL GROUP BY grid, tetrad, period;

CREATE OR REPLACE TABLE square_visits AS
SELECT q.grid, q.resolution_m, q.square, v.period, count(DISTINCT q.visit) AS visits
FROM visit_squares AS q JOIN visits AS v USING (visit)
GROUP BY q.grid, q.resolution_m, q.square, v.period;

CREATE OR REPLACE TABLE square_effort AS
SELECT r.territory, r.grid, r.resolution_m, r.square, r.period, r.records, coalesce(v.visits, 0) AS visits
FROM square_records AS r
LEFT JOIN square_visits AS v
  ON v.grid = r.grid AND v.resolution_m = r.resolution_m AND v.square = r.square AND v.period IS NOT DISTINCT FROM r.period;

CREATE OR REPLACE TABLE own_visits AS
WITH names AS (SELECT visit, count(*) AS names FROM visit_taxa GROUP BY visit),
within AS (
  SELECT t.visit, l.of_taxon AS taxon_id, count(*) AS names
  FROM visit_taxa AS t JOIN lineage AS l ON l.taxon_id = t.taxon_id
  GROUP BY t.visit, l.of_taxon
)
SELECT w.taxon_id, q.grid, q.resolution_m, q.square, v.period, count(DISTINCT w.visit) AS visits
FROM within AS w
JOIN names AS n ON n.visit = w.visit AND n.names = w.names
JOIN visit_squares AS q ON q.visit = w.visit
JOIN visits AS v ON v.visit = w.visit
WHERE v.period IS NOT NULL
GROUP BY w.taxon_id, q.grid, q.resolution_m, q.square, v.period;
