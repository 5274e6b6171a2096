-- Sets of records, by recorder and by source, and how many are of each scarce taxon, against others around.
-- Expected is the share among others' records within the distance and in the same years or the {years} before and after, for
-- each of the set's squares, weighted by the set's own records there; squares with fewer than {minimum_others} such records
-- are left out on both sides. Specimens and literature are no sets (collectors kept what is scarce), nor are surveys for one taxon.
-- In: interpreted_records, names, review_squares, neighbouring_squares, single_taxon_sources (source), compared_sources (source).
-- Out: share_records, set_shares (kind, who, taxon_id, records, of_taxon, expected). Taxon 0 stands for all taxa together.
CREATE OR REPLACE TABLE share_records AS
WITH taxa AS (
  SELECT taxon_id, row_number() OVER (ORDER BY taxon_id)::INTEGER AS taxon_no FROM (SELECT DISTINCT taxon_id FROM names WHERE taxon_id IS NOT NULL)
)
SELECT r.record_no, r.taxon_id, t.taxon_no, r.recorder, r.source, q.square_id, (r.first_year // {years})::INTEGER AS slab
FROM interpreted_records AS r
JOIN taxa AS t USING (taxon_id)
JOIN review_squares AS q ON q.grid = r.grid AND q.hectad = r.hectad
WHERE r.status IN ('used', 'held') AND r.present AND r.first_year // {years} = r.last_year // {years}
  AND r.source NOT IN (SELECT source FROM single_taxon_sources);

-- Few pairs of a set and a taxon have records enough to be tried; only their sets are counted further.
CREATE OR REPLACE TABLE tried_sets AS
WITH pairs AS (
  SELECT 'recorder' AS kind, recorder AS who, taxon_id, taxon_no, count(*) AS records FROM share_records WHERE recorder <> '' GROUP BY ALL
  UNION ALL
  SELECT 'source', source, taxon_id, taxon_no, count(*) FROM share_records WHERE source IN (SELECT source FROM compared_sources) GROUP BY ALL
),
scarce AS (
  SELECT taxon_no FROM share_records GROUP BY taxon_no HAVING count(*) < {scarce_below} * (SELECT count(*) FROM share_records)
)
SELECT dense_rank() OVER (ORDER BY kind, who)::INTEGER AS set_no, kind, who, taxon_id, taxon_no
FROM pairs JOIN scarce USING (taxon_no)
WHERE records >= {minimum_records};

CREATE OR REPLACE TABLE set_counts AS
WITH counted AS (SELECT recorder, source, taxon_no, square_id, slab, count(*)::INTEGER AS records FROM share_records GROUP BY ALL),
sets AS (SELECT DISTINCT set_no, kind, who FROM tried_sets),
cells AS (
  SELECT s.set_no, c.taxon_no, c.square_id, c.slab, sum(c.records)::INTEGER AS records
  FROM counted AS c JOIN sets AS s ON s.who = c.recorder WHERE s.kind = 'recorder' GROUP BY s.set_no, c.taxon_no, c.square_id, c.slab
  UNION ALL
  SELECT s.set_no, c.taxon_no, c.square_id, c.slab, sum(c.records)::INTEGER
  FROM counted AS c JOIN sets AS s ON s.who = c.source WHERE s.kind = 'source' GROUP BY s.set_no, c.taxon_no, c.square_id, c.slab
)
SELECT set_no, 0 AS taxon_no, square_id, slab, sum(records)::INTEGER AS records FROM cells GROUP BY set_no, square_id, slab
UNION ALL
SELECT c.* FROM cells AS c JOIN tried_sets USING (set_no, taxon_no);

-- Everybody's records around every square, and the set's own around its own squares.
CREATE OR REPLACE TABLE around_all AS
WITH here AS (SELECT taxon_no, square_id, slab, count(*)::INTEGER AS records FROM share_records GROUP BY ALL),
counted AS (
  SELECT 0 AS taxon_no, square_id, slab, sum(records)::INTEGER AS records FROM here GROUP BY square_id, slab
  UNION ALL SELECT * FROM here WHERE taxon_no IN (SELECT taxon_no FROM tried_sets)
),
windowed AS (
  SELECT taxon_no, square_id, slab + near.by AS slab, sum(records)::INTEGER AS records
  FROM counted CROSS JOIN (SELECT unnest([-1, 0, 1]) AS by) AS near GROUP BY ALL
)
SELECT w.taxon_no, n.other_id AS square_id, w.slab, sum(w.records)::INTEGER AS records
FROM windowed AS w JOIN neighbouring_squares AS n USING (square_id)
GROUP BY w.taxon_no, n.other_id, w.slab;

CREATE OR REPLACE TABLE around_own AS
WITH windowed AS (
  SELECT set_no, taxon_no, square_id, slab + near.by AS slab, sum(records)::INTEGER AS records
  FROM set_counts CROSS JOIN (SELECT unnest([-1, 0, 1]) AS by) AS near GROUP BY ALL
),
around AS (
  SELECT p.set_no, p.square_id, p.slab, n.other_id
  FROM set_counts AS p JOIN neighbouring_squares AS n USING (square_id) WHERE p.taxon_no = 0
)
SELECT a.set_no, w.taxon_no, a.square_id, a.slab, sum(w.records)::INTEGER AS records
FROM around AS a
JOIN windowed AS w ON w.set_no = a.set_no AND w.square_id = a.other_id AND w.slab = a.slab
GROUP BY a.set_no, w.taxon_no, a.square_id, a.slab;

CREATE OR REPLACE TABLE set_shares AS
WITH others AS (
  SELECT o.*, a.records - m.records AS others
  FROM set_counts AS o
  JOIN around_all AS a USING (taxon_no, square_id, slab)
  JOIN around_own AS m USING (set_no, taxon_no, square_id, slab)
  WHERE o.taxon_no = 0 AND a.records - m.records >= {minimum_others}
)
SELECT t.kind, t.who, t.taxon_id, sum(o.records)::INTEGER AS records, coalesce(sum(c.records), 0)::INTEGER AS of_taxon,
  sum((o.records * (coalesce(a.records, 0) - coalesce(m.records, 0)) / o.others)::DECIMAL(18, 6))::DOUBLE / sum(o.records) AS expected
FROM tried_sets AS t
JOIN others AS o ON o.set_no = t.set_no
LEFT JOIN set_counts AS c ON c.set_no = t.set_no AND c.taxon_no = t.taxon_no AND c.square_id = o.square_id AND c.slab = o.slab
LEFT JOIN around_all AS a ON a.taxon_no = t.taxon_no AND a.square_id = o.square_id AND a.slab = o.slab
LEFT JOIN around_own AS m ON m.set_no = t.set_no AND m.taxon_no = t.taxon_no AND m.square_id = o.square_id AND m.slab = o.slab
GROUP BY t.kind, t.who, t.taxon_id
HAVING coalesce(sum(c.records), 0) >= {minimum_records};
