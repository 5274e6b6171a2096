-- The complete lists of a set of evidence, and for every taxon those that bear on it, because they name it or what stands
-- above or below it.
-- In: set_of_rate (view: rows of evidence that belong to the set, with the number of their list), rate_outings, rate_names,
-- rate_lengths, list_sizes (list, list_length), visit_lists, lineage, closure.
-- Out: rate_lists (list, square, square_no, period, year, day_of_year, list_length, provisional), rate_named (taxon_id, list,
-- found, others: taxa the list names beside the taxon and its lineage, null where names hold one another), rate_tangled
-- (taxon_id, list, names: those others).
CREATE OR REPLACE TABLE rate_lists AS
WITH held AS (SELECT list, bool_or(provisional) AS provisional FROM set_of_rate GROUP BY list)
SELECT h.list, o.square, (dense_rank() OVER (ORDER BY o.square) - 1)::INTEGER AS square_no, l.period, l.year,
  dayofyear(DATE '1970-01-01' + l.day)::INTEGER AS day_of_year, z.list_length, h.provisional
FROM held AS h
JOIN rate_outings AS o ON o.visit = h.list
JOIN visit_lists AS l ON l.visit = h.list
JOIN list_sizes AS z ON z.list = h.list;

CREATE OR REPLACE TABLE rate_named AS
WITH touched AS (
  SELECT l.of_taxon AS taxon_id, n.list, count(*)::INTEGER AS of_lineage
  FROM rate_names AS n JOIN lineage AS l ON l.taxon_id = n.taxon_id GROUP BY l.of_taxon, n.list
),
found AS (
  SELECT DISTINCT c.counts_for AS taxon_id, s.list
  FROM set_of_rate AS s JOIN closure AS c ON c.taxon_id = s.taxon_id WHERE s.present
)
SELECT t.taxon_id, t.list, f.list IS NOT NULL AS found,
  CASE WHEN z.all_names IS NULL THEN l.list_length - t.of_lineage END AS others
FROM touched AS t
JOIN rate_lists AS l ON l.list = t.list
JOIN rate_lengths AS z ON z.list = t.list
LEFT JOIN found AS f ON f.taxon_id = t.taxon_id AND f.list = t.list;

CREATE OR REPLACE TABLE rate_tangled AS
SELECT r.taxon_id, r.list, coalesce(string_agg(n.taxon_id, chr(31) ORDER BY n.taxon_id) FILTER (l.taxon_id IS NULL), '') AS names
FROM (SELECT taxon_id, list FROM rate_named WHERE others IS NULL) AS r
JOIN rate_names AS n ON n.list = r.list
LEFT JOIN lineage AS l ON l.of_taxon = r.taxon_id AND l.taxon_id = n.taxon_id
GROUP BY r.taxon_id, r.list;
