-- Per kind of error: how many were put in, how many leave a trace, how many of these and of all were found, and by which checks.
-- A note finds what needs no question: an uncertainty of 0, a point that stands for a square, a cell too many. All else must
-- be asked about or held.
-- In: traced_errors, spoilt, all_findings. Out: found_errors (record_no, kind, trace, check_name), known_error_table,
-- sound_asked.
CREATE OR REPLACE TABLE counting_findings AS
SELECT DISTINCT f.first_number + a.row AS record_no, a.check_name, a.severity
FROM all_findings AS a JOIN files AS f ON f.file = a.file
WHERE a.row IS NOT NULL;

CREATE OR REPLACE TABLE found_errors AS
SELECT t.record_no, t.kind, t.trace, c.check_name
FROM traced_errors AS t
LEFT JOIN counting_findings AS c
  ON c.record_no = t.record_no
  AND CASE t.kind
    WHEN 'zero-uncertainty' THEN c.check_name = 'uncertainty_out_of_range'
    WHEN 'hectad-as-point' THEN c.check_name = 'square_in_disguise'
    WHEN 'ragged-row' THEN c.check_name = 'unreadable_row'
    ELSE c.severity <> 'note' END;

CREATE OR REPLACE TABLE known_error_table AS
SELECT e.kind, e.injected, e.detectable, e.caught, e.caught_without_trace, coalesce(c.checks, '') AS checks
FROM (
  SELECT kind, count(DISTINCT record_no) AS injected,
    count(DISTINCT record_no) FILTER (trace <> '') AS detectable,
    count(DISTINCT record_no) FILTER (trace <> '' AND check_name IS NOT NULL) AS caught,
    count(DISTINCT record_no) FILTER (trace = '' AND check_name IS NOT NULL) AS caught_without_trace
  FROM found_errors GROUP BY kind
) AS e
LEFT JOIN (
  SELECT kind, string_agg(check_name || ' ' || records, ', ' ORDER BY records DESC, check_name) AS checks
  FROM (SELECT kind, check_name, count(DISTINCT record_no) AS records FROM found_errors WHERE check_name IS NOT NULL GROUP BY kind, check_name)
  GROUP BY kind
) AS c USING (kind)
ORDER BY e.kind;

-- Records whose remarks alone were spoilt say what is right.
CREATE OR REPLACE TABLE sound_asked AS
SELECT check_name, count(*) AS records
FROM (
  SELECT DISTINCT record_no, check_name FROM counting_findings
  WHERE severity <> 'note' AND record_no NOT IN (
    SELECT record_no FROM spoilt WHERE kind NOT LIKE '%-in-remarks')
  UNION ALL
  SELECT DISTINCT record_no, 'any check' FROM counting_findings
  WHERE severity <> 'note' AND record_no NOT IN (
    SELECT record_no FROM spoilt WHERE kind NOT LIKE '%-in-remarks')
)
GROUP BY check_name
ORDER BY records DESC, check_name;
