-- Joins records of two sources that say the same: in each group of one taxon, days, recorder and square the first of one source
-- with the first of the other, the second with the second, so that no source loses more records than another repeats.
-- Specimens with two catalogue numbers are two. What was joined before is left alone.
-- In: likely_twins. Out: more rows of twins.
INSERT INTO twins
WITH open AS (
  SELECT *, {square} AS square, {castes} AS told_apart
  FROM likely_twins
  WHERE {square} IS NOT NULL AND record_no NOT IN (SELECT record_no FROM twins) AND record_no NOT IN (SELECT twin_of FROM twins WHERE how <> 'same id')
),
ranked AS (
  SELECT *, row_number() OVER (PARTITION BY taxon_id, first_day, last_day, recorder, square, told_apart, source ORDER BY record_no) AS place
  FROM open
),
met AS (
  SELECT taxon_id, first_day, last_day, recorder, square, told_apart, arg_min(source, record_no) AS first_source
  FROM ranked
  GROUP BY taxon_id, first_day, last_day, recorder, square, told_apart
  HAVING min(source) <> max(source) AND min(castes) IS NOT DISTINCT FROM max(castes) AND {only_where}
)
SELECT other.record_no, first.record_no, 'same taxon, day, place and recorder'
FROM met AS m
JOIN ranked AS first
  ON first.taxon_id = m.taxon_id AND first.first_day = m.first_day AND first.last_day = m.last_day AND first.recorder = m.recorder
  AND first.square = m.square AND first.told_apart = m.told_apart AND first.source = m.first_source
JOIN ranked AS other
  ON other.taxon_id = m.taxon_id AND other.first_day = m.first_day AND other.last_day = m.last_day AND other.recorder = m.recorder
  AND other.square = m.square AND other.told_apart = m.told_apart AND other.place = first.place
WHERE other.source <> m.first_source
  AND (first.catalog_number IS NULL OR other.catalog_number IS NULL OR first.catalog_number = other.catalog_number);
