-- What the surveys of an event say of their lists; nothing where they do not agree.
-- In: archive_survey_rows. Out: archive_surveys (one row an event).
CREATE OR REPLACE TABLE archive_surveys AS
SELECT core_id, CASE WHEN min(said) = max(said) THEN min(said) ELSE '' END AS said
FROM (SELECT core_id, lower({said}) AS said FROM archive_survey_rows) AS rows_of
WHERE core_id <> '' AND said <> ''
GROUP BY core_id;
