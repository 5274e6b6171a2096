-- Every row of a list with the rows beside it in its file: the one before and the one after, where the recorder is the same.
-- Rows without a place or a day are passed over.
-- In: placed_records. Out: list_neighbours (record_no, …, before_no, after_no).
CREATE OR REPLACE TABLE list_neighbours AS
SELECT *
FROM (
  SELECT
    record_no, recorder,
    lag(record_no) OVER file AS before_no, lag(recorder) OVER file AS before_recorder,
    lead(record_no) OVER file AS after_no, lead(recorder) OVER file AS after_recorder
  FROM placed_records
  WINDOW file AS (PARTITION BY file_id ORDER BY record_no)
)
WHERE recorder <> '' AND (before_recorder = recorder OR after_recorder = recorder);
