-- One row a record: its number and key, and the ids of its interpreted place, date, name and kind.
-- The recorder's name is kept only as a key of the party, however it is spelt, to tell visits apart.
-- In: stated_records, the *_texts tables, parties ("recordedBy", recorder). Out: keyed_records.
CREATE OR REPLACE TABLE keyed_records AS
SELECT
  r.record_no,
  r.file_id,
  r.source,
  nullif(r."occurrenceID", '') AS occurrence_id,
  p.place_id,
  d.date_id,
  n.name_id,
  k.kind_id,
  w.recorder
FROM stated_records AS r
JOIN parties AS w ON w."recordedBy" = r."recordedBy"
JOIN place_texts AS p
  ON p.source = r.source AND p."gridReference" = r."gridReference" AND p."decimalLatitude" = r."decimalLatitude"
  AND p."decimalLongitude" = r."decimalLongitude" AND p."geodeticDatum" = r."geodeticDatum"
  AND p."coordinateUncertaintyInMeters" = r."coordinateUncertaintyInMeters" AND p.easting = r.easting
  AND p.northing = r.northing AND p."dataGeneralizations" = r."dataGeneralizations"
  AND p.site = r.site
JOIN date_texts AS d
  ON d.source = r.source AND d."eventDate" = r."eventDate" AND d.year = r.year AND d.month = r.month
  AND d.day = r.day AND d."startDayOfYear" = r."startDayOfYear" AND d."endDayOfYear" = r."endDayOfYear"
  AND d."verbatimEventDate" = r."verbatimEventDate"
JOIN name_texts AS n
  ON n."scientificName" = r."scientificName" AND n."identificationQualifier" = r."identificationQualifier"
JOIN kind_texts AS k
  ON k."lifeStage" = r."lifeStage" AND k.sex = r.sex AND k.caste = r.caste AND k."individualCount" = r."individualCount"
  AND k."occurrenceStatus" = r."occurrenceStatus" AND k."basisOfRecord" = r."basisOfRecord"
  AND k."establishmentMeans" = r."establishmentMeans" AND k."degreeOfEstablishment" = r."degreeOfEstablishment"
  AND k."isTaxonomicScopeFullyReported" = r."isTaxonomicScopeFullyReported";
