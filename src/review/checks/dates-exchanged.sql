-- Rows beside another of the same recorder, place and year whose day is this one's month and whose month is this one's day.
-- The one whose date more of the recorder's records in the source have is taken for right; where neither has more, both are asked about.
-- In: list_neighbours, placed_records, record_texts, review_findings. Out: findings of day_and_month_exchanged.
WITH beside AS (
  SELECT record_no, first_day, last_day, before_no AS companion_no, before_first_day AS mate_day, before_last_day AS mate_last_day
  FROM list_neighbours WHERE before_recorder = recorder
  UNION ALL
  SELECT record_no, first_day, last_day, after_no, after_first_day, after_last_day FROM list_neighbours WHERE after_recorder = recorder
),
-- By the days alone, which few have, before anything is joined.
exchanged AS (
  SELECT record_no, companion_no
  FROM (
    SELECT record_no, companion_no, DATE '1970-01-01' + first_day AS date, DATE '1970-01-01' + mate_day AS mate_date
    FROM beside WHERE first_day = last_day AND mate_day = mate_last_day AND first_day <> mate_day
  )
  WHERE year(date) = year(mate_date) AND month(date) = day(mate_date) AND day(date) = month(mate_date)
),
dated AS (
  SELECT record_no, source, recorder, longitude, latitude, reach_m, counts, first_day
  FROM placed_records WHERE first_day = last_day AND recorder <> ''
),
pairs AS (
  SELECT b.record_no, min(b.companion_no) AS companion_no, row.source, row.recorder, row.first_day, mate.first_day AS mate_day
  FROM exchanged AS b
  JOIN dated AS row USING (record_no)
  JOIN dated AS mate ON mate.record_no = b.companion_no
  WHERE row.counts AND {gap} <= {together_m}
  GROUP BY ALL
),
days AS (
  SELECT d.source, d.recorder, d.first_day, count(*) AS records
  FROM dated AS d
  WHERE EXISTS (SELECT 1 FROM pairs AS p WHERE p.source = d.source AND p.recorder = d.recorder)
  GROUP BY d.source, d.recorder, d.first_day
)
SELECT
  p.record_no, 'eventDate' AS field, t.said_date AS value,
  CASE WHEN own.records = other.records THEN t."recordedBy" || ', ' || least(t.said_date, m.said_date) ELSE '' END AS subject,
  'the row beside it, of the same recorder and place, has the date ' || (DATE '1970-01-01' + p.mate_day) || ': day and month may be exchanged in one of them' AS message,
  'look at the list it comes from' AS way_out,
  'eventDate=' || (DATE '1970-01-01' + p.mate_day) AS proposal
FROM pairs AS p
JOIN days AS own ON own.source = p.source AND own.recorder = p.recorder AND own.first_day = p.first_day
JOIN days AS other ON other.source = p.source AND other.recorder = p.recorder AND other.first_day = p.mate_day
JOIN record_texts AS t USING (record_no)
JOIN record_texts AS m ON m.record_no = p.companion_no
WHERE own.records <= other.records
