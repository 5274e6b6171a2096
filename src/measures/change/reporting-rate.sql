-- The lists by which the reporting rate of a set of evidence is told: the visits of the set that were declared complete,
-- and for every taxon those that bear on it, because they name it or what stands above or below it.
-- In: evidence, set_evidence, visit_lists, visit_squares, list_lengths, lineage, closure. The visits are rate_visits (visit, provisional).
-- Out: rate_lists (visit, square_no, period, year, day_of_year, list_length, provisional), rate_named (taxon_id, visit, found, others: taxa the
-- list names beside the taxon and its lineage, null where names hold one another), rate_tangled (taxon_id, visit, names: those others).
CREATE OR REPLACE TABLE rate_lists AS
WITH placed AS (
  SELECT visit, min(grid || ' ' || square) AS square
  FROM visit_squares WHERE resolution_m = 10000 GROUP BY visit
)
SELECT l.visit, dense_rank() OVER (ORDER BY p.square) - 1 AS square_no, p.square, l.period, l.year,
  dayofyear(DATE '1970-01-01' + l.day) AS day_of_year, l.list_length, r.provisional
FROM rate_visits AS r JOIN visit_lists AS l USING (visit) JOIN placed AS p USING (visit)
WHERE l.complete AND l.list_length > 0;

CREATE OR REPLACE TABLE rate_names AS
SELECT DISTINCT visit, taxon_id FROM evidence WHERE present AND visit IN (SELECT visit FROM rate_lists);

CREATE OR REPLACE TABLE rate_named AS
WITH touched AS (
  SELECT l.of_taxon AS taxon_id, n.visit, count(*) AS of_lineage
  FROM rate_names AS n JOIN lineage AS l ON l.taxon_id = n.taxon_id GROUP BY l.of_taxon, n.visit
),
found AS (
  SELECT DISTINCT c.counts_for AS taxon_id, s.visit
  FROM set_evidence AS s JOIN closure AS c ON c.taxon_id = s.taxon_id
  WHERE s.present AND s.visit IN (SELECT visit FROM rate_lists)
)
SELECT t.taxon_id, t.visit, f.visit IS NOT NULL AS found,
  CASE WHEN g.visit IS NULL THEN l.list_length - t.of_lineage END AS others
FROM touched AS t
JOIN rate_lists AS l ON l.visit = t.visit
LEFT JOIN found AS f ON f.taxon_id = t.taxon_id AND f.visit = t.visit
LEFT JOIN list_lengths AS g ON g.visit = t.visit;

CREATE OR REPLACE TABLE rate_tangled AS
SELECT r.taxon_id, r.visit, coalesce(string_agg(n.taxon_id, chr(31) ORDER BY n.taxon_id) FILTER (l.taxon_id IS NULL), '') AS names
FROM (SELECT taxon_id, visit FROM rate_named WHERE others IS NULL) AS r
JOIN rate_names AS n ON n.visit = r.visit
LEFT JOIN lineage AS l ON l.of_taxon = r.taxon_id AND l.taxon_id = n.taxon_id
GROUP BY r.taxon_id, r.visit;
