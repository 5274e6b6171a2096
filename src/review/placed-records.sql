-- Records with a day and a place, each with the point and the reach of its place: half the diagonal of a square, the radius of
-- a circle. Those that are not used stand here too, for a list's other rows tell where it was made.
-- In: record_keys, dates, places. Out: placed_records.
CREATE OR REPLACE TABLE placed_records AS
SELECT
  r.record_no, r.file_id, r.source, r.recorder, r.place_id, d.first_day, d.last_day, p.longitude, p.latitude,
  coalesce(p.radius_m, p.size_m / sqrt(2)) AS reach_m,
  r.status IN ('used', 'held') AS counts
FROM record_keys AS r
JOIN dates AS d USING (date_id)
JOIN places AS p USING (place_id)
WHERE d.first_day IS NOT NULL AND p.longitude IS NOT NULL;
