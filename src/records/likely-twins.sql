-- Records that may have come by two routes: used ones with one taxon, days and recorder in two sources. Without a
-- recorder's name nothing is joined. Few are, so that a number made of the four finds who may be.
-- In: judged_records, twins, the dictionaries, raw_records. Out: likely_twins.
CREATE OR REPLACE TABLE routes AS
SELECT r.record_no, r.source, hash(n.taxon_id, d.first_day, d.last_day, r.recorder) AS route
FROM judged_records AS r
JOIN names AS n USING (name_id)
JOIN dates AS d USING (date_id)
JOIN kinds AS k USING (kind_id)
WHERE r.set_aside IS NULL AND k.present AND r.recorder <> '';

CREATE OR REPLACE TABLE likely_twins AS
SELECT
  r.record_no, r.source, n.taxon_id, d.first_day, d.last_day, r.recorder, p.visit_place, p.tetrad, p.hectad,
  nullif(k.castes, '') AS castes, nullif(t."catalogNumber", '') AS catalog_number
FROM (SELECT route FROM routes GROUP BY route HAVING min(source) <> max(source))
JOIN routes USING (route)
JOIN judged_records AS r USING (record_no)
JOIN names AS n USING (name_id)
JOIN dates AS d USING (date_id)
JOIN places AS p USING (place_id)
JOIN kinds AS k USING (kind_id)
JOIN raw_records AS t USING (record_no)
WHERE r.record_no NOT IN (SELECT record_no FROM twins);
