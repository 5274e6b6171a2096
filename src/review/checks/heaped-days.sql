-- In: heaped_days, placed_records, record_texts. Out: findings of default_date and date_heaping.
SELECT
  r.record_no, 'eventDate' AS field, t.said_date AS value, 'day ' || h.day AS subject,
  h.lists || ' lists of this source, with ' || h.records || ' records, have the day ' || ltrim(split_part(h.day, '-', 2), '0') || ' ' || {month}
    || ', its neighbouring days ' || h.expected || ' lists on average' AS message,
  'see whether a form or a program filled in the day; where it did, give the month or year alone' AS way_out,
  '' AS proposal
FROM placed_records AS r
JOIN heaped_days AS h ON h.source = r.source AND h.day = strftime(DATE '1970-01-01' + r.first_day, '%m-%d')
JOIN record_texts AS t USING (record_no)
WHERE r.first_day = r.last_day AND r.counts
