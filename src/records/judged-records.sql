-- Status and reason of every record, beside its keys. The first reason that applies counts, so that every record has
-- exactly one.
-- In: keyed_records; dictionaries places, dates, names, kinds, kind_castes; taxon_castes (castes a taxon can have).
-- Out: record_keys, with status used, held or not used; reason a code of src/records/reasons.ts.
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

-- Keys alone: what was interpreted stays in the dictionaries, for a row of all of it costs more than the joins.
CREATE OR REPLACE TABLE judged_records AS
SELECT
  r.*,
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
-- Few are, so that a number made from all five finds who may be, and only they are compared in full.
CREATE OR REPLACE TABLE routes AS
SELECT r.record_no, r.source, hash(n.taxon_id, d.first_day, d.last_day, p.visit_place, r.recorder) AS route
FROM judged_records AS r
JOIN names AS n USING (name_id)
JOIN dates AS d USING (date_id)
JOIN places AS p USING (place_id)
JOIN kinds AS k USING (kind_id)
WHERE r.set_aside IS NULL AND k.present AND r.recorder <> '';

CREATE OR REPLACE TABLE likely_routes AS
SELECT r.record_no, r.source, n.taxon_id, d.first_day, d.last_day, p.visit_place, r.recorder, nullif(k.castes, '') AS castes
FROM (SELECT route FROM routes GROUP BY route HAVING min(source) <> max(source))
JOIN routes USING (route)
JOIN judged_records AS r USING (record_no)
JOIN names AS n USING (name_id)
JOIN dates AS d USING (date_id)
JOIN places AS p USING (place_id)
JOIN kinds AS k USING (kind_id);

CREATE OR REPLACE TABLE two_routes AS
SELECT r.record_no
FROM likely_routes AS r
JOIN (
  SELECT taxon_id, first_day, last_day, visit_place, recorder, min_by(source, record_no) AS first_source
  FROM likely_routes
  GROUP BY taxon_id, first_day, last_day, visit_place, recorder
  HAVING min(source) <> max(source) AND min(castes) IS NOT DISTINCT FROM max(castes)
) AS t
  ON t.taxon_id = r.taxon_id AND t.first_day = r.first_day AND t.last_day = r.last_day
  AND t.visit_place = r.visit_place AND t.recorder = r.recorder
WHERE t.first_source <> r.source;

CREATE OR REPLACE TABLE record_keys AS
SELECT
  r.* EXCLUDE (set_aside),
  CASE
    WHEN r.set_aside IN ('impossible_caste', 'contradictory_castes', 'generalised_without_size') THEN 'held'
    WHEN r.set_aside IS NOT NULL OR t.record_no IS NOT NULL THEN 'not used'
    ELSE 'used'
  END AS status,
  CASE
    WHEN r.set_aside IS NOT NULL THEN r.set_aside
    WHEN t.record_no IS NOT NULL THEN 'two_routes'
    WHEN NOT k.present THEN 'not_detected'
    ELSE 'used'
  END AS reason
FROM judged_records AS r
JOIN kinds AS k USING (kind_id)
LEFT JOIN two_routes AS t USING (record_no)
ORDER BY r.record_no;
