-- How precise a taxon's records are: in the 10 km squares where it was recorded in both of two periods, the records of each
-- and those of them good to 2 km. Better references look like new 2 km squares; so below a stated share in either period
-- change at 2 km cannot be judged. Records shown coarser than they are known say nothing of that.
-- In: sightings, closure, square_territories, pairs. Out: tetrad_shares (by pair, taxon and territory, and in all).
CREATE OR REPLACE TABLE tetrad_shares AS
WITH own AS (
  SELECT c.counts_for AS taxon_id, s.grid, s.hectad, s.period, count(*) AS records, count(s.tetrad) AS at_tetrad
  FROM sightings AS s JOIN closure AS c USING (taxon_id)
  WHERE s.present AND s.established AND NOT s.provisional AND NOT s.generalised AND s.hectad IS NOT NULL AND s.period IS NOT NULL
  GROUP BY c.counts_for, s.grid, s.hectad, s.period
)
SELECT f.taxon_id, p.from_period, p.to_period, coalesce(q.territory, 'all') AS territory,
  sum(f.records)::BIGINT AS records_from, sum(f.at_tetrad)::BIGINT AS at_tetrad_from,
  sum(t.records)::BIGINT AS records_to, sum(t.at_tetrad)::BIGINT AS at_tetrad_to
FROM pairs AS p
JOIN own AS f ON f.period = p.from_period
JOIN own AS t ON t.period = p.to_period AND t.taxon_id = f.taxon_id AND t.grid = f.grid AND t.hectad = f.hectad
JOIN square_territories AS q ON q.resolution_m = 10000 AND q.grid = f.grid AND q.square = f.hectad
GROUP BY GROUPING SETS ((f.taxon_id, p.from_period, p.to_period, q.territory), (f.taxon_id, p.from_period, p.to_period));
