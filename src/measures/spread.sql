-- How a taxon spread over the 10 km squares: those first recorded in each year, and all up to it. A record dated to several
-- years counts at the last of them, when it was there at the latest. Only established records count: a released animal or
-- a stray makes no spread. Squares are never taken away again, so that the curve rises with recording alone.
-- In: square_sightings, provisional. Out: spread (a row a taxon and year with a new square).
CREATE OR REPLACE TABLE spread AS
WITH firsts AS (
  SELECT taxon_id, grid, square, min(last_year) AS year
  FROM square_sightings WHERE resolution_m = 10000 AND established GROUP BY taxon_id, grid, square
)
SELECT f.taxon_id, f.year, count(*) AS squares_new,
  (sum(count(*)) OVER (PARTITION BY f.taxon_id ORDER BY f.year))::BIGINT AS squares_total,
  bool_or(p.year IS NOT NULL) AS provisional
FROM firsts AS f LEFT JOIN provisional AS p ON p.year = f.year
GROUP BY f.taxon_id, f.year;
