-- What each recorder's records of one year came to: what became of them, what they were first to find, and which of the
-- squares they go to lack one visit of being covered.
-- In: records, square_effort, rules (minimum_visits), latest, feedback_year (year). Out: feedback_fates, feedback_firsts,
-- feedback_squares.
CREATE OR REPLACE TABLE feedback_records AS
SELECT r.record_no, r.recorder, r.status, r.reason, r.taxon_id, r.territory, r.grid, r.hectad
FROM records AS r CROSS JOIN feedback_year AS y
WHERE r.recorder <> '' AND r.first_year = y.year AND r.last_year = y.year;

CREATE OR REPLACE TABLE feedback_fates AS
SELECT recorder, status, reason, count(*) AS records FROM feedback_records GROUP BY ALL ORDER BY ALL;

-- A first is the earliest used record of all: of a taxon in a territory, of a taxon in a 10 km square, of anything in one.
CREATE OR REPLACE TABLE feedback_firsts AS
WITH present AS (
  SELECT record_no, first_day, taxon_id, territory, grid, hectad FROM records
  WHERE status = 'used' AND present AND first_day IS NOT NULL AND taxon_id IS NOT NULL
),
firsts AS (
  SELECT 'territory' AS first_of, taxon_id, territory AS place, arg_min(record_no, first_day * 1000000000::BIGINT + record_no) AS record_no
  FROM present GROUP BY taxon_id, territory
  UNION ALL
  SELECT 'taxon', taxon_id, hectad, arg_min(record_no, first_day * 1000000000::BIGINT + record_no)
  FROM present WHERE hectad IS NOT NULL GROUP BY taxon_id, grid, hectad
  UNION ALL
  SELECT 'square', '', hectad, arg_min(record_no, first_day * 1000000000::BIGINT + record_no)
  FROM present WHERE hectad IS NOT NULL GROUP BY grid, hectad
)
SELECT o.recorder, f.first_of, f.taxon_id, f.place
FROM firsts AS f JOIN feedback_records AS o USING (record_no)
ORDER BY ALL;

CREATE OR REPLACE TABLE feedback_squares AS
SELECT DISTINCT o.recorder, o.hectad
FROM feedback_records AS o
JOIN square_effort AS e ON e.grid = o.grid AND e.square = o.hectad AND e.resolution_m = 10000
JOIN latest AS l ON l.period = e.period
CROSS JOIN rules AS u
WHERE o.status = 'used' AND e.visits = u.minimum_visits - 1
ORDER BY ALL;
