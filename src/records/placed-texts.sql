-- Records as read, with what the fields of their place alone do not say: the named site that their locality is, '' for none,
-- and how far it reaches; and what is withheld of their place beside what was coarsened of it, for both make a point say less than
-- it seems to. What is withheld of other things, such as names, does not concern the place.
-- In: raw_records, site_names (name, uncertainty_m). Out: the view placed_texts.
CREATE OR REPLACE VIEW placed_texts AS
SELECT
  r.* REPLACE (
    CASE WHEN regexp_matches(lower(r."informationWithheld"), '\b(coordinates?|location|localit(y|ies)|place|position|site|grid|latitude|longitude|precision|uncertainty)\b')
      THEN concat_ws('; ', nullif(r."dataGeneralizations", ''), r."informationWithheld")
      ELSE r."dataGeneralizations" END AS "dataGeneralizations"
  ),
  coalesce(s.name, '') AS site,
  coalesce(s.uncertainty_m, 0) AS site_m
FROM raw_records AS r
LEFT JOIN site_names AS s ON s.name = lower(trim(r.locality));
