-- Every finding about a record as a row: from the dictionaries' notes, and from checks that need several records.
-- In: record_keys, surrounding_notes, twins, id_disputes, files and the *_notes tables. Out: findings (record_no, file, row, field, value, check_name, severity, message, way_out, proposal).
CREATE OR REPLACE TABLE findings AS
WITH noted AS (
  SELECT r.record_no, r.file_id, o.check_name, o.severity, o.field, o.value, o.message, o.way_out, o.proposal
  FROM record_keys AS r JOIN place_notes AS o USING (place_id)
  UNION ALL
  SELECT r.record_no, r.file_id, o.check_name, o.severity, o.field, o.value, o.message, o.way_out, o.proposal
  FROM record_keys AS r JOIN date_notes AS o USING (date_id)
  UNION ALL
  SELECT r.record_no, r.file_id, o.check_name, o.severity, o.field, o.value, o.message, o.way_out, o.proposal
  FROM record_keys AS r JOIN name_notes AS o USING (name_id)
  UNION ALL
  SELECT r.record_no, r.file_id, o.check_name, o.severity, o.field, o.value, o.message, o.way_out, o.proposal
  FROM record_keys AS r JOIN kind_notes AS o USING (kind_id)
  UNION ALL
  SELECT r.record_no, r.file_id, 'impossible_caste', 'blocks', 'caste', c.caste,
    'is a caste this taxon does not have', 'correct the caste or the name', ''
  FROM record_keys AS r JOIN impossible_castes AS c USING (name_id, kind_id)
  UNION ALL
  SELECT n.record_no, r.file_id, 'surroundings_not_read', 'note', n.field, n.value,
    CASE n.records WHEN 1 THEN 'one record says so' ELSE n.records || ' records say so' END || '; no term of the settings has this word',
    'add the word to surroundings in the settings if it means a term', ''
  FROM surrounding_notes AS n JOIN record_keys AS r USING (record_no)
  UNION ALL
  -- Once a source, with its first such record: which reading is right is a question about the source.
  SELECT min(r.record_no), min_by(r.file_id, r.record_no), 'date_interval_end', 'note', 'eventDate', min_by(d.otherwise, r.record_no),
    count(*) || CASE count(*) WHEN 1 THEN ' record' ELSE ' records' END
      || ' of this source would count in another period, third of a month or as one day if intervals ended by the other reading',
    'see dates.interval_end in the settings', ''
  FROM record_keys AS r JOIN dates AS d USING (date_id) WHERE d.otherwise IS NOT NULL GROUP BY r.source
  UNION ALL
  SELECT r.record_no, r.file_id, r.reason, 'note', CASE t.how WHEN 'same id' THEN 'occurrenceID' ELSE '' END,
    CASE t.how WHEN 'same id' THEN r.occurrence_id ELSE '' END,
    t.how || ' as row ' || (t.twin_of - f.first_number) || ' of ' || f.file || '; that record counts',
    CASE WHEN t.how = 'same id' AND r.source = f.source THEN 'give two records two ids' ELSE 'nothing to do if it is the same; rule that it is not where it is another' END, ''
  FROM record_keys AS r JOIN twins AS t USING (record_no)
  JOIN record_keys AS o ON o.record_no = t.twin_of JOIN files AS f ON f.file_id = o.file_id
  UNION ALL
  SELECT r.record_no, r.file_id, 'same_id_other_record', 'ask', 'occurrenceID', r.occurrence_id,
    'row ' || (d.other_no - f.first_number) || ' of ' || f.file || ' has this id too, and another name, date or caste; both count',
    'correct whichever is wrong, or rule that they are not the same', ''
  FROM (SELECT record_no, other_no FROM id_disputes UNION SELECT other_no, record_no FROM id_disputes) AS d
  JOIN record_keys AS r USING (record_no)
  JOIN record_keys AS o ON o.record_no = d.other_no JOIN files AS f ON f.file_id = o.file_id
)
SELECT n.record_no, f.source, f.file, n.record_no - f.first_number AS row, n.field, n.value, n.check_name, n.severity, n.message, n.way_out, n.proposal
FROM noted AS n JOIN files AS f USING (file_id)
ORDER BY n.record_no, n.check_name, n.field;
