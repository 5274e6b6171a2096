-- In: record_keys, dates, record_texts. Out: findings of recorded_after_identified.
SELECT
  r.record_no, 'dateIdentified' AS field, t."dateIdentified" AS value, '' AS subject,
  'is before the record''s own date, ' || t.said_date AS message,
  'look at the original; one of the two dates is wrong' AS way_out, '' AS proposal
FROM record_keys AS r
JOIN dates AS d USING (date_id)
JOIN record_texts AS t USING (record_no)
WHERE r.status IN ('used', 'held') AND regexp_matches(trim(t."dateIdentified"), '^[0-9]{4}(-[0-9]{2}(-[0-9]{2})?)?(T.*)?$')
  AND substr(trim(t."dateIdentified"), 1, 10) < substr(CAST(DATE '1970-01-01' + d.first_day AS VARCHAR), 1, length(substr(trim(t."dateIdentified"), 1, 10)))
