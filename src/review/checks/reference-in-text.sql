-- Records without a place whose locality or remarks hold what may be a grid reference. One letter and figures may be a
-- vice-county, a road or a compass position as well: all is proposed, nothing used.
-- In: raw_records, record_keys. Out: findings of reference_in_text.
WITH texts AS (
  SELECT r.record_no,
    CASE WHEN regexp_matches(r.locality, {pattern}) THEN 'locality' ELSE 'occurrenceRemarks' END AS field,
    regexp_extract(CASE WHEN regexp_matches(r.locality, {pattern}) THEN r.locality ELSE r."occurrenceRemarks" END, {pattern}, 1) AS found
  FROM raw_records AS r
  JOIN record_keys AS k USING (record_no)
  WHERE k.reason = 'place_empty' AND (regexp_matches(r.locality, {pattern}) OR regexp_matches(r."occurrenceRemarks", {pattern}))
)
SELECT
  record_no, field, found AS value, '' AS subject,
  'no place is given, and this text holds what may be a grid reference'
    || CASE WHEN regexp_matches(found, '^[A-Za-z] ?[0-9]') THEN ', or a vice-county, a road or a compass position' ELSE '' END AS message,
  'correct gridReference if it is one' AS way_out,
  'gridReference=' || replace(found, ' ', '') AS proposal
FROM texts
