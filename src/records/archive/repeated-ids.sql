-- Rows without an id, or with one that an earlier row has; the first of them, with the number of all.
-- In: a table with core_id. Out: location, file_row, core_id, all_of_them.
SELECT r.location, r.file_row, r.core_id, count(*) OVER () AS all_of_them
FROM (
  SELECT location, file_row, core_id,
    row_number() OVER (PARTITION BY core_id ORDER BY location, file_row) AS nth
  FROM {rows}
) AS r
WHERE r.nth > 1 OR r.core_id = ''
ORDER BY r.location, r.file_row
LIMIT {most};
