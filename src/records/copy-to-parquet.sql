-- Copies columns of one delimited file to Parquet, in the file's order.
-- In: columns as text. Out: trimmed text; empty for no value.
COPY (SELECT {columns} FROM read_csv({file}, {dialect}))
TO {target} (FORMAT parquet, COMPRESSION zstd, COMPRESSION_LEVEL 1);
