-- One question a point that many recorders gave on many days: asked of its first record, for the answer is about the site. Points
-- that sites.csv knows are as uncertain as their site and are not among these.
-- In: placed_records, places, record_texts. Out: findings of named_site_point.
WITH points AS (
  SELECT r.longitude, r.latitude, min(r.record_no) FILTER (r.counts) AS record_no, count(*) AS records,
    count(DISTINCT r.first_day) AS days, count(DISTINCT r.recorder) AS recorders
  FROM placed_records AS r
  JOIN places AS p USING (place_id)
  WHERE r.recorder <> '' AND (p.size_m <= 100 OR (p.size_m IS NULL AND p.radius_m <= {finest_m}))
  GROUP BY r.longitude, r.latitude
)
SELECT
  s.record_no, 'locality' AS field, t.locality AS value,
  'point ' || round(s.latitude, 5) || ', ' || round(s.longitude, 5) AS subject,
  s.records || ' records of ' || s.recorders || ' recorders on ' || s.days || ' days have exactly this point; it may stand for a whole site' AS message,
  'where it does, add it to sites.csv with how far the site reaches' AS way_out,
  '' AS proposal
FROM points AS s JOIN record_texts AS t USING (record_no)
WHERE s.records >= {records} AND s.days >= {days} AND s.recorders >= {recorders}
