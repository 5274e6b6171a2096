-- The determinations of each record that has rows of its own for them: the latest, and the others as text, latest first.
-- The record's own name is one of them. Without a date it stands where no row repeats it, for that is what its
-- publisher says last.
-- In: archive_occurrences, archive_determination_rows. Out: archive_determined (one row a record id).
CREATE OR REPLACE TABLE archive_determined AS
WITH listed AS (
  SELECT core_id, 1 AS is_row, location, file_row, {row_columns}
  FROM archive_determination_rows
),
own AS (
  SELECT o.core_id, 0 AS is_row, o.location, o.file_row, {own_columns}
  FROM archive_occurrences AS o
  WHERE o.core_id IN (SELECT core_id FROM listed)
),
repeated AS (
  SELECT DISTINCT own.core_id, own.location, own.file_row
  FROM own JOIN listed
    ON listed.core_id = own.core_id AND listed."scientificName" = own."scientificName"
  WHERE own."dateIdentified" = '' AND (own."identifiedBy" = '' OR own."identifiedBy" = listed."identifiedBy")
),
said AS (
  SELECT * FROM listed
  UNION ALL
  SELECT own.* FROM own
  LEFT JOIN repeated
    ON repeated.core_id = own.core_id AND repeated.location = own.location AND repeated.file_row = own.file_row
  WHERE repeated.core_id IS NULL
),
once AS (
  SELECT *,
    nullif(regexp_extract("dateIdentified", '^[0-9]{4}(-[0-9]{2}(-[0-9]{2})?)?'), '') AS identified_on,
    row_number() OVER (
      PARTITION BY core_id, "scientificName", "identificationQualifier", "identifiedBy", "dateIdentified"
      ORDER BY is_row, location, file_row
    ) AS nth
  FROM said
  WHERE core_id <> '' AND "scientificName" <> ''
),
ranked AS (
  SELECT *,
    row_number() OVER (
      PARTITION BY core_id
      ORDER BY CASE WHEN is_row = 0 AND identified_on IS NULL THEN 0 ELSE 1 END,
        identified_on DESC NULLS LAST, is_row, location, file_row
    ) AS place
  FROM once
  WHERE nth = 1
),
others AS (
  SELECT core_id, string_agg(
    concat_ws(' ', "scientificName", nullif("identificationQualifier", ''),
      '(' || nullif(concat_ws(', ', nullif("identifiedBy", ''), nullif("dateIdentified", '')), '') || ')'),
    ' | ' ORDER BY place) AS previous
  FROM ranked
  WHERE place > 1
  GROUP BY core_id
)
SELECT ranked.core_id, ranked.is_row, {latest_columns}, coalesce(others.previous, '') AS previous
FROM ranked LEFT JOIN others ON others.core_id = ranked.core_id
WHERE place = 1;
