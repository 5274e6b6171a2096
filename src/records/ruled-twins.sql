-- What people ruled on records that may be one: ruled the same, the one that can be used counts, else the earlier; ruled not the
-- same, both do.
-- In: ruled_pairs (record_key, other_key, same), record_texts, judged_records, twins. Out: twins.
CREATE OR REPLACE TABLE pairs_ruled AS
SELECT one.record_no AS one_no, other.record_no AS other_no, p.same,
  CASE WHEN (a.set_aside IS NOT NULL, one.record_no) < (b.set_aside IS NOT NULL, other.record_no) THEN one.record_no ELSE other.record_no END AS counting_no
FROM ruled_pairs AS p
JOIN (SELECT record_no, record_key FROM record_texts) AS one ON one.record_key = p.record_key
JOIN (SELECT record_no, record_key FROM record_texts) AS other ON other.record_key = p.other_key
JOIN judged_records AS a ON a.record_no = one.record_no
JOIN judged_records AS b ON b.record_no = other.record_no
WHERE one.record_no <> other.record_no;

DELETE FROM twins WHERE EXISTS (
  SELECT 1 FROM pairs_ruled AS p
  WHERE NOT p.same AND p.one_no IN (twins.record_no, twins.twin_of) AND p.other_no IN (twins.record_no, twins.twin_of));

INSERT INTO twins
SELECT DISTINCT CASE WHEN counting_no = one_no THEN other_no ELSE one_no END, counting_no, 'ruled the same'
FROM pairs_ruled
WHERE same AND CASE WHEN counting_no = one_no THEN other_no ELSE one_no END NOT IN (SELECT record_no FROM twins);
