-- What is recorded in the neighbourhood of each 10 km square: how often the everyday visits of the latest period record a
-- taxon there, near visits counting more, and how far its nearest recorded square is.
-- Weight of a square is reach_km less its distance in whole km: 0 where nothing of a neighbourhood is left.
-- A record counts for its taxon and for every aggregate above it. Records shown coarser make visits of their own; those
-- whose place is withheld are in no square and make nothing here.
-- In: evidence, closure, latest, square_sightings, hectad_numbers (no, grid, square, enough_land), near_hectads (of_square,
-- near_square, km), near_rules (reach_km).
-- Out: hectad_visits (no, visits), hectad_taxon_visits (no, taxon_id, visits), neighbourhood_effort, neighbourhood_frequencies.
CREATE OR REPLACE TEMP TABLE everyday_sightings AS
SELECT n.no, e.visit, e.taxon_id, e.present
FROM evidence AS e
JOIN hectad_numbers AS n ON n.grid = e.grid AND n.square = e.hectad
WHERE e.visit IS NOT NULL AND e.visit_class = 'everyday' AND e.period = (SELECT period FROM latest);

CREATE OR REPLACE TABLE hectad_visits AS
SELECT no, count(DISTINCT visit) AS visits FROM everyday_sightings GROUP BY no;

CREATE OR REPLACE TABLE hectad_taxon_visits AS
SELECT s.no, c.counts_for AS taxon_id, count(DISTINCT s.visit) AS visits
FROM everyday_sightings AS s JOIN closure AS c USING (taxon_id)
WHERE s.present
GROUP BY s.no, c.counts_for;
DROP TABLE everyday_sightings;

CREATE OR REPLACE TEMP TABLE weighed_hectads AS
SELECT p.of_square, p.near_square, r.reach_km - p.km AS weight
FROM near_hectads AS p CROSS JOIN near_rules AS r WHERE p.km < r.reach_km;

CREATE OR REPLACE TEMP TABLE numbered_effort AS
SELECT n.no, coalesce(sum(w.weight * v.visits), 0)::BIGINT AS weighted_visits, coalesce(sum(v.visits), 0)::BIGINT AS visits,
  count(v.no)::INTEGER AS squares
FROM hectad_numbers AS n
JOIN weighed_hectads AS w ON w.of_square = n.no
LEFT JOIN hectad_visits AS v ON v.no = w.near_square
GROUP BY n.no;

CREATE OR REPLACE TABLE neighbourhood_effort AS
SELECT n.grid, n.square, e.weighted_visits, e.visits, e.squares
FROM numbered_effort AS e JOIN hectad_numbers AS n USING (no)
ORDER BY n.grid, n.square;

CREATE OR REPLACE TABLE neighbourhood_frequencies AS
WITH held AS (
  SELECT s.taxon_id, n.no, count(*)::INTEGER AS records, max(s.last_year) AS last_year
  FROM square_sightings AS s JOIN hectad_numbers AS n ON n.grid = s.grid AND n.square = s.square
  WHERE s.resolution_m = 10000
  GROUP BY s.taxon_id, n.no
),
nearest AS (
  SELECT p.of_square AS no, h.taxon_id, min(p.km)::INTEGER AS nearest_km
  FROM held AS h JOIN near_hectads AS p ON p.near_square = h.no
  GROUP BY p.of_square, h.taxon_id
),
recorded AS (
  SELECT w.of_square AS no, t.taxon_id, sum(w.weight * t.visits)::BIGINT AS weighted_visits
  FROM hectad_taxon_visits AS t JOIN weighed_hectads AS w ON w.near_square = t.no
  GROUP BY w.of_square, t.taxon_id
)
SELECT n.grid, n.square, d.taxon_id,
  coalesce((200000 * r.weighted_visits + e.weighted_visits) // (2 * e.weighted_visits), 0)::INTEGER AS frequency,
  coalesce(h.records, 0)::INTEGER AS here, h.last_year, d.nearest_km
FROM nearest AS d
JOIN hectad_numbers AS n USING (no)
JOIN numbered_effort AS e USING (no)
LEFT JOIN recorded AS r ON r.no = d.no AND r.taxon_id = d.taxon_id
LEFT JOIN held AS h ON h.no = d.no AND h.taxon_id = d.taxon_id
ORDER BY n.grid, n.square, d.taxon_id;
DROP TABLE numbered_effort;
