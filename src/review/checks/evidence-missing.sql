-- Records whose evidence is less than their taxon, caste and territory need, and that are not asked about already.
-- By the scheme's own list ("listed"): wherever they are. Without it, only where nothing short of a specimen settles the name
-- in the caste stated, and a look-alike that it must be told from was reported within {near} km in the same decade.
-- In: interpreted_records, record_evidence, review_squares, neighbouring_squares, settling (taxon_id, caste, level, words),
-- look_alikes (taxon_id, other_id: of taxa that a
-- specimen alone settles in some caste), needed (place_in_list, taxon_id, caste, territory, level; empty text for any), review_findings.
-- Out: lacking_evidence (record_no, taxon_id, caste, territory, hectad, level, needed_level, words, other_id, listed).
CREATE OR REPLACE TABLE look_alikes_near AS
WITH reported AS (
  SELECT DISTINCT r.taxon_id, r.grid, r.hectad, r.first_year // 10 AS decade
  FROM interpreted_records AS r
  WHERE r.status IN ('used', 'held') AND r.present AND r.taxon_id IN (SELECT other_id FROM look_alikes)
),
squared AS (SELECT r.taxon_id, q.square_id, r.decade FROM reported AS r JOIN review_squares AS q USING (grid, hectad))
SELECT DISTINCT s.taxon_id, q.grid, q.hectad, s.decade
FROM squared AS s
JOIN neighbouring_squares AS n USING (square_id)
JOIN review_squares AS q ON q.square_id = n.other_id;

CREATE OR REPLACE TABLE lacking_evidence AS
WITH unasked AS (
  SELECT r.record_no, r.taxon_id, CASE WHEN contains(r.castes, '|') THEN '' ELSE r.castes END AS caste, r.territory, r.grid, r.hectad,
    r.first_year // 10 AS decade, e.level
  FROM interpreted_records AS r
  JOIN record_evidence AS e USING (record_no)
  WHERE r.taxon_id IN (SELECT taxon_id FROM look_alikes UNION SELECT taxon_id FROM needed)
    AND r.status IN ('used', 'held') AND r.present AND NOT e.confirmed
    AND r.record_no NOT IN (SELECT record_no FROM review_findings WHERE check_name = 'unexpected_place_season')
),
listed AS (
  SELECT u.record_no, min_by(n.level, n.place_in_list) AS needed_level
  FROM unasked AS u
  JOIN needed AS n
    ON n.taxon_id = u.taxon_id AND (n.caste = '' OR n.caste = u.caste) AND (n.territory = '' OR n.territory = u.territory)
  GROUP BY u.record_no
),
beside AS (
  SELECT u.taxon_id, u.grid, u.hectad, u.decade, min(l.other_id) AS other_id
  FROM (SELECT DISTINCT taxon_id, grid, hectad, decade FROM unasked) AS u
  JOIN look_alikes AS l USING (taxon_id)
  JOIN look_alikes_near AS n ON n.taxon_id = l.other_id AND n.grid = u.grid AND n.hectad = u.hectad AND n.decade = u.decade
  GROUP BY u.taxon_id, u.grid, u.hectad, u.decade
)
SELECT u.record_no, u.taxon_id, u.caste, u.territory, u.hectad, u.level, coalesce(l.needed_level, s.level) AS needed_level, s.words, b.other_id,
  l.record_no IS NOT NULL AS listed
FROM unasked AS u
LEFT JOIN listed AS l USING (record_no)
LEFT JOIN settling AS s ON s.taxon_id = u.taxon_id AND s.caste = u.caste
LEFT JOIN beside AS b ON b.taxon_id = u.taxon_id AND b.grid = u.grid AND b.hectad = u.hectad AND b.decade = u.decade
WHERE CASE WHEN l.record_no IS NOT NULL THEN u.level < l.needed_level ELSE u.level < s.level AND s.level = 3 AND b.other_id IS NOT NULL END;
