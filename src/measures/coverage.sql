-- Coverage. A square is covered for a taxon in a period when at least minimum_visits visits there recorded
-- OTHER taxa in that square: a visit whose every name lies within the taxon's own lineage (itself, its aggregates, its
-- members) does not count, nor does one that only reports what was not found, so that neither a species' own record nor
-- a survey for it can make its gain or loss. Only a record that supports the square names something there,
-- and one that is shown coarser than it is known does not: its visit may be another's that is counted already. Nor does
-- one of a provisional year, or of what is not established there: change rests on settled records alone.
-- In: sightings, taxon_squares, lineage (of_taxon, taxon_id), rules (minimum_visits).
-- Out: naming_visits (visits that name a taxon by a settled record), own_visits
-- (visits that name nothing outside the taxon's lineage), taxon_coverage (squares and periods covered for a taxon that
-- was ever recorded there).
CREATE OR REPLACE TABLE square_visit_taxa AS
WITH telling AS (
  SELECT visit, period, grid, hectad, tetrad, taxon_id FROM sightings
  WHERE visit IS NOT NULL AND period IS NOT NULL AND present AND established AND NOT provisional AND NOT generalised
)
SELECT DISTINCT visit, period, grid, 10000 AS resolution_m, hectad AS square, taxon_id FROM telling WHERE hectad IS NOT NULL
UNION ALL
SELECT DISTINCT visit, period, grid, 2000 AS resolution_m, tetrad AS square, taxon_id FROM telling WHERE tetrad IS NOT NULL;

CREATE OR REPLACE TABLE naming_visits AS
SELECT grid, resolution_m, square, period, count(DISTINCT visit) AS visits
FROM square_visit_taxa GROUP BY grid, resolution_m, square, period;

-- Only a list no longer than a lineage can lie within it.
CREATE OR REPLACE TABLE own_visits AS
WITH short AS (
  SELECT visit, grid, resolution_m, square, period, count(*) AS names
  FROM square_visit_taxa GROUP BY visit, grid, resolution_m, square, period
  HAVING count(*) <= (SELECT max(taxa) FROM (SELECT count(*) AS taxa FROM lineage GROUP BY of_taxon))
),
within AS (
  SELECT l.of_taxon AS taxon_id, n.visit, n.grid, n.resolution_m, n.square, n.period
  FROM short AS n
  JOIN square_visit_taxa AS t
    ON t.visit = n.visit AND t.grid = n.grid AND t.resolution_m = n.resolution_m AND t.square = n.square
  JOIN lineage AS l ON l.taxon_id = t.taxon_id
  GROUP BY l.of_taxon, n.visit, n.grid, n.resolution_m, n.square, n.period, n.names HAVING count(*) = n.names
)
SELECT taxon_id, grid, resolution_m, square, period, count(*) AS visits
FROM within GROUP BY taxon_id, grid, resolution_m, square, period;

CREATE OR REPLACE TABLE taxon_coverage AS
SELECT f.taxon_id, f.grid, f.resolution_m, f.square, n.period
FROM (SELECT DISTINCT taxon_id, grid, resolution_m, square FROM taxon_squares) AS f
JOIN naming_visits AS n ON n.grid = f.grid AND n.resolution_m = f.resolution_m AND n.square = f.square
CROSS JOIN rules AS r
LEFT JOIN own_visits AS o
  ON o.taxon_id = f.taxon_id AND o.grid = f.grid AND o.resolution_m = f.resolution_m AND o.square = f.square AND o.period = n.period
WHERE n.visits - coalesce(o.visits, 0) >= r.minimum_visits;
