-- Records as they are to be interpreted: as they say, but for what a ruling corrects. A corrected place or date takes the
-- place of all that was said of it, but that corrected coordinates keep their datum and uncertainty.
-- In: placed_texts, decided. Out: the view stated_records.
CREATE OR REPLACE VIEW stated_records AS
SELECT
  r.* REPLACE (
    coalesce(d."scientificName", r."scientificName") AS "scientificName",
    CASE WHEN d."scientificName" IS NULL THEN r."identificationQualifier" ELSE '' END AS "identificationQualifier",
    CASE WHEN d.placed THEN coalesce(d."gridReference", '') ELSE r."gridReference" END AS "gridReference",
    CASE WHEN d.placed THEN coalesce(d."decimalLatitude", '') ELSE r."decimalLatitude" END AS "decimalLatitude",
    CASE WHEN d.placed THEN coalesce(d."decimalLongitude", '') ELSE r."decimalLongitude" END AS "decimalLongitude",
    CASE WHEN d.placed THEN '' ELSE r.easting END AS easting,
    CASE WHEN d.placed THEN '' ELSE r.northing END AS northing,
    CASE WHEN d.placed THEN '' ELSE r."dataGeneralizations" END AS "dataGeneralizations",
    coalesce(d."eventDate", r."eventDate") AS "eventDate",
    CASE WHEN d."eventDate" IS NULL THEN r.year ELSE '' END AS year,
    CASE WHEN d."eventDate" IS NULL THEN r.month ELSE '' END AS month,
    CASE WHEN d."eventDate" IS NULL THEN r.day ELSE '' END AS day,
    CASE WHEN d."eventDate" IS NULL THEN r."startDayOfYear" ELSE '' END AS "startDayOfYear",
    CASE WHEN d."eventDate" IS NULL THEN r."endDayOfYear" ELSE '' END AS "endDayOfYear",
    CASE WHEN d."eventDate" IS NULL THEN r."verbatimEventDate" ELSE '' END AS "verbatimEventDate",
    coalesce(d.caste, r.caste) AS caste,
    CASE WHEN d.caste IS NULL THEN r."lifeStage" ELSE '' END AS "lifeStage",
    CASE WHEN d.caste IS NULL THEN r.sex ELSE '' END AS sex
  )
FROM placed_texts AS r
LEFT JOIN (
  SELECT record_no, "scientificName", "gridReference", "decimalLatitude", "decimalLongitude", "eventDate", caste,
    "gridReference" IS NOT NULL OR "decimalLatitude" IS NOT NULL AS placed
  FROM decided
  WHERE NOT changed AND coalesce("scientificName", "gridReference", "decimalLatitude", "eventDate", caste) IS NOT NULL
) AS d USING (record_no);
