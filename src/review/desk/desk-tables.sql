-- What the desk draws beside each record, counted once when it is opened, from the records in use: a taxon's 10 km squares
-- and its season, both with the records of all taxa within it.
-- In: worklist, record_texts, records, places, kind_castes, desk_closure (taxon_id, counts_for), desk_periods (period, part).
-- Out: desk_texts, desk_records, desk_questions, desk_squares, desk_visited, desk_season, desk_effort.
CREATE OR REPLACE TABLE desk_texts AS
SELECT t.* FROM record_texts AS t JOIN (SELECT DISTINCT record_no FROM worklist) USING (record_no);

CREATE OR REPLACE TABLE desk_records AS
SELECT r.*, p.longitude, p.latitude, p.radius_m, p.size_m, p.read_from, p.radius_from
FROM records AS r
JOIN (SELECT DISTINCT record_no FROM worklist) USING (record_no)
JOIN places AS p USING (place_id);

CREATE OR REPLACE TABLE desk_squares AS
SELECT c.counts_for AS taxon_id, r.grid, r.territory, r.hectad, count(*) AS records,
  bool_or(p.part = 'earlier') AS earlier, bool_or(p.part = 'recent') AS recent
FROM records AS r
JOIN desk_closure AS c USING (taxon_id)
LEFT JOIN desk_periods AS p USING (period)
WHERE r.status = 'used' AND r.present AND r.hectad IS NOT NULL
GROUP BY ALL;

CREATE OR REPLACE TABLE desk_visited AS
SELECT DISTINCT grid, territory, hectad FROM records WHERE status = 'used' AND hectad IS NOT NULL;

CREATE OR REPLACE TABLE desk_season AS
SELECT c.counts_for AS taxon_id, k.caste, r.third, count(*) AS records
FROM records AS r
JOIN desk_closure AS c USING (taxon_id)
JOIN kind_castes AS k USING (kind_id)
WHERE r.status = 'used' AND r.present AND r.third IS NOT NULL
GROUP BY ALL;

CREATE OR REPLACE TABLE desk_effort AS
SELECT third, count(*) AS visits
FROM (SELECT DISTINCT visit_place, first_day, last_day, recorder, third FROM records WHERE status = 'used' AND third IS NOT NULL)
GROUP BY third;

CREATE OR REPLACE TABLE desk_questions AS
SELECT f.record_no, f.check_name, f.severity, f.field, f.value, f.message, f.way_out, f.proposal
FROM record_findings AS f
JOIN (SELECT DISTINCT record_no FROM worklist) USING (record_no);
