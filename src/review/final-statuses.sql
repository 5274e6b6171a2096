-- The status of every record that a finding or a ruling gives another one than its interpretation did. Only what cannot be
-- read, placed in time or named stays as it was whatever is ruled, until it is corrected.
-- In: record_keys, record_findings, decided, rulings_in_force. Out: final_statuses (record_no, status, reason),
-- decisions_without_record (record_key, said).
CREATE OR REPLACE TABLE final_statuses AS
WITH blocked AS (
  SELECT record_no, min(check_name) AS check_name FROM record_findings WHERE severity = 'blocks' AND NOT settled GROUP BY record_no
),
judged AS (
  SELECT
    r.record_no, r.status AS old_status, r.reason AS old_reason,
    CASE
      WHEN r.status = 'not used' THEN r.reason
      WHEN d.changed THEN 'decision_record_changed'
      WHEN d.ruling = 'leave out' THEN 'left_out'
      WHEN d.identification = 'cannot be decided' THEN 'identification_undecided'
      WHEN d.ruling = 'hold' THEN 'held_by_ruling'
      WHEN d.ruling = 'use' AND r.status = 'held' THEN 'used'
      WHEN r.status = 'held' THEN r.reason
      WHEN b.check_name IS NOT NULL THEN b.check_name
      ELSE r.reason
    END AS reason
  FROM record_keys AS r
  LEFT JOIN decided AS d USING (record_no)
  LEFT JOIN blocked AS b USING (record_no)
  WHERE d.record_no IS NOT NULL OR b.record_no IS NOT NULL
)
SELECT
  record_no,
  CASE
    WHEN reason IN ('left_out', 'identification_undecided') THEN 'not used'
    WHEN old_status = 'not used' THEN old_status
    WHEN reason IN ('used', 'not_detected') THEN 'used'
    ELSE 'held'
  END AS status,
  reason
FROM judged
WHERE reason <> old_reason;

-- Rulings whose record is not among those that were read: it was taken out of its file, or lost its id.
CREATE OR REPLACE TABLE decisions_without_record AS
SELECT record_key, concat_ws(', ', nullif(said_name, ''), nullif(said_date, ''), nullif(said_place, '')) AS said
FROM rulings_in_force
WHERE record_key <> '' AND record_key NOT IN (SELECT record_key FROM decided)
ORDER BY record_key;
