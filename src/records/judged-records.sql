-- What keeps a record from being used by itself. The first reason that applies counts.
-- In: keyed_records; dictionaries places, dates, names, kinds, kind_castes; taxon_castes (castes a taxon can have).
-- Out: judged_records, with set_aside a code of src/records/reasons.ts or NULL; impossible_castes.
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
LEFT JOIN (SELECT DISTINCT name_id, kind_id FROM impossible_castes) AS c USING (name_id, kind_id);
