-- Used records as the measures need them, and the visits they make.
-- A visit is one place (a named site, a 1 km square, or the record's own square where it is coarser), one day, one recorder
-- or party (without a name, all of that place and day); a record whose date spans more than a day makes no visit.
-- Non-detections make visits and no squares.
-- A sighting's class is that of its source (everyday, mass_event, targeted, lot); it is provisional where its last year is.
-- In: public_records, source_classes (source, class), provisional (year). Out: sightings (one row a used record), visits,
-- visit_squares, square_territories, placing_counts, atlas_totals.
CREATE OR REPLACE TABLE visits AS
SELECT row_number() OVER (ORDER BY visit_place, first_day, recorder) AS visit, *
FROM (
  SELECT visit_place, first_day, recorder, min(period) AS period, min(third) AS third, min(first_year) AS year,
    bool_or(generalised) AS generalised
  FROM public_records
  WHERE status = 'used' AND first_day = last_day AND visit_place <> ''
  GROUP BY visit_place, first_day, recorder
);

CREATE OR REPLACE TABLE sightings AS
SELECT
  r.record_no, r.taxon_id, r.present, r.period, r.third, r.first_year, r.last_year, r.kind_id, r.source,
  r.territory, r.grid, r.hectad, r.tetrad, r.hectad_reason, r.tetrad_reason, r.generalised, r.complete, r.established,
  r.visit_day AS day, c.class, y.year IS NOT NULL AS provisional, v.visit
FROM (SELECT *, CASE WHEN first_day = last_day THEN first_day END AS visit_day FROM public_records WHERE status = 'used') AS r
JOIN source_classes AS c ON c.source = r.source
LEFT JOIN provisional AS y ON y.year = r.last_year
LEFT JOIN visits AS v ON v.visit_place = r.visit_place AND v.first_day = r.visit_day AND v.recorder = r.recorder;

CREATE OR REPLACE TABLE visit_squares AS
SELECT DISTINCT visit, grid, 10000 AS resolution_m, hectad AS square FROM sightings WHERE visit IS NOT NULL AND hectad IS NOT NULL
UNION ALL
SELECT DISTINCT visit, grid, 2000 AS resolution_m, tetrad AS square FROM sightings WHERE visit IS NOT NULL AND tetrad IS NOT NULL;

-- A square that lies in two territories is counted in one of them, always the same.
CREATE OR REPLACE TABLE square_territories AS
SELECT grid, 10000 AS resolution_m, hectad AS square, min(territory) AS territory
FROM sightings WHERE hectad IS NOT NULL GROUP BY grid, hectad
UNION ALL
SELECT grid, 2000 AS resolution_m, tetrad AS square, min(territory) AS territory
FROM sightings WHERE tetrad IS NOT NULL GROUP BY grid, tetrad;

-- What placing did, for the methods page. A laxer rule of half the circle adds a square only where a record has none yet.
CREATE OR REPLACE TABLE placing_counts AS
WITH at_half AS (
  SELECT DISTINCT grid, tetrad_at_half AS tetrad FROM public_records
  WHERE status = 'used' AND present AND tetrad IS NULL AND tetrad_at_half IS NOT NULL
),
held AS (
  SELECT DISTINCT grid, tetrad FROM sightings JOIN at_half USING (grid, tetrad) WHERE present
),
added AS (
  SELECT count(*) AS tetrads FROM (SELECT grid, tetrad FROM at_half EXCEPT SELECT grid, tetrad FROM held)
)
SELECT
  count(*) AS used,
  count(*) FILTER (r.hectad IS NULL) AS without_hectad,
  count(*) FILTER (r.tetrad IS NULL) AS without_tetrad,
  count(*) FILTER (r.tetrad IS NULL AND r.tetrad_at_half IS NOT NULL) AS records_at_half,
  coalesce(any_value(a.tetrads), 0) AS tetrads_at_half,
  count(*) FILTER (r.in_disguise) AS in_disguise,
  count(*) FILTER (r.near_line) AS near_line
FROM public_records AS r CROSS JOIN added AS a
WHERE r.status = 'used' AND r.present;

CREATE OR REPLACE TABLE atlas_totals AS
SELECT count(DISTINCT grid || hectad) AS hectads, count(DISTINCT grid || tetrad) AS tetrads,
  min(first_year) AS first_year, max(last_year) AS last_year
FROM sightings WHERE present;
