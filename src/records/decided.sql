-- Rulings in force joined to the records they are on. One whose record says something else than when it was ruled on is
-- changed: none of its rulings holds until somebody looks again.
-- In: record_texts, rulings_in_force (record_key, …). Out: decided (record_no, …, changed, difference).
CREATE OR REPLACE TABLE decided AS
SELECT
  t.record_no, d.*,
  concat_ws('; ',
    CASE WHEN d.said_name <> '' AND d.said_name <> t.said_name THEN 'name “' || d.said_name || '” is now “' || t.said_name || '”' END,
    CASE WHEN d.said_date <> '' AND d.said_date <> t.said_date THEN 'date “' || d.said_date || '” is now “' || t.said_date || '”' END,
    CASE WHEN d.said_place <> '' AND d.said_place <> t.said_place THEN 'place “' || d.said_place || '” is now “' || t.said_place || '”' END,
    CASE WHEN d.said_kind <> '' AND d.said_kind <> t.said_kind THEN 'stage, sex, caste and count “' || d.said_kind || '” are now “' || t.said_kind || '”' END
  ) AS difference,
  d.settles AND difference <> '' AS changed
FROM record_texts AS t
JOIN rulings_in_force AS d USING (record_key);
