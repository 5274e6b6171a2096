-- Which of the errors put into the demonstration leave a trace that somebody who has only the records could find. Decided
-- from what was truly seen and from what the spoilt row says, never from what a check found:
--
-- by itself     the text cannot be right wherever and whenever the bee was: 30 February, a year to come, a name nobody
--               gave, a cuckoo's worker, exchanged coordinates, a reference of the grid across the sea, an uncertainty of 0,
--               a place said to 10 m that is the middle of a 10 km square, a cell too many, an area 40 km from the place
-- nowhere       the spoilt place is outside the atlas or in a square without land
-- company       another row of the same outing (recorder, true day, true 2 km square, at most 40 rows away) stands in the
--               file, sound in its place and date, and the spoilt row lies more than 1 km from it, or on another day
-- habit         all other rows of the recorder in the file, three at least, have one and the same place
-- heap          three rows of the file at least were spoilt to the same day of the year
-- out of range  the species it names never lived within 100 km of where the row puts it
-- out of season no true row of the species it names, of the caste it states, falls within 10 days of its day of the year
-- no such bee   a look-alike named where, in that epoch, it lived neither in the square nor in one of its eight neighbours
--
-- Remarks that a careless program would run are no errors of the record. What leaves none of these traces nobody can find:
-- a look-alike named where it lives and flies, a swapped or moved row that stands alone.
-- In: known_errors, true_rows, true_squares, hectad_places (territory, hectad, x, y in squares of 10 km), raw_records,
-- record_keys, the dictionaries, truly_land (grid, hectad, letters). Out: traced_errors (record_no, kind, trace; empty for none).
CREATE OR REPLACE TABLE spoilt AS
SELECT f.first_number + e.row::INTEGER AS record_no, e.file, e.row::INTEGER AS row, e.kind
FROM known_errors AS e JOIN files AS f ON f.file = 'records/' || e.file;

CREATE OR REPLACE TABLE true_records AS
SELECT
  f.first_number + t.row::INTEGER AS record_no, f.file_id, t.taxon_id, t.castes, t.territory, t.hectad, t.tetrad, t.date,
  coalesce(lower(trim(regexp_replace(r."recordedBy", '[^A-Za-z0-9]+', ' ', 'g'))), '') AS recorder,
  CASE WHEN year(t.date::DATE) < 1990 THEN 'before 1990' WHEN year(t.date::DATE) < 2006 THEN '1990–2005' ELSE '2006–2024' END AS epoch
FROM true_rows AS t
JOIN files AS f ON f.file = 'records/' || t.file
LEFT JOIN raw_records AS r ON r.record_no = f.first_number + t.row::INTEGER;

-- What the spoilt rows say, as read: the places, days, taxa and castes they name.
CREATE OR REPLACE TABLE said AS
SELECT s.record_no, s.kind, s.file, t.file_id, t.recorder, t.taxon_id AS true_taxon, t.tetrad AS true_tetrad, t.date AS true_date, t.epoch,
  t.territory AS true_territory, t.hectad AS true_hectad,
  n.taxon_id, d.first_day, d.last_day, k.castes, p.territory, p.grid, p.hectad, p.tetrad, p.longitude, p.latitude,
  coalesce(p.radius_m, p.size_m / sqrt(2)) AS reach_m
FROM spoilt AS s
JOIN true_records AS t USING (record_no)
LEFT JOIN record_keys AS r USING (record_no)
LEFT JOIN names AS n USING (name_id)
LEFT JOIN dates AS d USING (date_id)
LEFT JOIN places AS p USING (place_id)
LEFT JOIN kinds AS k USING (kind_id);

CREATE OR REPLACE TABLE flown AS
SELECT DISTINCT taxon_id, split_part(caste, ' ', 2) AS caste, dayofyear(date::DATE) AS day
FROM (SELECT taxon_id, date, unnest(string_split(castes, ' | ')) AS caste FROM true_records WHERE castes <> '');

CREATE OR REPLACE TABLE off_season AS
SELECT s.record_no
FROM said AS s
WHERE s.first_day = s.last_day AND s.taxon_id IN (SELECT taxon_id FROM flown)
  AND NOT EXISTS (
    SELECT 1 FROM flown AS f
    WHERE f.taxon_id = s.taxon_id
      AND (s.castes NOT IN (SELECT caste FROM flown) OR f.caste = s.castes)
      AND least(abs(f.day - dayofyear(DATE '1970-01-01' + s.first_day)), 366 - abs(f.day - dayofyear(DATE '1970-01-01' + s.first_day))) <= 10);

-- Other rows of the outing that are sound in place and date.
CREATE OR REPLACE TABLE company AS
SELECT s.record_no, other.record_no AS other_no
FROM said AS s
JOIN true_records AS other ON other.file_id = s.file_id AND other.recorder = s.recorder AND s.recorder <> ''
  AND other.date = s.true_date AND other.tetrad = s.true_tetrad
  AND abs(other.record_no - s.record_no) <= 40 AND other.record_no <> s.record_no
WHERE other.record_no NOT IN (
  SELECT record_no FROM spoilt
  WHERE kind NOT IN ('look-alike', 'misspelt-name', 'impossible-caste', 'wrong-area', 'html-in-remarks', 'formula-in-remarks', 'emoji-in-remarks', 'ragged-row'));

CREATE OR REPLACE TABLE apart AS
SELECT c.record_no,
  bool_or(s.longitude IS NOT NULL AND p.longitude IS NOT NULL AND {gap} > 1000) AS in_place,
  bool_or(s.first_day IS NOT NULL AND (s.last_day < d.first_day OR s.first_day > d.last_day)) AS in_day
FROM company AS c
JOIN said AS s USING (record_no)
JOIN record_keys AS r ON r.record_no = c.other_no
JOIN dates AS d USING (date_id)
JOIN (SELECT *, coalesce(radius_m, size_m / sqrt(2)) AS reach_m FROM places) AS p ON p.place_id = r.place_id
GROUP BY c.record_no;

CREATE OR REPLACE TABLE habits AS
SELECT s.record_no
FROM said AS s
JOIN true_records AS other ON other.file_id = s.file_id AND other.recorder = s.recorder AND other.record_no <> s.record_no
JOIN record_keys AS r ON r.record_no = other.record_no
JOIN places AS p USING (place_id)
WHERE s.recorder <> '' AND other.record_no NOT IN (SELECT record_no FROM spoilt)
GROUP BY s.record_no
HAVING count(*) >= 3 AND count(DISTINCT p.longitude || ' ' || p.latitude) = 1;

CREATE OR REPLACE TABLE heaps AS
SELECT file, kind FROM said WHERE kind = 'default-date' GROUP BY file, kind HAVING count(*) >= 3;

-- Distance in squares to the nearest true one of the species the row names: in the epoch for look-alikes, ever for the rest.
CREATE OR REPLACE TABLE range_gaps AS
SELECT s.record_no,
  min(greatest(abs(own.x - h.x), abs(own.y - h.y))) AS squares,
  min(greatest(abs(own.x - h.x), abs(own.y - h.y))) FILTER (q.epoch = s.epoch) AS squares_in_epoch
FROM said AS s
JOIN hectad_places AS own ON own.territory = s.territory AND own.hectad = s.hectad
JOIN true_squares AS q ON q.taxon_id = s.taxon_id AND q.territory = s.territory
JOIN hectad_places AS h ON h.territory = q.territory AND h.hectad = q.hectad
GROUP BY s.record_no;

CREATE OR REPLACE TABLE traced_errors AS
SELECT
  s.record_no, s.kind,
  CASE
    WHEN s.kind LIKE '%-in-remarks' THEN ''
    WHEN s.kind IN ('30-february', 'future-year', 'misspelt-name', 'impossible-caste', 'swapped-coordinates',
      'reference-of-other-grid', 'zero-uncertainty', 'hectad-as-point', 'ragged-row', 'wrong-area') THEN 'by itself'
    WHEN s.kind IN ('longitude-sign-lost', 'transposed-digits', 'wrong-100-km-letters', 'other-coordinate-system') THEN CASE
      WHEN s.longitude IS NULL OR (s.hectad IS NOT NULL AND l.hectad IS NULL)
        OR (s.tetrad IS NOT NULL AND NOT contains(l.letters, right(s.tetrad, 1))) THEN 'nowhere'
      WHEN a.in_place THEN 'company'
      WHEN h.record_no IS NOT NULL THEN 'habit'
      WHEN s.taxon_id IN (SELECT taxon_id FROM true_squares) AND s.hectad IS NOT NULL AND coalesce(g.squares, 99) > 10 THEN 'out of range'
      ELSE '' END
    WHEN s.kind IN ('day-and-month-swapped', 'default-date') THEN CASE
      WHEN a.in_day THEN 'company'
      WHEN s.kind = 'default-date' AND s.file IN (SELECT file FROM heaps) THEN 'heap'
      WHEN o.record_no IS NOT NULL THEN 'out of season'
      ELSE '' END
    WHEN s.kind = 'look-alike' THEN CASE
      WHEN s.castes LIKE '%worker%' AND s.taxon_id NOT IN (SELECT taxon_id FROM flown WHERE caste = 'worker') THEN 'by itself'
      WHEN o.record_no IS NOT NULL THEN 'out of season'
      WHEN s.taxon_id IN (SELECT taxon_id FROM true_squares) AND s.hectad IS NOT NULL AND coalesce(g.squares_in_epoch, 99) > 1 THEN 'no such bee'
      ELSE '' END
  END AS trace
FROM said AS s
LEFT JOIN truly_land AS l ON l.grid = s.grid AND l.hectad = s.hectad
LEFT JOIN apart AS a USING (record_no)
LEFT JOIN habits AS h USING (record_no)
LEFT JOIN off_season AS o USING (record_no)
LEFT JOIN range_gaps AS g USING (record_no);
