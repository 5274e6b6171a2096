-- Days of the season. A record enters only if its whole date is one day, and is no specimen, literature or find of a nest.
-- Days count from 1 January, 1 to 365, 29 February with the 28th; those before the month the year of a season begins with
-- belong to the year before and count on, from 366. 'all' is every caste together; a record of several counts once there.
-- A visit of which a taxon has several records counts once; its place is its 10 km square, as shown, in half degrees.
-- Whole numbers only, so that any number of threads gives the same.
-- In: season_evidence, closure, kind_castes, square_places, season_start (first_day: 1 to 335).
-- Out: season_days (taxon, caste, territory, period, day: records, visits, and sums of squares over dates), season_omitted,
-- season_visits (visits to the group; of the everyday ones those that state a caste of anything), season_settled (what a shift is told from: settled years, everyday recording).
CREATE OR REPLACE TEMP TABLE season_castes AS
SELECT kind_id, caste FROM kind_castes UNION ALL SELECT DISTINCT kind_id, 'all' FROM kind_castes;

CREATE OR REPLACE TEMP TABLE calendar AS
WITH dates AS (SELECT DISTINCT day, DATE '1970-01-01' + day AS date FROM season_evidence WHERE day IS NOT NULL),
counted AS (
  SELECT day, year(date) AS year,
    dayofyear(date) - CASE WHEN dayofyear(date) > 59 AND dayofyear(make_date(year(date), 12, 31)) = 366 THEN 1 ELSE 0 END AS of_year
  FROM dates
)
SELECT day, (year - CASE WHEN of_year < first_day THEN 1 ELSE 0 END)::INTEGER AS season_year,
  (of_year + CASE WHEN of_year < first_day THEN 365 ELSE 0 END)::INTEGER AS season_day
FROM counted CROSS JOIN season_start;

CREATE OR REPLACE TEMP TABLE season_units AS
SELECT c.counts_for AS taxon_id, k.caste, e.visit, min(e.day) AS day, count(*) AS records,
  min(e.territory) AS territory, min(e.period) AS period, min(floor(2 * p.latitude)::INTEGER) AS band,
  bool_or(e.class = 'everyday' AND e.established AND NOT e.provisional) AS settled
FROM season_evidence AS e
JOIN closure AS c USING (taxon_id)
JOIN season_castes AS k USING (kind_id)
LEFT JOIN square_places AS p ON p.grid = e.grid AND p.square = e.hectad AND p.resolution_m = 10000
WHERE e.present AND NOT e.of_no_season AND e.day IS NOT NULL
GROUP BY c.counts_for, k.caste, e.visit, CASE WHEN e.visit IS NULL THEN e.record_no END;

CREATE OR REPLACE TABLE season_days AS
WITH by_date AS (
  SELECT taxon_id, caste, coalesce(territory, '') AS territory, coalesce(period, -1) AS period, day,
    sum(records)::BIGINT AS records, count(visit) AS visits
  FROM season_units GROUP BY ALL
)
SELECT d.taxon_id, d.caste, d.territory, d.period, c.season_day, sum(d.records)::BIGINT AS records, sum(d.visits)::BIGINT AS visits,
  sum(d.records * d.records)::BIGINT AS record_squares, sum(d.visits * d.visits)::BIGINT AS visit_squares,
  count(*) AS record_dates, count(*) FILTER (d.visits > 0) AS visit_dates
FROM by_date AS d JOIN calendar AS c USING (day)
GROUP BY ALL;

CREATE OR REPLACE TABLE season_omitted AS
SELECT c.counts_for AS taxon_id, k.caste, coalesce(e.territory, '') AS territory, coalesce(e.period, -1) AS period,
  count(*) FILTER (NOT e.of_no_season) AS vague, count(*) FILTER (e.of_no_season) AS of_no_season
FROM season_evidence AS e JOIN closure AS c USING (taxon_id) JOIN season_castes AS k USING (kind_id)
WHERE e.present AND (e.of_no_season OR e.day IS NULL)
GROUP BY ALL;

CREATE OR REPLACE TABLE season_visits AS
WITH each AS (
  SELECT e.visit, min(coalesce(e.territory, '')) AS territory, min(coalesce(e.period, -1)) AS period, min(e.third) AS third,
    min(e.day) AS day, any_value(e.visit_class) AS class, bool_or(e.present AND k.kind_id IS NOT NULL) AS states_caste
  FROM season_evidence AS e
  LEFT JOIN (SELECT DISTINCT kind_id FROM kind_castes WHERE caste <> 'not_stated') AS k USING (kind_id)
  WHERE e.visit IS NOT NULL AND e.visit_class <> 'lot' GROUP BY e.visit
)
SELECT e.territory, e.period, c.season_year, e.third, count(*) AS visits, count(*) FILTER (e.class = 'everyday') AS everyday,
  count(*) FILTER (e.class = 'everyday' AND e.states_caste) AS stating
FROM each AS e JOIN calendar AS c USING (day)
GROUP BY ALL;

CREATE OR REPLACE TABLE season_settled AS
SELECT u.taxon_id, u.caste, c.season_year, coalesce(u.territory, '') AS territory, u.band, c.season_day, count(*) AS visits
FROM season_units AS u JOIN calendar AS c USING (day)
WHERE u.settled AND u.visit IS NOT NULL
GROUP BY ALL;
DROP TABLE season_castes; DROP TABLE calendar; DROP TABLE season_units;
