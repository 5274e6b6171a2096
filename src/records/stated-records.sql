-- Records as they are to be interpreted: as they say, but for what a ruling corrects. A corrected place or date takes the
-- place of all that was said of it.
-- In: placed_texts, decided. Out: the view stated_records.
CREATE OR REPLACE VIEW stated_records AS
SELECT
  r.* REPLACE (
    coalesce(d."scientificName", r."scientificName") AS "scientificName",
    CASE WHEN d."scientificName" IS NULL THEN r."identificationQualifier" ELSE '' END AS "identificationQualifier",
    coalesce(d."gridReference", r."gridReference") AS "gridReference",
    CASE WHEN d."gridReference" IS NULL THEN r."decimalLatitude" ELSE '' END AS "decimalLatitude",
    CASE WHEN d."gridReference" IS NULL THEN r."decimalLongitude" ELSE '' END AS "decimalLongitude",
    CASE WHEN d."gridReference" IS NULL THEN r.easting ELSE '' END AS easting,
    CASE WHEN d."gridReference" IS NULL THEN r.northing ELSE '' END AS northing,
    CASE WHEN d."gridReference" IS NULL THEN r."dataGeneralizations" ELSE '' END AS "dataGeneralizations",
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
  SELECT record_no, "scientificName", "gridReference", "eventDate", caste FROM decided
  WHERE NOT changed AND ("scientificName" IS NOT NULL OR "gridReference" IS NOT NULL OR "eventDate" IS NOT NULL OR caste IS NOT NULL)
) AS d USING (record_no);
