-- Taxa of each square: the names recorded there, by period, for lists and for the fewest taxa that explain them.
-- In: sightings. Out: square_names (grid, resolution_m, square, period, taxon_id, records, first_year, last_year), square_years.
CREATE OR REPLACE TABLE square_names AS
SELECT grid, 10000 AS resolution_m, hectad AS square, period, taxon_id, count(*) AS records, min(coalesce(first_year, last_year)) AS first_year, max(last_year) AS last_year
FROM sightings WHERE present AND hectad IS NOT NULL GROUP BY grid, hectad, period, taxon_id
UNION ALL
SELECT grid, 2000 AS resolution_m, tetrad AS square, period, taxon_id, count(*) AS records, min(coalesce(first_year, last_year)) AS first_year, max(last_year) AS last_year
FROM sightings WHERE present AND tetrad IS NOT NULL GROUP BY grid, tetrad, period, taxon_id;

CREATE OR REPLACE TABLE square_years AS
SELECT grid, hectad AS square, first_year AS year, count(*) AS records, count(DISTINCT visit) AS visits
FROM sightings WHERE hectad IS NOT NULL AND first_year = last_year GROUP BY grid, hectad, first_year;
