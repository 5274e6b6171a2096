-- In: odd_regions (place_id, field, region), placed_records, raw_records, record_texts. Out: findings of region_disagrees.
SELECT
  p.record_no, o.field, o.region AS value, o.field || ' ' || o.region AS subject,
  'the place, ' || t.said_place || ', lies outside it' AS message,
  'ask which is right: whoever was there knows the region better than a square does' AS way_out,
  '' AS proposal
FROM odd_regions AS o
JOIN placed_records AS p USING (place_id)
JOIN record_texts AS t USING (record_no)
WHERE p.counts AND o.region = CASE o.field
  WHEN 'country' THEN t.country WHEN 'countryCode' THEN t."countryCode" WHEN 'stateProvince' THEN t."stateProvince"
  WHEN 'county' THEN t.county ELSE t."viceCounty" END
