-- What every record says, with a key that outlives a new import, a renamed file and another order of rows, and its four
-- sayings in short, against which a ruling is held later; their mark stands for them where a spreadsheet may rewrite them. A record without an id is known by a mark made from its text, so
-- that rows that say the same in everything share one key and one ruling.
-- In: raw_records. Out: the view record_texts.
CREATE OR REPLACE VIEW record_texts AS
SELECT
  r.*,
  r.source || ':' || CASE
    WHEN r."occurrenceID" <> '' THEN r."occurrenceID"
    ELSE '#' || substr(md5(concat_ws('|',
      r."catalogNumber", r."recordNumber", r."scientificName", r."identificationQualifier", r."vernacularName",
      r."eventDate", r.year, r.month, r.day, r."startDayOfYear", r."endDayOfYear", r."verbatimEventDate",
      r."gridReference", r."decimalLatitude", r."decimalLongitude", r.easting, r.northing, r.locality,
      r."recordedBy", r."lifeStage", r.sex, r.caste, r."individualCount", r."occurrenceStatus")), 1, 16)
  END AS record_key,
  concat_ws(' ', nullif(r."scientificName", ''), nullif(r."identificationQualifier", '')) AS said_name,
  concat_ws(' ', nullif(r."eventDate", ''), nullif(r.year, ''), nullif(r.month, ''), nullif(r.day, ''),
    nullif(r."startDayOfYear", ''), nullif(r."endDayOfYear", ''), nullif(r."verbatimEventDate", '')) AS said_date,
  concat_ws(' ', nullif(r."gridReference", ''), nullif(r."decimalLatitude", ''), nullif(r."decimalLongitude", ''),
    nullif(r."geodeticDatum", ''), nullif(r."coordinateUncertaintyInMeters", ''), nullif(r.easting, ''),
    nullif(r.northing, ''), nullif(r."dataGeneralizations", '')) AS said_place,
  concat_ws(' ', nullif(r."lifeStage", ''), nullif(r.sex, ''), nullif(r.caste, ''), nullif(r."individualCount", ''),
    nullif(r."occurrenceStatus", '')) AS said_kind,
  'm' || substr(md5(concat_ws('|', said_name, said_date, said_place, said_kind)), 1, 8) AS said_mark
FROM raw_records AS r;
