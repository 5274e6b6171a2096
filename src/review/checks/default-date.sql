-- Days that spreadsheets and programs write for an empty date: day 0 and 1 of two spreadsheet calendars and of the Unix clock.
-- In: placed_records, record_texts. Out: findings of default_date.
SELECT
  r.record_no, 'eventDate' AS field, t.said_date AS value, 'day ' || (DATE '1970-01-01' + r.first_day) AS subject,
  'is the day on which a calendar of spreadsheets or programs begins, and may stand for an empty date' AS message,
  'look at the original; leave the date empty where there is none' AS way_out,
  '' AS proposal
FROM placed_records AS r
JOIN record_texts AS t USING (record_no)
WHERE r.first_day = r.last_day AND r.counts
  AND DATE '1970-01-01' + r.first_day IN (DATE '1899-12-30', DATE '1899-12-31', DATE '1900-01-01', DATE '1904-01-01', DATE '1970-01-01')
