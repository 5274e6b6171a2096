-- When each taxon is recorded, by the caste stated and by latitude, and how many days each date lies outside.
-- The year is cut opposite the circular mean of a group's days, so that winter is no edge. A bound is the day with {percent} %
-- of the group's records before (after) it, and never one of the outermost two: no record bounds itself, nor do two that
-- share a slip. A date is measured against the narrowest group with {minimum} records: caste and latitude, caste, taxon and
-- latitude, taxon.
-- In: interpreted_records, places, review_taxa, counts_for. Out: record_days (record_no, taxon_no, caste, band, day,
-- visit), days_outside (taxon_no, caste, band, day, outside: negative before the season, bound: day of the year, records and
-- season_caste of the group it is measured against, and how many of them lie beyond that bound), season_weeks (taxon_no, band, week, and visits and reports in that
-- week and the two before and after it, and in all weeks).
-- A band is two degrees of latitude.
CREATE OR REPLACE TABLE record_days AS
SELECT r.record_no, t.taxon_no, CASE WHEN contains(r.castes, '|') THEN '' ELSE r.castes END AS caste,
  floor(p.latitude / 2)::INTEGER AS band, dayofyear(DATE '1970-01-01' + r.first_day)::INTEGER AS day,
  hash(r.visit_place, r.first_day, r.recorder) AS visit
FROM interpreted_records AS r
JOIN review_taxa AS t USING (taxon_id)
JOIN places AS p USING (place_id)
WHERE r.status IN ('used', 'held') AND r.present AND r.first_day = r.last_day;

CREATE OR REPLACE TABLE season_counts AS
WITH counted AS (SELECT taxon_no, caste, band, day, count(*) AS records FROM record_days GROUP BY ALL),
raised AS (SELECT c.for_no AS taxon_no, n.caste, n.band, n.day, n.records FROM counted AS n JOIN counts_for AS c USING (taxon_no)),
grouped AS (
  SELECT taxon_no, caste, band, day, records FROM raised WHERE caste <> ''
  UNION ALL SELECT taxon_no, caste, NULL, day, records FROM raised WHERE caste <> ''
  UNION ALL SELECT taxon_no, '', band, day, records FROM raised
  UNION ALL SELECT taxon_no, '', NULL, day, records FROM raised
)
SELECT taxon_no, caste, coalesce(band, 999) AS band, day, sum(records) AS records FROM grouped GROUP BY ALL;

CREATE OR REPLACE TABLE season_bounds AS
WITH middles AS (
  SELECT taxon_no, caste, band, sum(records) AS records,
    round(atan2(sum(records * round(1e6 * sin(day * 2 * pi() / 366))::BIGINT), sum(records * round(1e6 * cos(day * 2 * pi() / 366))::BIGINT)) * 366 / (2 * pi()))::INTEGER AS middle
  FROM season_counts GROUP BY taxon_no, caste, band HAVING sum(records) >= {minimum}
),
turned AS (
  SELECT s.taxon_no, s.caste, s.band, m.middle, m.records AS total, s.records,
    (s.day - m.middle + 549) % 366 - 183 AS away, greatest(3, ceil(m.records * {percent} / 100.0)) AS beyond
  FROM season_counts AS s JOIN middles AS m USING (taxon_no, caste, band)
),
summed AS (
  SELECT *, sum(records) OVER (PARTITION BY taxon_no, caste, band ORDER BY away) AS up_to,
    sum(records) OVER (PARTITION BY taxon_no, caste, band ORDER BY away DESC) AS from_there
  FROM turned
)
SELECT taxon_no, caste, band, any_value(middle) AS middle, any_value(total) AS records,
  min(away) FILTER (up_to >= beyond) AS first_away, max(away) FILTER (from_there >= beyond) AS last_away,
  coalesce(max(up_to) FILTER (up_to < beyond), 0)::INTEGER AS before_first, coalesce(max(from_there) FILTER (from_there < beyond), 0)::INTEGER AS after_last
FROM summed GROUP BY taxon_no, caste, band;

CREATE OR REPLACE TABLE days_outside AS
WITH asked AS (SELECT DISTINCT taxon_no, caste, band, day FROM record_days),
measured AS (
  SELECT a.*,
    CASE
      WHEN a.caste <> '' AND cb.taxon_no IS NOT NULL THEN {'middle': cb.middle, 'first': cb.first_away, 'last': cb.last_away, 'before': cb.before_first, 'after': cb.after_last, 'records': cb.records, 'caste': a.caste}
      WHEN a.caste <> '' AND c.taxon_no IS NOT NULL THEN {'middle': c.middle, 'first': c.first_away, 'last': c.last_away, 'before': c.before_first, 'after': c.after_last, 'records': c.records, 'caste': a.caste}
      WHEN tb.taxon_no IS NOT NULL THEN {'middle': tb.middle, 'first': tb.first_away, 'last': tb.last_away, 'before': tb.before_first, 'after': tb.after_last, 'records': tb.records, 'caste': ''}
      WHEN t.taxon_no IS NOT NULL THEN {'middle': t.middle, 'first': t.first_away, 'last': t.last_away, 'before': t.before_first, 'after': t.after_last, 'records': t.records, 'caste': ''}
    END AS season
  FROM asked AS a
  LEFT JOIN season_bounds AS cb ON cb.taxon_no = a.taxon_no AND cb.caste = a.caste AND cb.band = a.band
  LEFT JOIN season_bounds AS c ON c.taxon_no = a.taxon_no AND c.caste = a.caste AND c.band = 999
  LEFT JOIN season_bounds AS tb ON tb.taxon_no = a.taxon_no AND tb.caste = '' AND tb.band = a.band
  LEFT JOIN season_bounds AS t ON t.taxon_no = a.taxon_no AND t.caste = '' AND t.band = 999
),
turned AS (SELECT *, (day - season.middle + 549) % 366 - 183 AS away FROM measured WHERE season IS NOT NULL)
SELECT taxon_no, caste, band, day, season.records::INTEGER AS records, season.caste AS season_caste,
  CASE WHEN away < season.first THEN away - season.first WHEN away > season.last THEN away - season.last ELSE 0 END AS outside,
  CASE WHEN away < season.first THEN season.before ELSE season.after END AS beyond,
  (CASE WHEN away < season.first THEN season.first ELSE season.last END + season.middle + 731) % 366 + 1 AS bound
FROM turned;

CREATE OR REPLACE TABLE season_weeks AS
WITH visited AS (SELECT band, (day - 1) // 7 AS week, count(DISTINCT visit) AS visits FROM record_days GROUP BY ALL),
reported AS (
  SELECT c.for_no AS taxon_no, d.band, (d.day - 1) // 7 AS week, count(DISTINCT d.visit) AS reports
  FROM record_days AS d JOIN counts_for AS c USING (taxon_no) GROUP BY ALL
),
near AS (SELECT unnest([-2, -1, 0, 1, 2]) AS by),
visits_near AS (SELECT band, (week + n.by + 53) % 53 AS week, sum(visits) AS visits FROM visited CROSS JOIN near AS n GROUP BY ALL),
reports_near AS (
  SELECT taxon_no, band, (week + n.by + 53) % 53 AS week, sum(reports) AS reports FROM reported CROSS JOIN near AS n GROUP BY ALL
),
visits_in_all AS (SELECT band, sum(visits) AS visits FROM visited GROUP BY band),
reports_in_all AS (SELECT taxon_no, band, sum(reports) AS reports FROM reported GROUP BY ALL)
SELECT r.taxon_no, r.band, r.week::INTEGER AS week, v.visits::INTEGER AS visits, r.reports::INTEGER AS reports,
  va.visits::INTEGER AS all_visits, ra.reports::INTEGER AS all_reports
FROM reports_near AS r
JOIN visits_near AS v USING (band, week)
JOIN visits_in_all AS va USING (band)
JOIN reports_in_all AS ra USING (taxon_no, band);
