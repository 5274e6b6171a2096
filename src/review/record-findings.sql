-- All questions about records: what interpreting them raised and what the checks found, with the weight the settings give,
-- and whether a ruling settles them.
-- In: findings, review_findings, check_severities, decided, record_keys, files. Out: the view record_findings.
CREATE OR REPLACE VIEW record_findings AS
WITH asked AS (
  SELECT record_no, check_name, severity, field, value, '' AS subject, message, way_out, proposal FROM findings
  UNION ALL
  SELECT record_no, check_name, severity, field, value, subject, message, way_out, proposal FROM review_findings
  UNION ALL
  SELECT record_no, 'decision_record_changed', 'blocks', '', '', '', 'the record says something else than when it was ruled on: ' || difference,
    'rule on it again', ''
  FROM decided WHERE changed
  UNION ALL
  SELECT record_no, 'opinion_waits', 'ask', 'scientificName', '', '', 'others say: ' || opinions, 'rule on it', ''
  FROM decided WHERE opinions <> ''
)
SELECT
  a.record_no, f.source, f.file, a.record_no - f.first_number AS row, a.field, a.value, a.check_name,
  coalesce(s.severity, a.severity) AS severity, a.subject, a.message, a.way_out, a.proposal,
  d.record_no IS NOT NULL AND a.check_name <> 'opinion_waits' AS settled
FROM asked AS a
JOIN record_keys AS r USING (record_no)
JOIN files AS f USING (file_id)
LEFT JOIN check_severities AS s USING (check_name)
LEFT JOIN (SELECT record_no FROM decided WHERE settles AND NOT changed) AS d USING (record_no)
WHERE coalesce(s.severity, a.severity) <> 'off';
