-- Flight period in thirds of the month: records and visits of each taxon and caste, and visits to the group.
-- A record enters only if its whole date lies in one third; the rest is counted beside. Specimens, literature and finds of
-- nests do not: a date on a label says when it was caught or found, not when its kind is about.
-- A record of several castes counts once for each of them. 'not_stated' is a class of its own.
-- In: evidence, closure, kind_castes, record_surroundings, nest_kinds (kind). Out: season_evidence (view),
-- taxon_season, season_left_out, season_effort, season_all.
CREATE OR REPLACE TABLE nest_finds AS SELECT DISTINCT record_no FROM record_surroundings JOIN nest_kinds USING (kind);

CREATE OR REPLACE VIEW season_evidence AS
SELECT e.*, e.class = 'lot' OR n.record_no IS NOT NULL AS of_no_season
FROM evidence AS e LEFT JOIN nest_finds AS n USING (record_no);

CREATE OR REPLACE TABLE taxon_season AS
SELECT c.counts_for AS taxon_id, k.caste, s.third, count(DISTINCT s.record_no) AS records, count(DISTINCT s.visit) AS visits
FROM season_evidence AS s JOIN closure AS c USING (taxon_id) JOIN kind_castes AS k USING (kind_id)
WHERE s.present AND NOT s.of_no_season AND s.third IS NOT NULL
GROUP BY c.counts_for, k.caste, s.third;

CREATE OR REPLACE TABLE season_left_out AS
SELECT c.counts_for AS taxon_id, k.caste, count(DISTINCT s.record_no) AS records
FROM season_evidence AS s JOIN closure AS c USING (taxon_id) JOIN kind_castes AS k USING (kind_id)
WHERE s.present AND NOT s.of_no_season AND s.third IS NULL
GROUP BY c.counts_for, k.caste;

CREATE OR REPLACE TABLE season_all AS
SELECT c.counts_for AS taxon_id, s.third, count(*) AS records
FROM season_evidence AS s JOIN closure AS c USING (taxon_id)
WHERE s.present AND NOT s.of_no_season AND s.third IS NOT NULL
GROUP BY c.counts_for, s.third;

CREATE OR REPLACE TABLE season_effort AS
SELECT v.third, count(*) AS visits
FROM visits AS v JOIN visit_lists AS l USING (visit)
WHERE v.third IS NOT NULL AND l.class <> 'lot'
GROUP BY v.third;
