-- Status and reason of every record, beside its keys: every record has exactly one.
-- In: judged_records, twins, kinds. Out: record_keys, with status used, held or not used; reason a code of src/records/reasons.ts.
CREATE OR REPLACE TABLE record_keys AS
SELECT
  r.* EXCLUDE (set_aside),
  CASE
    WHEN t.record_no IS NOT NULL THEN 'not used'
    WHEN r.set_aside IN ('impossible_caste', 'contradictory_castes', 'generalised_without_size') THEN 'held'
    WHEN r.set_aside IS NOT NULL THEN 'not used'
    ELSE 'used'
  END AS status,
  CASE
    WHEN t.how = 'same id' THEN 'repeated_id'
    WHEN t.record_no IS NOT NULL THEN 'two_routes'
    WHEN r.set_aside IS NOT NULL THEN r.set_aside
    WHEN NOT k.present THEN 'not_detected'
    ELSE 'used'
  END AS reason
FROM judged_records AS r
JOIN kinds AS k USING (kind_id)
LEFT JOIN twins AS t USING (record_no)
ORDER BY r.record_no;
