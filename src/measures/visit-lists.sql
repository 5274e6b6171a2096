-- What each visit amounts to: how many taxa it named, whether it was declared to be a complete list, and its class: that
-- of its most ordinary source. A list is complete where any of its records says so, unless it is of a survey for one taxon.
-- In: sightings, visits, list_lengths (visit, list_length; lists whose names hold one another). Out: visit_lists (one row a
-- visit), and the view evidence: sightings beside what their visit amounts to.
CREATE OR REPLACE TABLE visit_lists AS
WITH named AS (
  SELECT visit, count(DISTINCT taxon_id) FILTER (present) AS names, bool_or(complete) AS complete,
    min(CASE class WHEN 'everyday' THEN 0 WHEN 'mass_event' THEN 1 WHEN 'targeted' THEN 2 ELSE 3 END) AS class
  FROM sightings WHERE visit IS NOT NULL GROUP BY visit
)
SELECT v.visit, v.period, v.year, v.first_day AS day, v.generalised,
  coalesce(l.list_length, n.names)::INTEGER AS list_length,
  n.complete AND n.class < 2 AND NOT v.generalised AS complete,
  ['everyday', 'mass_event', 'targeted', 'lot'][n.class + 1] AS class
FROM visits AS v
JOIN named AS n USING (visit)
LEFT JOIN list_lengths AS l USING (visit);

CREATE OR REPLACE VIEW evidence AS
SELECT s.*, l.list_length, l.complete AS complete_list, l.class AS visit_class
FROM sightings AS s LEFT JOIN visit_lists AS l USING (visit);
