-- Squares of each taxon: records, visits, first and last year, by period. A record counts for its taxon and for every
-- aggregate above it. Period NULL gathers records that lie inside no period.
-- In: sightings, closure (taxon_id counts for counts_for). Out: taxon_squares, taxon_squares_ever.
CREATE OR REPLACE TABLE square_sightings AS
SELECT s.record_no, c.counts_for AS taxon_id, s.territory, s.grid, 10000 AS resolution_m, s.hectad AS square, s.period, s.visit, s.first_year, s.last_year
FROM sightings AS s JOIN closure AS c USING (taxon_id)
WHERE s.present AND s.hectad IS NOT NULL
UNION ALL
SELECT s.record_no, c.counts_for AS taxon_id, s.territory, s.grid, 2000 AS resolution_m, s.tetrad AS square, s.period, s.visit, s.first_year, s.last_year
FROM sightings AS s JOIN closure AS c USING (taxon_id)
WHERE s.present AND s.tetrad IS NOT NULL;

CREATE OR REPLACE TABLE taxon_squares AS
SELECT taxon_id, any_value(territory) AS territory, grid, resolution_m, square, period,
  count(*) AS records, count(DISTINCT visit) AS visits, min(first_year) AS first_year, max(last_year) AS last_year
FROM square_sightings
GROUP BY taxon_id, grid, resolution_m, square, period;

CREATE OR REPLACE TABLE taxon_squares_ever AS
SELECT taxon_id, any_value(territory) AS territory, grid, resolution_m, square,
  sum(records)::BIGINT AS records, min(first_year) AS first_year, max(last_year) AS last_year
FROM taxon_squares
GROUP BY taxon_id, grid, resolution_m, square;
