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

-- Only what judging needs: the wide columns are brought in once, at the end. A record that can have come by two routes
-- keeps its recorder; joins go by equality alone, which is many times faster than with further conditions.
CREATE OR REPLACE TABLE judged_records AS
SELECT
  * EXCLUDE (recorder, present),
  CASE WHEN set_aside IS NULL AND present AND recorder <> '' THEN recorder END AS route_recorder
FROM (
  SELECT
    r.record_no, r.source, r.recorder, n.taxon_id, d.first_day, d.last_day, p.visit_place, k.present, nullif(k.castes, '') AS castes,
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
  LEFT JOIN (SELECT DISTINCT name_id, kind_id FROM impossible_castes) AS c USING (name_id, kind_id)
);

-- The same record by two routes: same taxon, days, place of visit, recorder and castes, in two sources.
-- Castes left unstated on one route do not part them; without a recorder's name nothing is joined.
CREATE OR REPLACE TABLE two_routes AS
SELECT taxon_id, first_day, last_day, visit_place, route_recorder, min_by(source, record_no) AS first_source
FROM judged_records
WHERE route_recorder IS NOT NULL
GROUP BY taxon_id, first_day, last_day, visit_place, route_recorder
HAVING min(source) <> max(source) AND min(castes) IS NOT DISTINCT FROM max(castes);

CREATE OR REPLACE TABLE records AS
SELECT
  r.record_no, r.file_id, r.source, r.occurrence_id, r.recorder, r.name_id, r.date_id, r.place_id, r.kind_id,
  s.taxon_id, d.first_day, d.last_day, d.first_year, d.last_year, d.period, d.third,
  p.territory, p.grid, p.hectad, p.hectad_reason, p.tetrad, p.tetrad_reason, p.tetrad_at_half, p.visit_place, p.in_disguise, p.near_line,
  k.present, k.castes,
  CASE
    WHEN s.set_aside IN ('impossible_caste', 'contradictory_castes') THEN 'held'
    WHEN s.set_aside IS NOT NULL OR t.first_source <> r.source THEN 'not used'
    ELSE 'used'
  END AS status,
  CASE
    WHEN s.set_aside IS NOT NULL THEN s.set_aside
    WHEN t.first_source <> r.source THEN 'two_routes'
    WHEN NOT k.present THEN 'not_detected'
    ELSE 'used'
  END AS reason
FROM keyed_records AS r
JOIN judged_records AS s USING (record_no)
JOIN dates AS d USING (date_id)
JOIN places AS p USING (place_id)
JOIN kinds AS k USING (kind_id)
LEFT JOIN two_routes AS t
  ON t.taxon_id = s.taxon_id AND t.first_day = s.first_day AND t.last_day = s.last_day
  AND t.visit_place = s.visit_place AND t.route_recorder = s.route_recorder
ORDER BY r.record_no;
