-- Squares of 10 km compared between periods, from one set of evidence: of each taxon and pair of periods the squares covered
-- in both by visits that named other taxa, by whether it was recorded in each; and of each period the squares covered then,
-- with those that hold it. As in square-states.sql, but of the set's rows alone; taxa, squares and periods are numbers and
-- bits here, since this runs once a set. A square where only unsettled records tell of the taxon in a period says nothing of it.
-- In: set_evidence (view), numbered_taxa, numbered_squares, numbered_lineage, numbered_closure, taxon_squares (unsettled),
-- pairs, periods, rules, in_period (macro).
-- Out: set_pairs (taxon_id, from_period, to_period, squares_from, squares_to: recorded; retained, gained, lost: among
-- comparable squares), set_periods (taxon_id, period, covered, held).
CREATE OR REPLACE TABLE set_names AS
SELECT DISTINCT t.taxon, q.square, e.period, CASE WHEN NOT e.generalised THEN e.visit END AS visit
FROM set_evidence AS e JOIN numbered_taxa AS t USING (taxon_id) JOIN numbered_squares AS q USING (grid, hectad)
WHERE e.present AND e.period IS NOT NULL;

CREATE OR REPLACE TABLE set_lists AS
SELECT visit, square, period, count(*)::INTEGER AS names FROM set_names WHERE visit IS NOT NULL GROUP BY visit, square, period;

CREATE OR REPLACE TABLE set_visits AS
SELECT square, period, count(*)::INTEGER AS visits FROM set_lists GROUP BY square, period;

CREATE OR REPLACE TABLE set_covered AS
SELECT v.square, coalesce(bit_or(1::BIGINT << v.period) FILTER (v.visits >= r.minimum_visits), 0) AS covered
FROM set_visits AS v CROSS JOIN rules AS r GROUP BY v.square;

-- Only a list no longer than a lineage can lie within it.
CREATE OR REPLACE TABLE set_own_visits AS
WITH short AS (
  SELECT * FROM set_lists
  WHERE names <= (SELECT max(taxa) FROM (SELECT count(*) AS taxa FROM numbered_lineage GROUP BY of_taxon))
),
within AS (
  SELECT l.of_taxon AS taxon, h.visit, h.square, h.period
  FROM short AS h
  JOIN set_names AS s ON s.visit = h.visit AND s.square = h.square
  JOIN numbered_lineage AS l ON l.taxon = s.taxon
  GROUP BY l.of_taxon, h.visit, h.square, h.period, h.names HAVING count(*) = h.names
)
SELECT taxon, square, period, count(*)::INTEGER AS visits FROM within GROUP BY taxon, square, period;

CREATE OR REPLACE TABLE set_alike AS
WITH told AS (
  SELECT c.counts_for AS taxon, s.square, 1::BIGINT << s.period AS recorded, 0::BIGINT AS unsettled, 0::BIGINT AS uncovered
  FROM set_names AS s JOIN numbered_closure AS c USING (taxon)
  UNION ALL
  SELECT t.taxon, q.square, 0, 1::BIGINT << s.period, 0
  FROM taxon_squares AS s JOIN numbered_taxa AS t USING (taxon_id)
  JOIN numbered_squares AS q ON q.grid = s.grid AND q.hectad = s.square
  WHERE s.resolution_m = 10000 AND s.unsettled AND s.period IS NOT NULL
  UNION ALL
  SELECT o.taxon, o.square, 0, 0, 1::BIGINT << o.period
  FROM set_own_visits AS o JOIN set_visits AS v USING (square, period) CROSS JOIN rules AS r
  WHERE v.visits - o.visits < r.minimum_visits
),
every AS (
  SELECT taxon, square, bit_or(recorded) AS recorded, bit_or(unsettled) & ~bit_or(recorded) AS unclear, bit_or(uncovered) AS uncovered
  FROM told GROUP BY taxon, square
)
SELECT e.taxon, e.recorded, e.unclear, coalesce(c.covered, 0) & ~e.uncovered AS covered, coalesce(c.covered, 0) AS usual,
  count(*) AS squares
FROM every AS e LEFT JOIN set_covered AS c USING (square)
GROUP BY ALL;

CREATE OR REPLACE TABLE set_pairs AS
WITH flags AS (
  SELECT a.taxon, p.from_period, p.to_period, a.squares,
    in_period(a.recorded, p.from_period) AS recorded_from,
    in_period(a.recorded, p.to_period) AS recorded_to,
    in_period(a.covered & ~a.unclear, p.from_period) AND in_period(a.covered & ~a.unclear, p.to_period) AS comparable
  FROM set_alike AS a CROSS JOIN pairs AS p
)
SELECT t.taxon_id, p.from_period, p.to_period,
  coalesce(sum(f.squares) FILTER (f.recorded_from), 0)::BIGINT AS squares_from,
  coalesce(sum(f.squares) FILTER (f.recorded_to), 0)::BIGINT AS squares_to,
  coalesce(sum(f.squares) FILTER (f.comparable AND f.recorded_from AND f.recorded_to), 0)::BIGINT AS retained,
  coalesce(sum(f.squares) FILTER (f.comparable AND f.recorded_to AND NOT f.recorded_from), 0)::BIGINT AS gained,
  coalesce(sum(f.squares) FILTER (f.comparable AND f.recorded_from AND NOT f.recorded_to), 0)::BIGINT AS lost
FROM numbered_taxa AS t CROSS JOIN pairs AS p
LEFT JOIN flags AS f ON f.taxon = t.taxon AND f.from_period = p.from_period AND f.to_period = p.to_period
GROUP BY t.taxon_id, p.from_period, p.to_period;

CREATE OR REPLACE TABLE set_periods AS
WITH usual AS (
  SELECT p.period, count(*) AS squares FROM periods AS p JOIN set_covered AS c ON in_period(c.covered, p.period) GROUP BY p.period
),
own AS (
  SELECT a.taxon, p.period,
    sum(a.squares) FILTER (in_period(a.covered & ~a.unclear, p.period)) AS clear,
    sum(a.squares) FILTER (in_period(a.usual, p.period)) AS usual,
    sum(a.squares) FILTER (in_period(a.covered & a.recorded, p.period)) AS held
  FROM set_alike AS a CROSS JOIN periods AS p
  GROUP BY a.taxon, p.period
)
SELECT t.taxon_id, p.period,
  (coalesce(u.squares, 0) - coalesce(o.usual, 0) + coalesce(o.clear, 0))::BIGINT AS covered,
  coalesce(o.held, 0)::BIGINT AS held
FROM numbered_taxa AS t CROSS JOIN periods AS p
LEFT JOIN usual AS u ON u.period = p.period
LEFT JOIN own AS o ON o.taxon = t.taxon AND o.period = p.period;
