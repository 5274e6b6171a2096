-- What the visits of a square say of how many taxa are there: a sample is a visit that named something in the square, of
-- everyday recording or a mass event (a survey for one taxon and a museum lot are no samples of the group).
-- Counted are taxa: a name that holds another one recorded in that square and period is set aside, for it may be the same;
-- of two groups that overlap and hold nothing recorded there, each counts. Records shown coarser than they are known, and of
-- what is not established, are left out. Span -1 is all dates together, also those of no period.
-- At 2 km only squares and spans that reach the number of visits asked for are kept. Squares and taxa go by number, which
-- is quicker than by name over millions of records.
-- In: sightings, visit_lists, closure, richness_rule (minimum_visits), square_territories.
-- Out: square_samples (territory, grid, resolution_m, square, span, visits, observed, once, twice, incidences, singles: taxa
-- with one record). All whole numbers.
CREATE OR REPLACE TEMP TABLE sample_squares AS
SELECT row_number() OVER (ORDER BY grid, resolution_m, square)::INTEGER AS square_no, territory, grid, resolution_m, square
FROM square_territories;

CREATE OR REPLACE TEMP TABLE sample_taxa AS
SELECT row_number() OVER (ORDER BY taxon_id)::INTEGER AS taxon_no, taxon_id FROM (SELECT DISTINCT taxon_id FROM closure);

CREATE OR REPLACE TEMP TABLE visit_names AS
SELECT s.visit, s.period, h.square_no AS hectad, t.square_no AS tetrad, x.taxon_no, count(*)::INTEGER AS records
FROM sightings AS s
JOIN (SELECT visit FROM visit_lists WHERE class IN ('everyday', 'mass_event')) AS l ON l.visit = s.visit
JOIN (SELECT * FROM sample_squares WHERE resolution_m = 10000) AS h ON h.square = s.hectad AND h.grid = s.grid
LEFT JOIN (SELECT * FROM sample_squares WHERE resolution_m = 2000) AS t ON t.square = s.tetrad AND t.grid = s.grid
JOIN sample_taxa AS x ON x.taxon_id = s.taxon_id
WHERE s.present AND s.established AND NOT s.generalised
GROUP BY s.visit, s.period, h.square_no, t.square_no, x.taxon_no;

CREATE OR REPLACE TEMP TABLE visited_places AS
SELECT visit, period, hectad, tetrad FROM visit_names GROUP BY visit, period, hectad, tetrad;

CREATE OR REPLACE TEMP TABLE samples AS
WITH by_period AS (
  SELECT hectad AS square_no, period, count(DISTINCT visit) AS visits FROM visited_places GROUP BY hectad, period
  UNION ALL
  SELECT tetrad, period, count(*) FROM visited_places WHERE tetrad IS NOT NULL GROUP BY tetrad, period
),
by_span AS (
  SELECT square_no, period AS span, visits FROM by_period WHERE period IS NOT NULL
  UNION ALL
  SELECT square_no, -1, sum(visits) FROM by_period GROUP BY square_no
)
SELECT s.square_no, s.span, s.visits::INTEGER AS visits
FROM by_span AS s JOIN sample_squares AS q USING (square_no) CROSS JOIN richness_rule AS r
WHERE q.resolution_m = 10000 OR s.visits >= r.minimum_visits;

-- A name has a row for each 2 km square of its visit: a visit that went to several of one 10 km square is one incidence.
CREATE OR REPLACE TEMP TABLE incidences AS
WITH several AS (
  SELECT visit, hectad FROM visited_places GROUP BY visit, hectad HAVING count(*) > 1
),
repeated AS (
  SELECT hectad, period, taxon_no, sum(times - 1) AS surplus
  FROM (
    SELECT n.visit, n.hectad, n.period, n.taxon_no, count(*) AS times
    FROM visit_names AS n SEMI JOIN several AS s ON s.visit = n.visit AND s.hectad = n.hectad
    GROUP BY n.visit, n.hectad, n.period, n.taxon_no
  )
  GROUP BY hectad, period, taxon_no
),
by_hectad AS (
  SELECT hectad, period, taxon_no, count(*) AS times, sum(records) AS records FROM visit_names GROUP BY hectad, period, taxon_no
),
by_period AS (
  SELECT h.hectad AS square_no, h.period, h.taxon_no, h.times - coalesce(r.surplus, 0) AS visits, h.records
  FROM by_hectad AS h
  LEFT JOIN repeated AS r ON r.hectad = h.hectad AND r.period IS NOT DISTINCT FROM h.period AND r.taxon_no = h.taxon_no
  UNION ALL
  SELECT n.tetrad, n.period, n.taxon_no, count(*), sum(n.records)
  FROM visit_names AS n SEMI JOIN samples AS s ON s.square_no = n.tetrad
  GROUP BY n.tetrad, n.period, n.taxon_no
)
SELECT square_no, period AS span, taxon_no, visits, records FROM by_period WHERE period IS NOT NULL
UNION ALL
SELECT square_no, -1, taxon_no, sum(visits), sum(records) FROM by_period GROUP BY square_no, taxon_no;

CREATE OR REPLACE TABLE square_samples AS
WITH holds AS (
  SELECT below.taxon_no, above.taxon_no AS holder
  FROM closure AS c
  JOIN sample_taxa AS below ON below.taxon_id = c.taxon_id
  JOIN sample_taxa AS above ON above.taxon_id = c.counts_for
  WHERE c.taxon_id <> c.counts_for
),
holding AS (
  SELECT DISTINCT i.square_no, i.span, h.holder FROM incidences AS i JOIN holds AS h USING (taxon_no)
),
counted AS (
  SELECT i.square_no, i.span,
    count(*)::INTEGER AS observed,
    (count(*) FILTER (i.visits = 1))::INTEGER AS once,
    (count(*) FILTER (i.visits = 2))::INTEGER AS twice,
    sum(i.visits)::INTEGER AS incidences,
    (count(*) FILTER (i.records = 1))::INTEGER AS singles
  FROM incidences AS i
  ANTI JOIN holding AS h ON h.square_no = i.square_no AND h.span = i.span AND h.holder = i.taxon_no
  GROUP BY i.square_no, i.span
)
SELECT q.territory, q.grid, q.resolution_m, q.square, s.span, s.visits, c.observed, c.once, c.twice, c.incidences, c.singles
FROM samples AS s
JOIN counted AS c ON c.square_no = s.square_no AND c.span = s.span
JOIN sample_squares AS q ON q.square_no = s.square_no;

DROP TABLE sample_squares;
DROP TABLE sample_taxa;
DROP TABLE visit_names;
DROP TABLE visited_places;
DROP TABLE samples;
DROP TABLE incidences;
