-- Complete lists as they were walked: the visits declared complete of one recorder, day and 10 km square are one list, for a
-- walk whose places were written more finely falls into more visits, each of which names fewer of the taxa it met. Visits
-- without a recorder stay apart. A list whose visits have no 10 km square is none.
-- In: visit_lists, visits, visit_squares, sightings, closure. Out: rate_outings (visit, list, square: grid and code), rate_names
-- (list, taxon_id: all names on it), rate_lengths (list, names: how many; all_names: the names, where some hold one another).
CREATE OR REPLACE TABLE rate_outings AS
WITH placed AS (
  SELECT visit, min(grid || ' ' || square) AS square FROM visit_squares WHERE resolution_m = 10000 GROUP BY visit
)
SELECT l.visit, p.square,
  min(l.visit) OVER (PARTITION BY p.square, l.day, CASE WHEN v.recorder = '' THEN l.visit END, v.recorder) AS list
FROM visit_lists AS l JOIN placed AS p USING (visit) JOIN visits AS v USING (visit)
WHERE l.complete;

CREATE OR REPLACE TABLE rate_names AS
SELECT DISTINCT o.list, s.taxon_id FROM sightings AS s JOIN rate_outings AS o USING (visit) WHERE s.present;

CREATE OR REPLACE TABLE rate_lengths AS
SELECT list, count(*)::INTEGER AS names,
  CASE WHEN count(*) > 1 AND bool_or(taxon_id IN (SELECT counts_for FROM closure WHERE counts_for <> taxon_id))
    THEN string_agg(taxon_id, chr(31) ORDER BY taxon_id) END AS all_names
FROM rate_names GROUP BY list;
