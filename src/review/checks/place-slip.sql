-- One question a record whose place, with one slip undone, lies where it would be looked for.
-- In: odd_places, slips, record_texts. Out: findings of place_slip.
SELECT
  o.record_no,
  CASE WHEN t."gridReference" <> '' THEN 'gridReference' WHEN t."decimalLatitude" <> '' THEN 'decimalLatitude' ELSE 'easting' END AS field,
  t.said_place AS value,
  CASE o.mates WHEN 'day' THEN t."recordedBy" || ', ' || t.said_date ELSE '' END AS subject,
  'lies ' || o.km || ' km from ' || CASE o.mates
      WHEN 'day' THEN 'where the same recorder was that day ('
      WHEN 'recorder' THEN 'where nearly all records of this recorder in this source are ('
      ELSE 'where nearly all records of this locality in this source are (' END
    || CASE o.mate_records WHEN 1 THEN '1 record' ELSE o.mate_records || ' records' END || '); with ' || o.slip || ' it would lie there' AS message,
  'look at the original; correct the place if that is what was meant' AS way_out,
  CASE WHEN o.proposal = '' THEN '' ELSE 'gridReference=' || o.proposal END AS proposal
FROM (
  SELECT s.record_no, s.slip, s.proposal, p.mates, p.mate_records, round(p.gap_m / 1000)::INTEGER AS km,
    row_number() OVER (PARTITION BY s.record_no ORDER BY p.mate_records DESC, p.mates, s.companion_no) AS choice
  FROM slips AS s JOIN odd_places AS p USING (record_no, companion_no)
) AS o
JOIN record_texts AS t USING (record_no)
WHERE o.choice = 1
