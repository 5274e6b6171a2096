-- Sets of records, by recorder and by source, counted in each square and block of {years} years, with how many are of each
-- scarce taxon, and everybody's records. Specimens and literature are no sets (collectors kept what is scarce), nor are
-- surveys for one taxon.
-- In: interpreted_records, names, review_squares, single_taxon_sources (source), compared_sources (source).
-- Out: share_records, tried_sets (set_no, kind, who, taxon_id, taxon_no), set_counts (set_no, taxon_no, square_id, slab, records),
-- all_counts (taxon_no, square_id, slab, records). Taxon 0 stands for all taxa together.
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

CREATE OR REPLACE TABLE all_counts AS
WITH here AS (SELECT taxon_no, square_id, slab, count(*)::INTEGER AS records FROM share_records GROUP BY ALL)
SELECT 0 AS taxon_no, square_id, slab, sum(records)::INTEGER AS records FROM here GROUP BY square_id, slab
UNION ALL
SELECT * FROM here WHERE taxon_no IN (SELECT taxon_no FROM tried_sets);
