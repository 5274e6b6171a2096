-- Records as read, with what is withheld of their place beside what was coarsened of it: both make a point say less than it
-- seems to. What is withheld of other things, such as names, does not concern the place.
-- In: raw_records. Out: the view withheld_places.
CREATE OR REPLACE VIEW withheld_places AS
SELECT
  r.* REPLACE (
    CASE WHEN regexp_matches(lower(r."informationWithheld"), '\b(coordinates?|location|localit(y|ies)|place|position|site|grid|latitude|longitude|precision|uncertainty)\b')
      THEN concat_ws('; ', nullif(r."dataGeneralizations", ''), r."informationWithheld")
      ELSE r."dataGeneralizations" END AS "dataGeneralizations"
  )
FROM raw_records AS r;
