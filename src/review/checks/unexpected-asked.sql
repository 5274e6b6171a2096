-- The records that are unexpected, with the numbers of each reason. A confirmed record is not asked about, and what an
-- earlier check asked of a record's place or date is not asked again: one look at it settles both.
-- In: observations, record_days, doubtful_places, place_shares (place_no, share, visits, reports, nowhere), season_factors
-- (taxon_no, band, week, factor), days_outside, region_support, window_support, neighbouring_squares, record_evidence, review_taxa
-- (taxon_no, taxon_id, all_year),
-- quiet_records (record_no: says nothing of season), review_findings. Out: unexpected_records.
CREATE OR REPLACE TABLE unexpected_records AS
WITH placed AS (
  SELECT o.record_no, o.taxon_no, o.square_id, o.slab, o.territory, p.place_no, s.share, s.visits, s.reports, s.nowhere, r.visits AS region_visits,
    coalesce(r.visits >= {first_after}, false) AS first
  FROM observations AS o
  LEFT JOIN doubtful_places AS p USING (taxon_no, square_id, slab, supporter)
  LEFT JOIN place_shares AS s USING (place_no)
  LEFT JOIN region_support AS r ON r.taxon_no = o.taxon_no AND r.territory = o.territory
  WHERE NOT o.confirmed
),
dated AS (
  SELECT d.record_no, d.taxon_no, d.caste, d.band, d.day, x.outside, x.bound, x.beyond, x.records, x.season_caste, coalesce(w.factor, 1) AS factor
  FROM record_days AS d
  LEFT JOIN days_outside AS x USING (taxon_no, caste, band, day)
  LEFT JOIN season_factors AS w ON w.taxon_no = d.taxon_no AND w.band = d.band AND w.week = (d.day - 1) // 7
),
asked_before AS (
  SELECT record_no, bool_or(field IN ('gridReference', 'decimalLatitude', 'easting')) AS place, bool_or(field = 'eventDate') AS date
  FROM review_findings WHERE severity <> 'note' GROUP BY record_no
),
reasons AS (
  SELECT coalesce(p.record_no, d.record_no) AS record_no, coalesce(p.taxon_no, d.taxon_no) AS taxon_no, p.* EXCLUDE (record_no, taxon_no),
    d.* EXCLUDE (record_no, taxon_no),
    p.share IS NOT NULL AND p.share * coalesce(d.factor, 1) < 1.0 / {one_visit_in} AS far,
    abs(coalesce(d.outside, 0)) >= {season_days} AND d.record_no NOT IN (SELECT record_no FROM quiet_records) AS off_season
  FROM placed AS p FULL JOIN dated AS d USING (record_no)
)
SELECT r.*, t.taxon_id, t.all_year, coalesce(r.caste, '') AS stated_caste, e.level, e.part_seen
FROM reasons AS r
JOIN review_taxa AS t USING (taxon_no)
JOIN record_evidence AS e USING (record_no)
LEFT JOIN asked_before AS b USING (record_no)
WHERE ((r.far OR r.first) AND NOT coalesce(b.place, false) OR r.off_season AND NOT coalesce(b.date, false)) AND NOT e.confirmed
ORDER BY r.record_no;

-- How far the nearest square with the taxon is, by others and in those years: where it is said. First among the neighbours,
-- where most are, for all squares of a taxon are many. Tables of their own tell the engine their sizes, which it joins by.
CREATE OR REPLACE TABLE far_places AS
SELECT p.* FROM (SELECT DISTINCT place_no FROM unexpected_records WHERE far AND NOT nowhere) JOIN doubtful_places AS p USING (place_no);

CREATE OR REPLACE TABLE reported_squares AS
SELECT w.taxon_no, w.slab, w.square_id, min(w.supporter) AS one, max(w.supporter) AS other
FROM window_support AS w JOIN (SELECT DISTINCT taxon_no, slab FROM far_places) USING (taxon_no, slab)
GROUP BY w.taxon_no, w.slab, w.square_id;

CREATE OR REPLACE TABLE nearest_squares AS
SELECT a.place_no, min(n.km) AS km
FROM far_places AS a
JOIN neighbouring_squares AS n USING (square_id)
JOIN reported_squares AS r ON r.taxon_no = a.taxon_no AND r.slab = a.slab AND r.square_id = n.other_id
WHERE r.one <> a.supporter OR r.other <> a.supporter
GROUP BY a.place_no;

DELETE FROM far_places WHERE place_no IN (SELECT place_no FROM nearest_squares);

INSERT INTO nearest_squares
SELECT a.place_no, min({diameter} * asin(sqrt((q.x - h.x) ** 2 + (q.y - h.y) ** 2 + (q.z - h.z) ** 2) / {diameter}))
FROM far_places AS a
JOIN reported_squares AS r ON r.taxon_no = a.taxon_no AND r.slab = a.slab
JOIN review_squares AS q ON q.square_id = r.square_id
JOIN review_squares AS h ON h.square_id = a.square_id
WHERE r.one <> a.supporter OR r.other <> a.supporter
GROUP BY a.place_no;
