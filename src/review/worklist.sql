-- What wants a ruling, one row a question, worst first: what holds a record before what is only asked about, and within
-- that the groups that one look settles, those with most records first. What a source's settings settle is one look a source.
-- In: record_findings, record_texts, interpreted_records. Out: the table worklist.
CREATE OR REPLACE TABLE worklist AS
WITH open AS (
  SELECT *,
    CASE
      WHEN subject <> '' THEN subject
      WHEN check_name IN ('datum_not_stated', 'crs_not_stated') THEN 'setting of the source'
      WHEN value <> '' THEN field || '=' || value
      ELSE ''
    END AS shared
  FROM record_findings
  WHERE severity IN ('blocks', 'ask') AND NOT settled
),
grouped AS (
  SELECT *, CASE WHEN shared = '' THEN check_name || record_no ELSE check_name || ' ' || source || ' ' || shared END AS look
  FROM open
),
looks AS (
  SELECT look, min(severity) AS worst, min(check_name) AS check_name, count(DISTINCT record_no) AS records, min(record_no) AS first_record
  FROM grouped GROUP BY look
),
ranked AS (
  SELECT look, records,
    row_number() OVER (ORDER BY CASE worst WHEN 'blocks' THEN 0 ELSE 1 END, records DESC, check_name, first_record) AS look_no
  FROM looks
)
SELECT
  r.look_no, r.records AS records_of_look, g.record_no, t.record_key, t.said_mark, g.severity, g.check_name, g.message, g.way_out, g.proposal,
  t.said_name, t.said_date, t.said_place, t.said_kind, t."recordedBy" AS recorded_by, i.recorder, t.locality,
  concat_ws(' | ', i.territory, nullif(t.country, ''), nullif(t."stateProvince", ''), nullif(t.county, ''), nullif(t."viceCounty", '')) AS regions, t."occurrenceRemarks" AS remarks,
  i.taxon_id, i.territory, i.hectad, i.first_year, g.source, g.file, g.row
FROM grouped AS g
JOIN ranked AS r USING (look)
JOIN record_texts AS t USING (record_no)
JOIN interpreted_records AS i USING (record_no)
ORDER BY r.look_no, g.record_no, g.check_name, g.message;
