-- The rows of a core by their id; of rows that share an id the first counts.
-- In: archive_core_rows. Out: archive_core (one row an id).
CREATE OR REPLACE TABLE archive_core AS
SELECT {columns}
FROM (
  SELECT *, row_number() OVER (PARTITION BY core_id ORDER BY location, file_row) AS nth
  FROM archive_core_rows
  WHERE core_id <> ''
) AS numbered
WHERE nth = 1;
