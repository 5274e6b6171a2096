-- The one record of a recorder's day that lies further from all others than a day's travel, where the others lie together.
-- Only records that stand alone on days with several others are measured, so that no day is joined to itself.
-- In: placed_records, record_texts, review_findings. Out: findings of far_in_a_day.
WITH days AS (
  SELECT recorder, first_day FROM placed_records
  WHERE recorder <> '' AND first_day = last_day
  GROUP BY recorder, first_day
  HAVING count(*) > {others} AND max(latitude) - min(latitude) + (max(longitude) - min(longitude)) * cos(radians(60)) > {far_m} / 111195.0 / 2
),
day_places AS (
  SELECT p.recorder, p.first_day, p.longitude, p.latitude, min(p.reach_m) AS reach_m, count(*) AS records, min(p.record_no) AS record_no, bool_or(p.counts) AS counts
  FROM placed_records AS p JOIN days AS d ON d.recorder = p.recorder AND d.first_day = p.first_day
  WHERE p.first_day = p.last_day
  GROUP BY p.recorder, p.first_day, p.longitude, p.latitude
),
few AS (
  SELECT recorder, first_day FROM day_places GROUP BY recorder, first_day HAVING count(*) <= {most_places}
),
measured AS (
  SELECT odd.record_no, odd.recorder, odd.first_day, min({gap}) AS nearest_m, max({gap}) AS furthest_m, sum(mate.records)::INTEGER AS others
  FROM day_places AS odd
  JOIN few ON few.recorder = odd.recorder AND few.first_day = odd.first_day
  JOIN day_places AS mate ON mate.recorder = odd.recorder AND mate.first_day = odd.first_day AND mate.record_no <> odd.record_no
  WHERE odd.records = 1 AND odd.counts
  GROUP BY odd.record_no, odd.recorder, odd.first_day
)
SELECT
  m.record_no, '' AS field, t.said_place AS value, m.recorder || ', ' || t.said_date AS subject,
  'lies ' || round(m.nearest_m / 1000)::INTEGER || ' km from the ' || m.others || ' other records of this recorder on that day, which lie together' AS message,
  'ask which day or place is right; a journey, or a second person of the same name, explains it too' AS way_out,
  '' AS proposal
FROM measured AS m JOIN record_texts AS t USING (record_no)
WHERE m.nearest_m > {far_m} AND m.furthest_m - m.nearest_m < {far_m} / 5 AND m.others >= {others}
  AND m.record_no NOT IN (SELECT record_no FROM review_findings WHERE check_name IN ('place_slip', 'odd_row_in_list', 'projection_offset'))
