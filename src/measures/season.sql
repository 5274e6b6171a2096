-- Flight period: records and visits of each taxon and caste in thirds of the month, and visits to the group.
-- A record enters only if its whole date lies in one third; the rest is counted beside.
-- A record of several castes counts once for each of them. 'not_stated' is a class of its own.
-- In: sightings, closure, kind_castes, visits. Out: taxon_season, season_left_out, season_effort, season_all.
CREATE OR REPLACE TABLE taxon_season AS
SELECT c.counts_for AS taxon_id, k.caste, s.third, count(DISTINCT s.record_no) AS records, count(DISTINCT s.visit) AS visits
FROM sightings AS s JOIN closure AS c USING (taxon_id) JOIN kind_castes AS k USING (kind_id)
WHERE s.present AND s.third IS NOT NULL
GROUP BY c.counts_for, k.caste, s.third;

CREATE OR REPLACE TABLE season_left_out AS
SELECT c.counts_for AS taxon_id, k.caste, count(DISTINCT s.record_no) AS records
FROM sightings AS s JOIN closure AS c USING (taxon_id) JOIN kind_castes AS k USING (kind_id)
WHERE s.present AND s.third IS NULL
GROUP BY c.counts_for, k.caste;

CREATE OR REPLACE TABLE season_all AS
SELECT c.counts_for AS taxon_id, s.third, count(*) AS records
FROM sightings AS s JOIN closure AS c USING (taxon_id)
WHERE s.present AND s.third IS NOT NULL
GROUP BY c.counts_for, s.third;

CREATE OR REPLACE TABLE season_effort AS
SELECT third, count(*) AS visits FROM visits WHERE third IS NOT NULL GROUP BY third;
