-- One row a record with everything interpreted, its status and its reason. The first reason that applies counts,
-- so that every record has exactly one.
-- In: keyed_records; dictionaries places, dates, names, kinds, kind_castes; taxon_castes (castes a taxon can have).
-- Out: records, with status used, held or not used; reason a code of src/records/reasons.ts.
CREATE OR REPLACE TABLE repeated_ids AS
SELECT occurrence_id, min(record_no) AS first_record
FROM keyed_records
WHERE occurrence_id IS NOT NULL
GROUP BY occurrence_id
HAVING count(*) > 1;

CREATE OR REPLACE TABLE impossible_castes AS
SELECT DISTINCT n.name_id, c.kind_id, c.caste
FROM kind_castes AS c
CROSS JOIN names AS n
WHERE c.caste <> 'not_stated'
  AND n.taxon_id IN (SELECT taxon_id FROM taxon_castes)
  AND NOT EXISTS (SELECT 1 FROM taxon_castes AS t WHERE t.taxon_id = n.taxon_id AND t.caste = c.caste);

CREATE OR REPLACE TABLE readable_records AS
SELECT
  r.record_no, r.file_id, r.source, r.occurrence_id, r.recorder, r.name_id, r.date_id, r.place_id, r.kind_id,
  n.taxon_id, d.first_day, d.last_day, d.first_year, d.last_year, d.period, d.third,
  p.territory, p.grid, p.hectad, p.hectad_reason, p.tetrad, p.tetrad_reason, p.tetrad_at_half, p.visit_place, p.in_disguise, p.near_line,
  k.present, k.castes,
  CASE
    WHEN i.first_record < r.record_no THEN 'repeated_id'
    WHEN n.refused IS NOT NULL THEN n.refused
    WHEN d.refused IS NOT NULL THEN d.refused
    WHEN p.refused IS NOT NULL THEN p.refused
    WHEN k.refused IS NOT NULL THEN k.refused
    WHEN c.kind_id IS NOT NULL THEN 'impossible_caste'
  END AS set_aside
FROM keyed_records AS r
JOIN names AS n USING (name_id)
JOIN dates AS d USING (date_id)
JOIN places AS p USING (place_id)
JOIN kinds AS k USING (kind_id)
LEFT JOIN repeated_ids AS i USING (occurrence_id)
LEFT JOIN (SELECT DISTINCT name_id, kind_id FROM impossible_castes) AS c USING (name_id, kind_id);

-- The same record by two routes: same taxon, days, place of visit, recorder and castes, in two sources.
-- Castes left unstated on one route do not part them; without a recorder's name nothing is joined.
CREATE OR REPLACE TABLE two_routes AS
SELECT taxon_id, first_day, last_day, visit_place, recorder, min(record_no) AS first_record, min_by(source, record_no) AS first_source
FROM readable_records
WHERE set_aside IS NULL AND present AND recorder <> ''
GROUP BY taxon_id, first_day, last_day, visit_place, recorder
HAVING count(DISTINCT source) > 1 AND count(DISTINCT nullif(castes, '')) <= 1;

CREATE OR REPLACE TABLE records AS
SELECT
  r.* EXCLUDE (set_aside, route_recorder),
  CASE
    WHEN r.set_aside IN ('impossible_caste', 'contradictory_castes') THEN 'held'
    WHEN r.set_aside IS NOT NULL OR t.first_source <> r.source THEN 'not used'
    ELSE 'used'
  END AS status,
  CASE
    WHEN r.set_aside IS NOT NULL THEN r.set_aside
    WHEN t.first_source <> r.source THEN 'two_routes'
    WHEN NOT r.present THEN 'not_detected'
    ELSE 'used'
  END AS reason
FROM (SELECT *, CASE WHEN set_aside IS NULL AND present THEN recorder END AS route_recorder FROM readable_records) AS r
LEFT JOIN two_routes AS t
  ON t.taxon_id = r.taxon_id AND t.first_day = r.first_day AND t.last_day = r.last_day
  AND t.visit_place = r.visit_place AND t.recorder = r.route_recorder
ORDER BY r.record_no;
