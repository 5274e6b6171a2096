-- Records read from easting and northing, each with rows beside it in its file that share recorder and locality, or recorder
-- and day, and lie far away.
-- In: placed_records, places, raw_records. Out: projection_mates (record_no, companion_no, longitude, latitude, reach_m, gap_m).
CREATE OR REPLACE TABLE projection_mates AS
WITH projected AS (
  SELECT p.*, lower(trim(r.locality)) AS locality,
    row_number() OVER (PARTITION BY p.file_id ORDER BY p.record_no) AS place_in_file
  FROM placed_records AS p
  JOIN places AS l USING (place_id)
  JOIN raw_records AS r USING (record_no)
  WHERE l.read_from = 'easting and northing' AND p.recorder <> ''
)
SELECT odd.record_no, mate.record_no AS companion_no, mate.longitude, mate.latitude, mate.reach_m, {gap} AS gap_m
FROM projected AS odd
CROSS JOIN (SELECT unnest([-3, -2, -1, 1, 2, 3]) AS step) AS steps
JOIN projected AS mate ON mate.file_id = odd.file_id AND mate.place_in_file = odd.place_in_file + steps.step
WHERE odd.counts AND mate.recorder = odd.recorder AND {gap} > {far_m}
  AND ((mate.locality = odd.locality AND odd.locality <> '') OR (mate.first_day = odd.first_day AND mate.last_day = odd.last_day));
