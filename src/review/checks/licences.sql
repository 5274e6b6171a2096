-- In: licence_problems (source, license, said, problem, way_out), raw_records, record_keys. Out: findings of licence_stricter and licence_unknown.
SELECT
  r.record_no, 'license' AS field, l.said AS value, 'licence ' || l.said AS subject, l.problem AS message, l.way_out, '' AS proposal
FROM raw_records AS r
JOIN licence_problems AS l ON l.source = r.source AND l.license = r.license
JOIN record_keys AS k USING (record_no)
WHERE k.status IN ('used', 'held')
