-- Rows between two that agree with each other on recorder, day and place, and that differ from both in the day or the place.
-- Rows of events with ids of their own are no rows of one list. Where a recorder's neighbours in a source often agree and
-- leave the row between them out, the file is in another order than that of lists, and says nothing.
-- In: list_neighbours, placed_records, raw_records, record_texts, review_findings. Out: findings of odd_row_in_list.
WITH trios AS (
  SELECT
    row.record_no, row.source, row.recorder, before.record_no AS before_no,
    before.first_day AS before_day, before.first_day = before.last_day AS before_one_day,
    row.first_day <> before.first_day OR row.last_day <> before.last_day AS other_day,
    row.last_day < before.first_day OR row.first_day > before.last_day AS days_apart,
    least({gap_before}, {gap_after}) AS gap_m
  FROM list_neighbours AS l
  JOIN placed_records AS row USING (record_no)
  JOIN placed_records AS before ON before.record_no = l.before_no
  JOIN placed_records AS after ON after.record_no = l.after_no
  JOIN raw_records AS row_event ON row_event.record_no = row.record_no
  JOIN raw_records AS before_event ON before_event.record_no = before.record_no
  WHERE row_event."eventID" = before_event."eventID" AND l.before_recorder = l.recorder AND l.after_recorder = l.recorder AND row.counts
    AND l.before_first_day = l.after_first_day AND l.before_last_day = l.after_last_day AND {gap_around} <= {together_m}
),
odd AS (
  SELECT *, count(*) OVER recorders AS trios, count(*) FILTER (is_odd) OVER recorders AS odd_trios
  FROM (
    SELECT *, (days_apart AND gap_m <= {together_m}) OR (NOT other_day AND gap_m > {far_m}) AS is_odd FROM trios
  )
  WINDOW recorders AS (PARTITION BY source, recorder)
)
SELECT
  o.record_no,
  CASE WHEN o.days_apart THEN 'eventDate' WHEN t."gridReference" <> '' THEN 'gridReference' WHEN t."decimalLatitude" <> '' THEN 'decimalLatitude' ELSE 'easting' END AS field,
  CASE WHEN o.days_apart THEN t.said_date ELSE t.said_place END AS value,
  '' AS subject,
  CASE WHEN o.days_apart
    THEN 'the rows before and after have the same recorder and place and the date ' || CASE WHEN o.before_one_day THEN CAST(DATE '1970-01-01' + o.before_day AS VARCHAR) ELSE b.said_date END
    ELSE 'the rows before and after have the same recorder and date and lie together, ' || round(o.gap_m / 1000)::INTEGER || ' km from here, at ' || b.said_place
  END AS message,
  'look at the list it comes from' AS way_out,
  CASE WHEN o.days_apart THEN CASE WHEN o.before_one_day THEN 'eventDate=' || (DATE '1970-01-01' + o.before_day) ELSE '' END WHEN b."gridReference" <> '' THEN 'gridReference=' || b."gridReference" ELSE '' END AS proposal
FROM odd AS o
JOIN record_texts AS t USING (record_no)
JOIN record_texts AS b ON b.record_no = o.before_no
WHERE o.is_odd AND (o.trios < {usual_records} OR o.odd_trios <= (1 - {usual_share}) * o.trios)
  AND o.record_no NOT IN (SELECT record_no FROM review_findings WHERE check_name = 'place_slip')
