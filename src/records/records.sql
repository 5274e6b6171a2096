-- Every record with what was interpreted of it: its keys joined to the dictionaries.
-- In: record_keys; dictionaries places, dates, names, kinds. Out: the view records.
CREATE OR REPLACE VIEW records AS
SELECT
  r.record_no, r.file_id, r.source, r.occurrence_id, r.recorder, r.name_id, r.date_id, r.place_id, r.kind_id,
  n.taxon_id, d.first_day, d.last_day, d.first_year, d.last_year, d.period, d.third,
  p.territory, p.grid, p.hectad, p.hectad_reason, p.tetrad, p.tetrad_reason, p.tetrad_at_half, p.visit_place,
  p.in_disguise, p.near_line, k.present, k.castes, r.status, r.reason
FROM record_keys AS r
JOIN names AS n USING (name_id)
JOIN dates AS d USING (date_id)
JOIN places AS p USING (place_id)
JOIN kinds AS k USING (kind_id);
