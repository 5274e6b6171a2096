-- What tells whether a taxon that was not recorded in a 10 km square in the latest period is there: the covered squares
-- around it with and without the taxon, and how often visits to those with it record it.
-- A neighbour is covered for a taxon by visits that name others (see the coverage of squares), so that a taxon's own record
-- cannot make its neighbour count. It holds the taxon by an established record of the latest period. Weights are whole km
-- as in the neighbourhood; the square itself is no neighbour of its own. An aggregate is left out where one of its members
-- could be found: finding the member finds it.
-- In: weighed_hectads, hectad_numbers, hectad_visits, hectad_taxon_visits, naming_visits, own_visits, square_sightings,
-- closure, rules (minimum_visits), latest, near_rules (least_covered).
-- Out: expected_inputs (one row a square with enough land and a taxon not recorded there lately; last_year of an earlier record
-- there), atlas_shares (covered squares of the atlas for a taxon and with it; visits to those with it, and recording it).
CREATE OR REPLACE TEMP TABLE covered_hectads AS
SELECT h.no, n.visits FROM naming_visits AS n
JOIN hectad_numbers AS h ON h.grid = n.grid AND h.square = n.square
WHERE n.resolution_m = 10000 AND n.period = (SELECT period FROM latest) AND n.visits >= (SELECT minimum_visits FROM rules);

-- Covered for taxa in general, but not for this one, whose own visits covered it.
CREATE OR REPLACE TEMP TABLE covered_by_itself AS
SELECT o.taxon_id, c.no
FROM own_visits AS o
JOIN hectad_numbers AS h ON h.grid = o.grid AND h.square = o.square
JOIN covered_hectads AS c ON c.no = h.no
WHERE o.resolution_m = 10000 AND o.period = (SELECT period FROM latest)
  AND c.visits - o.visits < (SELECT minimum_visits FROM rules);

CREATE OR REPLACE TEMP TABLE hectad_taxa AS
SELECT s.taxon_id, n.no,
  coalesce(bool_or(s.period = (SELECT period FROM latest)), false) AS lately,
  coalesce(bool_or(s.period = (SELECT period FROM latest) AND s.established), false) AS established,
  max(s.last_year) AS last_year
FROM square_sightings AS s JOIN hectad_numbers AS n ON n.grid = s.grid AND n.square = s.square
WHERE s.resolution_m = 10000
GROUP BY s.taxon_id, n.no;

CREATE OR REPLACE TEMP TABLE held_covered AS
SELECT h.taxon_id, h.no, coalesce(v.visits, 0) AS visits, coalesce(t.visits, 0) AS recording
FROM hectad_taxa AS h
JOIN covered_hectads AS c ON c.no = h.no
LEFT JOIN hectad_visits AS v ON v.no = h.no
LEFT JOIN hectad_taxon_visits AS t ON t.no = h.no AND t.taxon_id = h.taxon_id
WHERE h.established AND NOT EXISTS (SELECT 1 FROM covered_by_itself AS o WHERE o.taxon_id = h.taxon_id AND o.no = h.no);

CREATE OR REPLACE TABLE atlas_shares AS
WITH itself AS (SELECT taxon_id, count(*) AS squares FROM covered_by_itself GROUP BY taxon_id)
SELECT h.taxon_id, (SELECT count(*) FROM covered_hectads) - coalesce(any_value(i.squares), 0) AS squares, count(*) AS squares_with,
  sum(h.visits)::BIGINT AS visits, sum(h.recording)::BIGINT AS recording
FROM held_covered AS h LEFT JOIN itself AS i USING (taxon_id)
GROUP BY h.taxon_id;

CREATE OR REPLACE TABLE expected_inputs AS
WITH around AS (
  SELECT w.of_square AS no, count(*) AS squares, sum(w.weight) AS weight
  FROM weighed_hectads AS w JOIN covered_hectads AS c ON c.no = w.near_square
  WHERE w.near_square <> w.of_square
  GROUP BY w.of_square
),
itself AS (
  SELECT w.of_square AS no, o.taxon_id, count(*) AS squares, sum(w.weight) AS weight
  FROM weighed_hectads AS w JOIN covered_by_itself AS o ON o.no = w.near_square
  WHERE w.near_square <> w.of_square
  GROUP BY w.of_square, o.taxon_id
),
with_taxon AS (
  SELECT w.of_square AS no, h.taxon_id, count(*) AS squares, sum(w.weight) AS weight,
    sum(w.weight * h.visits) AS visits, sum(w.weight * h.recording) AS recording
  FROM weighed_hectads AS w JOIN held_covered AS h ON h.no = w.near_square
  WHERE w.near_square <> w.of_square
  GROUP BY w.of_square, h.taxon_id
),
told AS (
  SELECT t.no, t.taxon_id, a.squares - coalesce(i.squares, 0) AS squares_near, t.squares AS squares_with,
    (a.weight - coalesce(i.weight, 0))::BIGINT AS weight_near, t.weight::BIGINT AS weight_with,
    t.visits::BIGINT AS weighted_visits, t.recording::BIGINT AS weighted_recording
  FROM with_taxon AS t
  JOIN around AS a ON a.no = t.no
  JOIN hectad_numbers AS n ON n.no = t.no AND n.enough_land
  LEFT JOIN itself AS i ON i.no = t.no AND i.taxon_id = t.taxon_id
  WHERE a.squares - coalesce(i.squares, 0) >= (SELECT least_covered FROM near_rules)
),
missing AS (
  SELECT t.*, coalesce(v.visits, 0) AS visits_here, h.last_year
  FROM told AS t
  LEFT JOIN hectad_visits AS v ON v.no = t.no
  LEFT JOIN hectad_taxa AS h ON h.no = t.no AND h.taxon_id = t.taxon_id
  WHERE NOT coalesce(h.lately, false)
)
SELECT m.* FROM missing AS m
WHERE NOT EXISTS (
  SELECT 1 FROM closure AS c JOIN missing AS o ON o.taxon_id = c.taxon_id
  WHERE c.counts_for = m.taxon_id AND c.taxon_id <> m.taxon_id AND o.no = m.no
)
ORDER BY m.no, m.taxon_id;
DROP TABLE covered_hectads; DROP TABLE covered_by_itself; DROP TABLE hectad_taxa; DROP TABLE held_covered; DROP TABLE weighed_hectads;
