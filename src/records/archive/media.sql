-- The addresses of each record's photographs and other media, in the order of the archive.
-- In: archive_media_rows. Out: archive_media (one row a record).
CREATE OR REPLACE TABLE archive_media AS
SELECT core_id, string_agg(address, ' | ' ORDER BY location, file_row) AS addresses
FROM (
  SELECT core_id, address, min(location) AS location, min(file_row) AS file_row
  FROM (
    SELECT core_id, location, file_row,
      coalesce(nullif("link_accessURI", ''), nullif("link_identifier", ''), "link_references") AS address
    FROM archive_media_rows
  ) AS addressed
  WHERE core_id <> '' AND address <> ''
  GROUP BY core_id, address
) AS distinct_addresses
GROUP BY core_id;
