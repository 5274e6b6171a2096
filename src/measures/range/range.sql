-- The squares of each taxon's range, by period and by unit of assessment, and how many there are. A record counts that is
-- established, of whatever year: provisional years too, since a record is a record. It counts for its taxon and every
-- aggregate above it; for the territory it lies in and for all; for its period and for all dates. A 10 km square enters the
-- range as a whole only where no record of that taxon, period and unit reaches 2 km in it.
-- In: evidence, closure (taxon_id counts for counts_for). Out: range_counts (scope, taxon_id, territory, period, records,
-- held_back, left_out, tetrads, hectads, hectads_without_tetrad, grids; period -1: all dates), range_places (place, grid, square),
-- range_squares (scope, place).
CREATE OR REPLACE TEMP TABLE range_records AS
WITH counted AS (
  SELECT c.counts_for AS taxon_id, e.territory, coalesce(e.period, -2) AS period, e.grid, e.hectad, e.tetrad, e.established,
    e.tetrad_reason IN ('shown at 10 km', 'place withheld') AS held_back, count(*) AS records
  FROM evidence AS e JOIN closure AS c USING (taxon_id)
  WHERE e.present
  GROUP BY ALL
),
by_unit AS (SELECT *, unnest([territory, 'all']) AS unit FROM counted),
by_period AS (SELECT *, unnest([period, -1]) AS of_period FROM by_unit WHERE unit IS NOT NULL)
SELECT taxon_id, unit AS territory, of_period AS period, grid, hectad, tetrad, established, held_back, sum(records)::INTEGER AS records
FROM by_period WHERE of_period >= -1
GROUP BY ALL;

CREATE OR REPLACE TABLE range_counts AS
WITH hectads AS (
  SELECT taxon_id, territory, period, grid, hectad, bool_or(tetrad IS NOT NULL) AS finer
  FROM range_records WHERE established AND hectad IS NOT NULL GROUP BY taxon_id, territory, period, grid, hectad
),
squares AS (
  SELECT taxon_id, territory, period, count(*) AS hectads, count(*) FILTER (NOT finer) AS hectads_without_tetrad,
    string_agg(DISTINCT grid, ' | ' ORDER BY grid) AS grids
  FROM hectads GROUP BY taxon_id, territory, period
)
SELECT (row_number() OVER (ORDER BY r.taxon_id, r.territory, r.period) - 1)::INTEGER AS scope, r.taxon_id, r.territory, r.period,
  (coalesce(sum(r.records) FILTER (r.established), 0))::INTEGER AS records,
  (coalesce(sum(r.records) FILTER (r.established AND coalesce(r.held_back, false)), 0))::INTEGER AS held_back,
  (coalesce(sum(r.records) FILTER (NOT r.established), 0))::INTEGER AS left_out,
  count(DISTINCT r.grid || ' ' || r.tetrad) FILTER (r.established)::INTEGER AS tetrads,
  coalesce(any_value(s.hectads), 0)::INTEGER AS hectads,
  coalesce(any_value(s.hectads_without_tetrad), 0)::INTEGER AS hectads_without_tetrad,
  coalesce(any_value(s.grids), '') AS grids
FROM range_records AS r LEFT JOIN squares AS s USING (taxon_id, territory, period)
GROUP BY r.taxon_id, r.territory, r.period;

CREATE OR REPLACE TEMP TABLE range_codes AS
WITH marked AS (
  SELECT taxon_id, territory, period, grid, hectad, tetrad,
    bool_or(tetrad IS NOT NULL) OVER (PARTITION BY taxon_id, territory, period, grid, hectad) AS finer
  FROM range_records WHERE established AND hectad IS NOT NULL
)
SELECT DISTINCT taxon_id, territory, period, grid, CASE WHEN finer THEN tetrad ELSE hectad END AS square
FROM marked WHERE tetrad IS NOT NULL OR NOT finer;

CREATE OR REPLACE TABLE range_places AS
SELECT (row_number() OVER (ORDER BY grid, square) - 1)::INTEGER AS place, grid, square
FROM (SELECT DISTINCT grid, square FROM range_codes);

CREATE OR REPLACE TABLE range_squares AS
SELECT s.scope, p.place
FROM range_codes AS c JOIN range_places AS p USING (grid, square) JOIN range_counts AS s USING (taxon_id, territory, period);
DROP TABLE range_records; DROP TABLE range_codes;
