-- Rows whose id names no row of the other table, the first of them, with the number of all.
-- In: two tables with core_id. Out: location, file_row, core_id, all_of_them.
SELECT r.location, r.file_row, r.core_id, count(*) OVER () AS all_of_them
FROM {rows} AS r
LEFT JOIN (SELECT DISTINCT core_id FROM {others} WHERE core_id <> '') AS other ON other.core_id = r.core_id
WHERE other.core_id IS NULL
ORDER BY r.location, r.file_row
LIMIT {most};
