-- What each record's identification rests on: 0 nothing said, 1 sight, 2 photograph, 3 specimen; the greatest of what its
-- evidence, its basis, its media and its source's kind say. Confirmed are those a ruling says were confirmed, and those
-- whose verification status is one the settings list.
-- In: record_texts, decided, source_kinds (source, level), confirmed_words (word). Out: record_evidence (record_no, level,
-- part_seen, confirmed), confirmed_records (record_no).
CREATE OR REPLACE TABLE record_evidence AS
SELECT t.record_no, lower(trim(t."partSeen")) AS part_seen,
  coalesce(d.identification LIKE 'confirmed%' AND NOT d.changed, false)
    OR lower(trim(t."identificationVerificationStatus")) IN (SELECT word FROM confirmed_words) AS confirmed,
  greatest(
    CASE lower(trim(t.evidence)) WHEN 'sight' THEN 1 WHEN 'photograph' THEN 2 WHEN 'specimen' THEN 3 ELSE 0 END,
    CASE t."basisOfRecord" WHEN 'HumanObservation' THEN 1 WHEN 'PreservedSpecimen' THEN 3 WHEN 'MaterialSample' THEN 3 WHEN 'MaterialEntity' THEN 3 ELSE 0 END,
    CASE WHEN t."associatedMedia" <> '' THEN 2 ELSE 0 END,
    k.level
  ) AS level
FROM record_texts AS t
JOIN source_kinds AS k USING (source)
LEFT JOIN decided AS d USING (record_no);

CREATE OR REPLACE TABLE confirmed_records AS SELECT record_no FROM record_evidence WHERE confirmed;
