-- The region of every sighting, in each layer of regions (a layer: all regions that one field of a record states), and what
-- was recorded in each. What a record states beats its square; but of a record shown coarser on purpose only the square
-- counts that is shown, for the region it states would narrow that down. Else its finest square counts, where it touches one
-- region only. A record of a boundary square that states no region is in none, and makes no first year anywhere.
-- In: sightings, stated_regions (record_no, field, region_id), region_layers (field), square_regions (field, grid, square,
-- regions, region_id where they are one), closure, all_regions (field, region_id), land_hectads.
-- Out: region_sightings (field, record_no, region_id, 'not_assigned' for none, basis), region_taxa, region_totals, region_bases,
-- region_names (field, region_id, taxon_id).
CREATE OR REPLACE TABLE region_sightings AS
SELECT l.field, s.record_no, s.taxon_id, s.grid, s.hectad, s.tetrad, coalesce(s.first_year, s.last_year) AS first_year, s.last_year,
  coalesce(r.region_id, q.region_id, 'not_assigned') AS region_id,
  CASE
    WHEN r.region_id IS NOT NULL THEN 'stated'
    WHEN s.hectad IS NULL AND s.tetrad IS NULL THEN 'no_square'
    WHEN q.region_id IS NOT NULL THEN 'square'
    WHEN q.regions > 1 THEN 'boundary'
    ELSE 'outside' END AS basis
FROM sightings AS s
CROSS JOIN region_layers AS l
LEFT JOIN stated_regions AS r ON r.record_no = s.record_no AND r.field = l.field AND NOT s.generalised
LEFT JOIN square_regions AS q ON q.field = l.field AND q.grid = s.grid AND q.square = coalesce(s.tetrad, s.hectad)
WHERE s.present;

CREATE OR REPLACE TABLE region_taxa AS
SELECT s.field, s.region_id, c.counts_for AS taxon_id, count(*)::INTEGER AS records,
  count(DISTINCT s.grid || ' ' || s.hectad)::INTEGER AS hectads, count(DISTINCT s.grid || ' ' || s.tetrad)::INTEGER AS tetrads,
  min(s.first_year) AS first_year, max(s.last_year) AS last_year
FROM region_sightings AS s JOIN closure AS c USING (taxon_id)
GROUP BY s.field, s.region_id, c.counts_for;

CREATE OR REPLACE TABLE region_totals AS
WITH land AS (
  SELECT q.field, r.region_id,
    count(*) FILTER (q.regions = 1)::INTEGER AS land_hectads_inside, count(*) FILTER (q.regions > 1)::INTEGER AS land_hectads_boundary
  FROM (SELECT DISTINCT grid, square FROM land_hectads) AS h
  JOIN square_regions AS q ON q.grid = h.grid AND q.square = h.square
  JOIN regions_touched AS r ON r.field = q.field AND r.grid = q.grid AND r.square = q.square
  GROUP BY q.field, r.region_id
),
recorded AS (
  SELECT field, region_id, count(*)::INTEGER AS records, count(*) FILTER (basis = 'stated')::INTEGER AS records_stated,
    count(DISTINCT grid || ' ' || hectad)::INTEGER AS hectads, count(DISTINCT grid || ' ' || tetrad)::INTEGER AS tetrads,
    min(first_year) AS first_year, max(last_year) AS last_year
  FROM region_sightings GROUP BY field, region_id
)
SELECT a.field, a.region_id, coalesce(n.records, 0) AS records, coalesce(n.records_stated, 0) AS records_stated,
  coalesce(n.hectads, 0) AS hectads, coalesce(n.tetrads, 0) AS tetrads, n.first_year, n.last_year,
  coalesce(l.land_hectads_inside, 0) AS land_hectads_inside, coalesce(l.land_hectads_boundary, 0) AS land_hectads_boundary
FROM all_regions AS a
LEFT JOIN recorded AS n ON n.field = a.field AND n.region_id = a.region_id
LEFT JOIN land AS l ON l.field = a.field AND l.region_id = a.region_id;

CREATE OR REPLACE TABLE region_bases AS
SELECT field, basis, count(*)::INTEGER AS records FROM region_sightings GROUP BY field, basis;

CREATE OR REPLACE TABLE region_names AS SELECT DISTINCT field, region_id, taxon_id FROM region_sightings;
DROP TABLE region_sightings;
