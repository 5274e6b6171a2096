-- Records that share an id. Within one source the id is the record's own: the first that can be used counts. Between sources it
-- is the same record where taxon, days and castes agree as far as both say; where they do not, both count and are asked about.
-- Two sources that agree on fewer than half of the ids they share number their records each for itself: nothing is joined.
-- In: judged_records and the dictionaries. Out: twins (record_no, twin_of, how), id_disputes (record_no, other_no).
CREATE OR REPLACE TABLE id_members AS
SELECT
  j.record_no, j.source, j.occurrence_id, n.taxon_id, d.first_day, d.last_day, nullif(k.castes, '') AS castes,
  row_number() OVER (PARTITION BY j.occurrence_id, j.source ORDER BY j.set_aside IS NOT NULL, j.record_no) AS own_choice,
  row_number() OVER (PARTITION BY j.occurrence_id ORDER BY j.set_aside IS NOT NULL, j.record_no) AS choice
FROM judged_records AS j
JOIN (SELECT occurrence_id FROM judged_records WHERE occurrence_id IS NOT NULL GROUP BY occurrence_id HAVING count(*) > 1) AS i USING (occurrence_id)
JOIN names AS n USING (name_id)
JOIN dates AS d USING (date_id)
JOIN kinds AS k USING (kind_id);

CREATE OR REPLACE TABLE id_pairs AS
SELECT
  r.record_no, r.source, f.record_no AS other_no, f.source AS other_source,
  coalesce(r.taxon_id = f.taxon_id, true) AND coalesce(r.first_day = f.first_day AND r.last_day = f.last_day, true)
    AND coalesce(r.castes = f.castes, true) AS agrees
FROM id_members AS r
JOIN id_members AS f ON f.occurrence_id = r.occurrence_id AND f.choice = 1
WHERE r.source <> f.source AND r.own_choice = 1;

CREATE OR REPLACE TABLE sharing_sources AS
SELECT source, other_source FROM id_pairs GROUP BY source, other_source HAVING count(*) FILTER (agrees) * 2 >= count(*);

CREATE OR REPLACE TABLE id_disputes AS
SELECT p.record_no, p.other_no
FROM id_pairs AS p JOIN sharing_sources AS s ON s.source = p.source AND s.other_source = p.other_source
WHERE NOT p.agrees;

CREATE OR REPLACE TABLE twins AS
SELECT r.record_no, f.record_no AS twin_of, 'same id' AS how
FROM id_members AS r
JOIN id_members AS f ON f.occurrence_id = r.occurrence_id AND f.source = r.source AND f.own_choice = 1
WHERE r.own_choice > 1
UNION ALL
SELECT p.record_no, p.other_no, 'same id'
FROM id_pairs AS p JOIN sharing_sources AS s ON s.source = p.source AND s.other_source = p.other_source
WHERE p.agrees;
