-- Every finding about a record as a row: from the dictionaries' notes, and from checks that need several records.
-- In: record_keys, files and the *_notes tables. Out: findings (record_no, file, row, field, value, check_name, severity, message, way_out).
CREATE OR REPLACE TABLE findings AS
WITH noted AS (
  SELECT r.record_no, r.file_id, o.check_name, o.severity, o.field, o.value, o.message, o.way_out
  FROM record_keys AS r JOIN place_notes AS o USING (place_id)
  UNION ALL
  SELECT r.record_no, r.file_id, o.check_name, o.severity, o.field, o.value, o.message, o.way_out
  FROM record_keys AS r JOIN date_notes AS o USING (date_id)
  UNION ALL
  SELECT r.record_no, r.file_id, o.check_name, o.severity, o.field, o.value, o.message, o.way_out
  FROM record_keys AS r JOIN name_notes AS o USING (name_id)
  UNION ALL
  SELECT r.record_no, r.file_id, o.check_name, o.severity, o.field, o.value, o.message, o.way_out
  FROM record_keys AS r JOIN kind_notes AS o USING (kind_id)
  UNION ALL
  SELECT r.record_no, r.file_id, 'impossible_caste', 'blocks', 'caste', c.caste,
    'is a caste this taxon does not have', 'correct the caste or the name'
  FROM record_keys AS r JOIN impossible_castes AS c USING (name_id, kind_id)
  UNION ALL
  -- Once a source, with its first such record: which reading is right is a question about the source.
  SELECT min(r.record_no), min_by(r.file_id, r.record_no), 'date_interval_end', 'note', 'eventDate', min_by(d.otherwise, r.record_no),
    count(*) || CASE count(*) WHEN 1 THEN ' record' ELSE ' records' END
      || ' of this source would count in another period, third of a month or as one day if intervals ended by the other reading',
    'see dates.interval_end in the settings'
  FROM record_keys AS r JOIN dates AS d USING (date_id) WHERE d.otherwise IS NOT NULL GROUP BY r.source
  UNION ALL
  SELECT r.record_no, r.file_id, 'repeated_id', 'note', 'occurrenceID', r.occurrence_id,
    'an earlier row has this id; that one counts', 'give two records two ids'
  FROM record_keys AS r WHERE r.reason = 'repeated_id'
  UNION ALL
  SELECT r.record_no, r.file_id, 'two_routes', 'note', '', '',
    'another source brings the same taxon, day, place and recorder; that record counts', 'nothing to do if it is the same'
  FROM record_keys AS r WHERE r.reason = 'two_routes'
)
SELECT n.record_no, f.source, f.file, n.record_no - f.first_number AS row, n.field, n.value, n.check_name, n.severity, n.message, n.way_out
FROM noted AS n JOIN files AS f USING (file_id)
ORDER BY n.record_no, n.check_name, n.field;
