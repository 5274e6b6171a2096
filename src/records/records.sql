-- Every record with what was interpreted of it: its keys joined to the dictionaries.
-- Until the review has looked at them, their status is the one interpreting gave.
-- In: record_keys; dictionaries places, dates, names, kinds. Out: the views interpreted_records and records.
CREATE OR REPLACE VIEW interpreted_records AS
SELECT
  r.record_no, r.file_id, r.source, r.occurrence_id, r.recorder, r.name_id, r.date_id, r.place_id, r.kind_id,
  n.taxon_id, d.first_day, d.last_day, d.first_year, d.last_year, d.period, d.third,
  p.territory, p.grid, p.hectad, p.hectad_reason, p.tetrad, p.tetrad_reason, p.tetrad_at_half, p.visit_place,
  p.in_disguise, p.near_line, k.present, k.castes, k.complete, k.established, r.status, r.reason
FROM record_keys AS r
JOIN names AS n USING (name_id)
JOIN dates AS d USING (date_id)
JOIN places AS p USING (place_id)
JOIN kinds AS k USING (kind_id);

CREATE OR REPLACE VIEW records AS SELECT * FROM interpreted_records;
