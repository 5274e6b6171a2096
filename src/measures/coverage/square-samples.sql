-- What the visits of a square say of how many taxa are there: a sample is a visit that named something in the square, of
-- everyday recording or a mass event (a survey for one taxon and a museum lot are no samples of the group).
-- Counted are taxa: a name that holds another one recorded in that square and period is set aside, for it may be the same;
-- of two groups that overlap and hold nothing recorded there, each counts. Records shown coarser than they are known, and of
-- what is not established, are left out. Span -1 is all dates together, also those of no period.
-- At 2 km only squares and spans that reach the number of visits asked for are kept.
-- In: sightings, visit_lists, closure, richness_rule (minimum_visits), square_territories.
-- Out: square_samples (territory, grid, resolution_m, square, span, visits, observed, once, twice, incidences, singles: taxa
-- with one record). All whole numbers.
CREATE OR REPLACE TEMP TABLE visit_names AS
SELECT s.visit, l.period, s.grid, s.hectad, s.tetrad, s.taxon_id, count(*)::INTEGER AS records
FROM sightings AS s JOIN visit_lists AS l USING (visit)
WHERE s.present AND s.established AND NOT s.generalised AND s.hectad IS NOT NULL AND l.class IN ('everyday', 'mass_event')
GROUP BY s.visit, l.period, s.grid, s.hectad, s.tetrad, s.taxon_id;

CREATE OR REPLACE TEMP TABLE samples AS
WITH named AS (
  SELECT DISTINCT visit, period, grid, hectad, tetrad FROM visit_names
),
by_period AS (
  SELECT grid, 10000 AS resolution_m, hectad AS square, period, count(DISTINCT visit) AS visits
  FROM named GROUP BY grid, hectad, period
  UNION ALL
  SELECT grid, 2000, tetrad, period, count(*) FROM named WHERE tetrad IS NOT NULL GROUP BY grid, tetrad, period
),
by_span AS (
  SELECT grid, resolution_m, square, period AS span, visits FROM by_period WHERE period IS NOT NULL
  UNION ALL
  SELECT grid, resolution_m, square, -1, sum(visits) FROM by_period GROUP BY grid, resolution_m, square
)
SELECT s.* REPLACE (s.visits::INTEGER AS visits) FROM by_span AS s CROSS JOIN richness_rule AS r
WHERE s.resolution_m = 10000 OR s.visits >= r.minimum_visits;

CREATE OR REPLACE TEMP TABLE incidences AS
WITH by_period AS (
  SELECT grid, 10000 AS resolution_m, hectad AS square, period, taxon_id, count(DISTINCT visit) AS visits, sum(records) AS records
  FROM visit_names GROUP BY grid, hectad, period, taxon_id
  UNION ALL
  SELECT n.grid, 2000, n.tetrad, n.period, n.taxon_id, count(*), sum(n.records)
  FROM visit_names AS n
  SEMI JOIN samples AS s ON s.grid = n.grid AND s.square = n.tetrad AND s.resolution_m = 2000
  GROUP BY n.grid, n.tetrad, n.period, n.taxon_id
)
SELECT grid, resolution_m, square, period AS span, taxon_id, visits, records FROM by_period WHERE period IS NOT NULL
UNION ALL
SELECT grid, resolution_m, square, -1, taxon_id, sum(visits), sum(records)
FROM by_period GROUP BY grid, resolution_m, square, taxon_id;

CREATE OR REPLACE TABLE square_samples AS
WITH holding AS (
  SELECT DISTINCT i.grid, i.resolution_m, i.square, i.span, c.counts_for AS taxon_id
  FROM incidences AS i JOIN closure AS c ON c.taxon_id = i.taxon_id AND c.counts_for <> i.taxon_id
),
counted AS (
  SELECT i.grid, i.resolution_m, i.square, i.span,
    count(*)::INTEGER AS observed,
    (count(*) FILTER (i.visits = 1))::INTEGER AS once,
    (count(*) FILTER (i.visits = 2))::INTEGER AS twice,
    sum(i.visits)::INTEGER AS incidences,
    (count(*) FILTER (i.records = 1))::INTEGER AS singles
  FROM incidences AS i
  ANTI JOIN holding AS h
    ON h.grid = i.grid AND h.resolution_m = i.resolution_m AND h.square = i.square AND h.span = i.span AND h.taxon_id = i.taxon_id
  GROUP BY i.grid, i.resolution_m, i.square, i.span
)
SELECT t.territory, s.grid, s.resolution_m, s.square, s.span, s.visits, c.observed, c.once, c.twice, c.incidences, c.singles
FROM samples AS s
JOIN counted AS c ON c.grid = s.grid AND c.resolution_m = s.resolution_m AND c.square = s.square AND c.span = s.span
JOIN square_territories AS t ON t.grid = s.grid AND t.resolution_m = s.resolution_m AND t.square = s.square;

DROP TABLE visit_names;
DROP TABLE samples;
DROP TABLE incidences;
