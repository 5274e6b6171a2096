-- Headline numbers of each taxon, and its used records that support no square, by reason.
-- In: sightings, closure, latest (period). Out: taxon_totals, off_map, squares_by_reason (of all taxa).
CREATE OR REPLACE TABLE taxon_totals AS
SELECT c.counts_for AS taxon_id, count(*) AS records, count(DISTINCT s.visit) AS visits,
  min(coalesce(s.first_year, s.last_year)) AS first_year, max(s.last_year) AS last_year,
  count(DISTINCT s.grid || s.hectad) AS hectads,
  count(DISTINCT s.grid || s.hectad) FILTER (s.period = (SELECT period FROM latest)) AS hectads_latest,
  count(DISTINCT s.grid || s.tetrad) AS tetrads,
  count(DISTINCT s.grid || s.tetrad) FILTER (s.period = (SELECT period FROM latest)) AS tetrads_latest
FROM sightings AS s JOIN closure AS c USING (taxon_id)
WHERE s.present
GROUP BY c.counts_for;

CREATE OR REPLACE TABLE off_map AS
SELECT c.counts_for AS taxon_id, 10000 AS resolution_m, s.hectad_reason AS reason, count(*) AS records
FROM sightings AS s JOIN closure AS c USING (taxon_id)
WHERE s.present AND s.hectad IS NULL
GROUP BY c.counts_for, s.hectad_reason
UNION ALL
SELECT c.counts_for AS taxon_id, 2000 AS resolution_m, s.tetrad_reason AS reason, count(*) AS records
FROM sightings AS s JOIN closure AS c USING (taxon_id)
WHERE s.present AND s.tetrad IS NULL
GROUP BY c.counts_for, s.tetrad_reason;

CREATE OR REPLACE TABLE squares_by_reason AS
SELECT 10000 AS resolution_m, hectad_reason AS reason, count(*) AS records FROM sightings WHERE present AND hectad IS NULL GROUP BY hectad_reason
UNION ALL
SELECT 2000 AS resolution_m, tetrad_reason AS reason, count(*) AS records FROM sightings WHERE present AND tetrad IS NULL GROUP BY tetrad_reason;
