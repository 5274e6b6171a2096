-- The copy of the records that everything published is made from: records of listed taxa are no finer there than the
-- list allows. Nothing after this reads their own places. The coarsest entry that applies to a record counts.
-- A record shown coarser gets its square's territory, not its own, and visits of its own (place, day, recorder at that
-- size): were it joined to the visit it was part of, the other records of that visit would tell where it was.
-- A 10 km square whose only land is one 2 km square would tell as much as that one: records there are withheld.
-- In: records, kind_castes, small_hectads (grid, hectad: land in one 2 km square), sensitive_scopes (taxon_id, coarseness 1 to 3, territory, caste, month; '' and 0 for all).
-- Out: generalised (record_no, coarseness, grid, square), one row a record shown coarser. The view public_records needs
-- generalised_squares (grid, square, territory) too.
CREATE OR REPLACE TABLE generalised AS
WITH listed AS (
  SELECT r.record_no, r.grid, r.hectad, r.tetrad, max(s.coarseness) AS coarseness
  FROM records AS r
  JOIN sensitive_scopes AS s ON s.taxon_id = r.taxon_id
  LEFT JOIN kind_castes AS k ON k.kind_id = r.kind_id AND k.caste = s.caste
  WHERE r.status = 'used'
    AND (s.territory = '' OR s.territory = r.territory)
    AND (s.caste = '' OR k.caste IS NOT NULL)
    AND (
      s.month = 0 OR r.first_day IS NULL OR r.last_day - r.first_day >= 335
      OR CASE
        WHEN month(DATE '1970-01-01' + r.first_day) <= month(DATE '1970-01-01' + r.last_day)
        THEN s.month BETWEEN month(DATE '1970-01-01' + r.first_day) AND month(DATE '1970-01-01' + r.last_day)
        ELSE s.month >= month(DATE '1970-01-01' + r.first_day) OR s.month <= month(DATE '1970-01-01' + r.last_day)
      END
    )
  GROUP BY r.record_no, r.grid, r.hectad, r.tetrad
),
settled AS (
  SELECT l.record_no, l.grid, l.hectad, l.tetrad,
    CASE WHEN l.coarseness = 2 AND s.hectad IS NOT NULL THEN 3 ELSE l.coarseness END AS coarseness
  FROM listed AS l LEFT JOIN small_hectads AS s ON s.grid = l.grid AND s.hectad = l.hectad
)
SELECT record_no, coarseness,
  CASE WHEN coarseness < 3 THEN grid END AS grid,
  CASE coarseness WHEN 1 THEN coalesce(tetrad, hectad) WHEN 2 THEN hectad END AS square
FROM settled;

CREATE OR REPLACE VIEW public_records AS
SELECT
  r.record_no, r.source, r.recorder, r.kind_id, r.taxon_id, r.first_day, r.last_day, r.first_year, r.last_year, r.period,
  r.third, r.present, r.complete, r.established, r.status, r.reason,
  g.coarseness IS NOT NULL AS generalised,
  CASE WHEN g.coarseness IS NULL THEN r.territory ELSE q.territory END AS territory,
  CASE WHEN g.coarseness IS NULL THEN r.grid ELSE g.grid END AS grid,
  CASE WHEN g.coarseness = 3 THEN NULL ELSE r.hectad END AS hectad,
  CASE WHEN g.coarseness = 3 THEN 'place withheld' ELSE r.hectad_reason END AS hectad_reason,
  CASE WHEN g.coarseness >= 2 THEN NULL ELSE r.tetrad END AS tetrad,
  CASE g.coarseness WHEN 3 THEN 'place withheld' WHEN 2 THEN 'shown at 10 km' ELSE r.tetrad_reason END AS tetrad_reason,
  CASE WHEN g.coarseness IS NULL THEN r.tetrad_at_half END AS tetrad_at_half,
  CASE WHEN g.coarseness IS NULL THEN r.visit_place WHEN g.coarseness = 3 THEN 'withheld' ELSE coalesce(g.square, '') END AS visit_place,
  g.coarseness IS NULL AND r.in_disguise AS in_disguise,
  g.coarseness IS NULL AND r.near_line AS near_line
FROM records AS r
LEFT JOIN generalised AS g ON g.record_no = r.record_no
LEFT JOIN generalised_squares AS q ON q.grid = g.grid AND q.square = g.square;
