-- The records of one file of an archive, with what they take from the rows they belong to and those that belong to them.
-- In: archive_occurrences and the tables joined. Out: a Parquet file in the file's order; text, empty for no value.
COPY (
  SELECT r.file_row, {columns}
  FROM archive_occurrences AS r
  {joins}
  WHERE r.location = {location}
  ORDER BY r.file_row
) TO {target} (FORMAT parquet, COMPRESSION zstd, COMPRESSION_LEVEL 1);
