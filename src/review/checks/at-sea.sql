-- Records whose finest square has no land in the scheme's list. A point known to {coarse_m} or worse is asked about only where its
-- 10 km square has none: it may have been ashore.
-- In: land_hectads (grid, hectad, letters), placed_records, places, record_texts. Out: findings of at_sea.
SELECT
  r.record_no, CASE WHEN t."gridReference" <> '' THEN 'gridReference' WHEN t."decimalLatitude" <> '' THEN 'decimalLatitude' ELSE 'easting' END AS field,
  t.said_place AS value, s.square AS subject,
  s.square || ' has no land in the scheme''s list of land squares' AS message,
  'check the place; where there is land after all, add the square to the list' AS way_out, '' AS proposal
FROM (
  SELECT p.place_id, CASE WHEN l.hectad IS NULL THEN p.hectad ELSE p.tetrad END AS square
  FROM places AS p
  LEFT JOIN land_hectads AS l ON l.grid = p.grid AND l.hectad = p.hectad
  WHERE p.hectad IS NOT NULL AND p.grid IN (SELECT grid FROM land_hectads)
    AND (l.hectad IS NULL
      OR (l.letters <> '' AND p.tetrad IS NOT NULL AND coalesce(p.radius_m, 0) < {coarse_m}
        AND NOT contains(l.letters, right(p.tetrad, 1))))
) AS s
JOIN placed_records AS r USING (place_id)
JOIN record_texts AS t USING (record_no)
WHERE r.counts
