-- What everybody reported where and when, as the neighbourhood model counts it.
-- A visit is one place, one recorder and one date as written. Nameless records of a taxon in a square on one date are one
-- look, and a named person's where a named record says the same: they are likely that record by another route.
-- A confirmed record is nobody's own: it speaks for itself, as loud as {independent} people.
-- Reports of a member count for its aggregates too, never the other way. Surveys for one taxon are no effort for others.
-- In: interpreted_records, review_squares, review_taxa (taxon_no, taxon_id), counts_for (taxon_no, for_no),
-- confirmed_records (record_no), target_sources (source). Out: observations (one row a record), support (taxon_no,
-- square_id, slab, supporter, weight, reports), effort (square_id, slab, supporter, visits), taxon_reports (taxon_no,
-- reports, visits of all), region_support (taxon_no, territory, visits): taxa that one person alone reported in a territory,
-- and the visits others had made there by the end of the slab of the first report.
-- A slab is {years} calendar years.
CREATE OR REPLACE TABLE observations AS
WITH placed AS (
  SELECT r.record_no, t.taxon_no, q.square_id, r.territory, r.first_year // {years} AS slab, r.first_day, r.last_day,
    hash(r.visit_place, r.first_day, r.last_day) AS visit, r.source IN (SELECT source FROM target_sources) AS targeted,
    nullif(r.recorder, '') AS recorder, c.record_no IS NOT NULL AS confirmed
  FROM interpreted_records AS r
  JOIN review_taxa AS t USING (taxon_id)
  JOIN review_squares AS q ON q.grid = r.grid AND q.hectad = r.hectad
  LEFT JOIN confirmed_records AS c USING (record_no)
  WHERE r.status IN ('used', 'held') AND r.present AND r.first_year // {years} = r.last_year // {years}
),
named AS (
  SELECT taxon_no, square_id, first_day, last_day, min(recorder) AS recorder
  FROM placed WHERE recorder IS NOT NULL GROUP BY taxon_no, square_id, first_day, last_day
)
SELECT p.record_no, p.taxon_no, p.square_id, p.territory, p.slab, p.visit, p.targeted, p.confirmed,
  CASE
    WHEN p.confirmed THEN hash('confirmed', p.record_no)
    WHEN p.recorder IS NOT NULL THEN hash('named', p.recorder)
    WHEN n.recorder IS NOT NULL THEN hash('named', n.recorder)
    ELSE hash('nameless', p.square_id, p.first_day)
  END AS supporter
FROM placed AS p
LEFT JOIN named AS n
  ON n.taxon_no = p.taxon_no AND n.square_id = p.square_id AND n.first_day = p.first_day AND n.last_day = p.last_day;

CREATE OR REPLACE TABLE support AS
SELECT c.for_no AS taxon_no, o.square_id, o.slab, o.supporter,
  max(CASE WHEN o.confirmed THEN {independent} ELSE 1 END) AS weight, count(DISTINCT o.visit) AS reports
FROM observations AS o JOIN counts_for AS c USING (taxon_no)
GROUP BY c.for_no, o.square_id, o.slab, o.supporter;

CREATE OR REPLACE TABLE effort AS
SELECT square_id, slab, supporter, count(DISTINCT visit) AS visits
FROM observations WHERE NOT targeted
GROUP BY square_id, slab, supporter;

CREATE OR REPLACE TABLE taxon_reports AS
SELECT taxon_no, sum(reports) AS reports, (SELECT sum(visits) FROM effort) AS visits FROM support GROUP BY taxon_no;

CREATE OR REPLACE TABLE region_support AS
WITH squares AS (SELECT square_id, min(territory) AS territory FROM observations GROUP BY square_id),
firsts AS (
  SELECT s.taxon_no, q.territory, min(s.supporter) AS supporter, min(s.slab) AS slab
  FROM support AS s JOIN squares AS q USING (square_id)
  GROUP BY s.taxon_no, q.territory HAVING min(s.supporter) = max(s.supporter) AND max(s.weight) = 1
),
made AS (
  SELECT q.territory, e.slab, e.supporter, sum(e.visits) AS visits
  FROM effort AS e JOIN squares AS q USING (square_id) GROUP BY ALL
),
made_by_all AS (SELECT territory, slab, sum(visits) AS visits FROM made GROUP BY ALL),
by_all AS (
  SELECT f.taxon_no, f.territory, sum(m.visits) AS visits
  FROM firsts AS f JOIN made_by_all AS m ON m.territory = f.territory AND m.slab <= f.slab GROUP BY ALL
),
own AS (
  SELECT f.taxon_no, f.territory, sum(m.visits) AS visits
  FROM firsts AS f JOIN made AS m ON m.territory = f.territory AND m.supporter = f.supporter AND m.slab <= f.slab GROUP BY ALL
)
SELECT f.taxon_no, f.territory, coalesce(a.visits, 0) - coalesce(o.visits, 0) AS visits
FROM firsts AS f
LEFT JOIN by_all AS a USING (taxon_no, territory)
LEFT JOIN own AS o USING (taxon_no, territory);
