-- Squares of each taxon: records, visits, first and last year, by period. A record counts for its taxon and for every
-- aggregate above it. Period NULL gathers records that lie inside no period.
-- A record known only to be before a year has that year for its first. A record is settled that is established and of no
-- provisional year: only such make a range, a gain or a loss.
-- In: sightings, square_territories, closure (taxon_id counts for counts_for). Out: square_sightings, taxon_squares
-- (settled, unsettled: whether it has a record of that kind).
CREATE OR REPLACE TABLE square_sightings AS
SELECT c.counts_for AS taxon_id, s.grid, 10000 AS resolution_m, s.hectad AS square, s.period, s.visit, coalesce(s.first_year, s.last_year) AS first_year, s.last_year,
  s.established, s.established AND NOT s.provisional AS settled
FROM sightings AS s JOIN closure AS c USING (taxon_id)
WHERE s.present AND s.hectad IS NOT NULL
UNION ALL
SELECT c.counts_for AS taxon_id, s.grid, 2000 AS resolution_m, s.tetrad AS square, s.period, s.visit, coalesce(s.first_year, s.last_year) AS first_year, s.last_year,
  s.established, s.established AND NOT s.provisional AS settled
FROM sightings AS s JOIN closure AS c USING (taxon_id)
WHERE s.present AND s.tetrad IS NOT NULL;

CREATE OR REPLACE TABLE taxon_squares AS
SELECT s.taxon_id, t.territory, s.grid, s.resolution_m, s.square, s.period,
  count(*) AS records, count(DISTINCT s.visit) AS visits, min(s.first_year) AS first_year, max(s.last_year) AS last_year,
  bool_or(s.settled) AS settled, bool_or(NOT s.settled) AS unsettled
FROM square_sightings AS s
JOIN square_territories AS t ON t.grid = s.grid AND t.resolution_m = s.resolution_m AND t.square = s.square
GROUP BY s.taxon_id, t.territory, s.grid, s.resolution_m, s.square, s.period;
