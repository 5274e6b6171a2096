-- Every row of a list with the rows beside it in its file: the one before and the one after, where the recorder is the same.
-- Rows without a place or a day are passed over.
-- In: placed_records. Out: list_neighbours (record_no, first_day, last_day, and of the
-- rows beside it number, recorder and days).
CREATE OR REPLACE TABLE list_neighbours AS
SELECT *
FROM (
  SELECT
    record_no, recorder, first_day, last_day,
    lag(record_no) OVER file AS before_no, lag(recorder) OVER file AS before_recorder,
    lag(first_day) OVER file AS before_first_day, lag(last_day) OVER file AS before_last_day,
    lead(record_no) OVER file AS after_no, lead(recorder) OVER file AS after_recorder,
    lead(first_day) OVER file AS after_first_day, lead(last_day) OVER file AS after_last_day
  FROM placed_records
  WINDOW file AS (PARTITION BY file_id ORDER BY record_no)
)
WHERE recorder <> '' AND (before_recorder = recorder OR after_recorder = recorder);
