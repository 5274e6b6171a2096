-- The distinct texts of places, dates, names and kinds of occurrence, each with an id, and of recorders: what TypeScript
-- interprets once.
-- In: stated_records, one row a record. Out: place_texts, date_texts, name_texts, kind_texts, recorder_texts.
CREATE OR REPLACE TABLE place_texts AS
SELECT row_number() OVER () AS place_id, *
FROM (
  SELECT DISTINCT source, "gridReference", "decimalLatitude", "decimalLongitude", "geodeticDatum",
    "coordinateUncertaintyInMeters", easting, northing, "dataGeneralizations", site, site_m
  FROM stated_records
);

CREATE OR REPLACE TABLE date_texts AS
SELECT row_number() OVER () AS date_id, *
FROM (SELECT DISTINCT source, "eventDate", year, month, day, "startDayOfYear", "endDayOfYear", "verbatimEventDate" FROM stated_records);

CREATE OR REPLACE TABLE name_texts AS
SELECT row_number() OVER () AS name_id, *
FROM (SELECT DISTINCT "scientificName", "identificationQualifier" FROM stated_records);

CREATE OR REPLACE TABLE kind_texts AS
SELECT row_number() OVER () AS kind_id, *
FROM (
  SELECT DISTINCT "lifeStage", sex, caste, "individualCount", "occurrenceStatus", "basisOfRecord",
    "establishmentMeans", "degreeOfEstablishment", "isTaxonomicScopeFullyReported"
  FROM stated_records
);

CREATE OR REPLACE TABLE recorder_texts AS SELECT DISTINCT "recordedBy" FROM stated_records;
