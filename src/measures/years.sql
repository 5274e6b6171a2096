-- Records and visits by year, for each taxon and in all. A record whose date spans years enters none.
-- In: sightings, closure, visits. Out: taxon_years, effort_years.
CREATE OR REPLACE TABLE taxon_years AS
SELECT c.counts_for AS taxon_id, s.first_year AS year, count(*) AS records, count(DISTINCT s.visit) AS visits
FROM sightings AS s JOIN closure AS c USING (taxon_id)
WHERE s.present AND s.first_year = s.last_year
GROUP BY c.counts_for, s.first_year;

CREATE OR REPLACE TABLE effort_years AS
SELECT s.first_year AS year, count(*) AS records, count(DISTINCT s.visit) AS visits
FROM sightings AS s
WHERE s.first_year = s.last_year
GROUP BY s.first_year;
