-- The terms of surroundings each record states, and what could not be read: a note with the first record that says it.
-- In: stated_records, surrounding_texts, surrounding_terms, surrounding_unread. Out: record_surroundings (record_no, kind,
-- term), surrounding_notes (record_no, field, value, records).
CREATE OR REPLACE TABLE record_surroundings AS
SELECT DISTINCT r.record_no, t.kind, t.term
FROM stated_records AS r
JOIN surrounding_texts AS s
  ON s.habitat = r.habitat AND s."flowerVisited" = r."flowerVisited" AND s."nestSite" = r."nestSite" AND s.host = r.host
  AND s."associatedTaxa" = r."associatedTaxa"
JOIN surrounding_terms AS t USING (surrounding_id)
ORDER BY r.record_no, t.kind, t.term;

CREATE OR REPLACE TABLE surrounding_notes AS
SELECT min(r.record_no) AS record_no, u.field, u.value, count(*) AS records
FROM stated_records AS r
JOIN surrounding_texts AS s
  ON s.habitat = r.habitat AND s."flowerVisited" = r."flowerVisited" AND s."nestSite" = r."nestSite" AND s.host = r.host
  AND s."associatedTaxa" = r."associatedTaxa"
JOIN surrounding_unread AS u USING (surrounding_id)
GROUP BY u.field, u.value;
