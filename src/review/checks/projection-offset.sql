-- In: slips, projection_mates, record_texts. Out: findings of projection_offset.
SELECT
  s.record_no, 'easting' AS field, t.said_place AS value, '' AS subject,
  'lies ' || round(min(p.gap_m) / 1000)::INTEGER || ' km from the rows beside it with the same recorder and the same locality or day; read as ' || min(s.slip)
    || ' it would lie among them' AS message,
  'look at the label or list; correct the place if the numbers are of that system' AS way_out,
  CASE WHEN min(s.proposal) = '' THEN '' ELSE 'gridReference=' || min(s.proposal) END AS proposal
FROM slips AS s
JOIN projection_mates AS p USING (record_no, companion_no)
JOIN record_texts AS t USING (record_no)
GROUP BY s.record_no, t.said_place
