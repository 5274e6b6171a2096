-- How often each term of surroundings (habitat, flower …) was stated with a taxon, and in all: use against what recorders
-- visited. A habitat is a visit's: whatever was met there counts for it, and what is counted are visits. A flower, a nest
-- site and a host are a record's own: what is counted are taxa on visits, each once, set against all taxa on all visits.
-- Only what states a term of that kind counts, of everyday recording: a survey or a museum lot chose its places by the
-- taxon. All is counted in clusters, 10 km squares, because visits to one square are alike.
-- Whole numbers only, so that any number of threads gives the same: the sums of squares and products of the clusters'
-- counts are what the interval is made from.
-- In: evidence, record_surroundings, surrounding_kinds (kind, of_visit), closure, kind_castes. Out: use_counts (taxon, caste,
-- kind, term with a, b, c, n and sums).
CREATE OR REPLACE TEMP TABLE saying AS
SELECT e.visit, e.taxon_id, e.kind_id, r.kind, r.term, k.of_visit,
  CASE WHEN k.of_visit THEN e.visit::VARCHAR ELSE e.visit || ' ' || e.taxon_id END AS unit,
  coalesce(min(e.grid || e.hectad) OVER (PARTITION BY e.visit), '') AS cluster
FROM evidence AS e
JOIN record_surroundings AS r USING (record_no)
JOIN surrounding_kinds AS k USING (kind)
WHERE e.visit IS NOT NULL AND e.visit_class = 'everyday' AND e.class = 'everyday' AND e.present;

CREATE OR REPLACE TEMP TABLE stated AS SELECT DISTINCT kind, term, unit, cluster FROM saying;

CREATE OR REPLACE TEMP TABLE seen AS
WITH own AS (
  SELECT kind, unit, taxon_id, kind_id FROM saying WHERE NOT of_visit
  UNION ALL
  SELECT v.kind, v.unit, e.taxon_id, e.kind_id
  FROM (SELECT DISTINCT kind, unit, visit FROM saying WHERE of_visit) AS v
  JOIN evidence AS e ON e.visit = v.visit AND e.present AND e.class = 'everyday'
),
named AS (
  SELECT DISTINCT o.kind, o.unit, c.counts_for AS taxon_id, k.caste
  FROM own AS o JOIN closure AS c USING (taxon_id) JOIN kind_castes AS k USING (kind_id)
)
SELECT kind, unit, taxon_id, caste FROM named WHERE caste <> 'not_stated'
UNION ALL
SELECT DISTINCT kind, unit, taxon_id, 'all' FROM named;

CREATE OR REPLACE TEMP TABLE n_of AS
SELECT kind, cluster, count(DISTINCT unit) AS n FROM stated GROUP BY kind, cluster;
CREATE OR REPLACE TEMP TABLE b_of AS
SELECT kind, term, cluster, count(*) AS b FROM stated GROUP BY kind, term, cluster;
CREATE OR REPLACE TEMP TABLE c_of AS
SELECT s.taxon_id, s.caste, s.kind, v.cluster, count(*) AS c
FROM seen AS s JOIN (SELECT DISTINCT unit, kind, cluster FROM stated) AS v USING (kind, unit)
GROUP BY s.taxon_id, s.caste, s.kind, v.cluster;
CREATE OR REPLACE TEMP TABLE a_of AS
SELECT s.taxon_id, s.caste, s.kind, v.term, v.cluster, count(*) AS a
FROM seen AS s JOIN stated AS v USING (kind, unit)
GROUP BY s.taxon_id, s.caste, s.kind, v.term, v.cluster;

CREATE OR REPLACE TABLE use_counts AS
WITH whole AS (SELECT kind, sum(n) AS n, sum(n * n) AS nn, count(*) AS clusters FROM n_of GROUP BY kind),
term AS (
  SELECT b.kind, b.term, sum(b.b) AS b, sum(b.b * b.b) AS bb, sum(b.b * n.n) AS bn
  FROM b_of AS b JOIN n_of AS n USING (kind, cluster) GROUP BY b.kind, b.term
),
taxon AS (
  SELECT c.taxon_id, c.caste, c.kind, sum(c.c) AS c, sum(c.c * c.c) AS cc, sum(c.c * n.n) AS cn
  FROM c_of AS c JOIN n_of AS n USING (kind, cluster) GROUP BY c.taxon_id, c.caste, c.kind
),
crossed AS (
  SELECT c.taxon_id, c.caste, b.kind, b.term, sum(b.b * c.c) AS bc
  FROM b_of AS b JOIN c_of AS c USING (kind, cluster) GROUP BY c.taxon_id, c.caste, b.kind, b.term
),
used AS (
  SELECT a.taxon_id, a.caste, a.kind, a.term, sum(a.a) AS a, sum(a.a * a.a) AS aa, sum(a.a * b.b) AS ab, sum(a.a * c.c) AS ac,
    sum(a.a * n.n) AS an
  FROM a_of AS a
  JOIN b_of AS b USING (kind, term, cluster)
  JOIN c_of AS c ON c.taxon_id = a.taxon_id AND c.caste = a.caste AND c.kind = a.kind AND c.cluster = a.cluster
  JOIN n_of AS n ON n.kind = a.kind AND n.cluster = a.cluster
  GROUP BY a.taxon_id, a.caste, a.kind, a.term
)
SELECT x.taxon_id, x.caste, x.kind, t.term,
  coalesce(u.a, 0)::BIGINT AS a, t.b::BIGINT AS b, x.c::BIGINT AS c, w.n::BIGINT AS n, w.clusters,
  coalesce(u.aa, 0)::BIGINT AS aa, coalesce(u.ab, 0)::BIGINT AS ab, coalesce(u.ac, 0)::BIGINT AS ac, coalesce(u.an, 0)::BIGINT AS an,
  t.bb::BIGINT AS bb, coalesce(r.bc, 0)::BIGINT AS bc, t.bn::BIGINT AS bn, x.cc::BIGINT AS cc, x.cn::BIGINT AS cn, w.nn::BIGINT AS nn
FROM taxon AS x
JOIN term AS t USING (kind)
JOIN whole AS w USING (kind)
LEFT JOIN crossed AS r ON r.taxon_id = x.taxon_id AND r.caste = x.caste AND r.kind = x.kind AND r.term = t.term
LEFT JOIN used AS u ON u.taxon_id = x.taxon_id AND u.caste = x.caste AND u.kind = x.kind AND u.term = t.term;
DROP TABLE saying; DROP TABLE stated; DROP TABLE seen; DROP TABLE n_of; DROP TABLE b_of; DROP TABLE c_of; DROP TABLE a_of;
