-- Copies the mapped columns of one delimited file to Parquet, in the file's order.
-- Columns in: c0, c1 … as text. Columns out: the record fields the file has, trimmed; empty text for no value.
COPY (SELECT {columns} FROM read_csv({file}, {dialect}, store_rejects = true, rejects_table = 'refused_rows', rejects_scan = 'refused_scans', rejects_limit = 0))
TO {target} (FORMAT parquet, COMPRESSION zstd, COMPRESSION_LEVEL 1);
