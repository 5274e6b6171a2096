-- What a set of evidence says of a group whose taxa are set against each other: taxa that are no aggregate of other taxa.
-- Visits of records shown coarser may be counted already, and are none here.
-- In: set_evidence, closure, taxon_ids, square_places. Out: group_squares (square, period, taxon_id; recorded there then, once
-- each), group_visits (visit, square, period, third, taxon_id; once each), group_places (square, latitude, longitude).
CREATE OR REPLACE TABLE group_taxa AS
SELECT taxon_id FROM taxon_ids WHERE taxon_id NOT IN (SELECT counts_for FROM closure WHERE counts_for <> taxon_id);

CREATE OR REPLACE TABLE group_squares AS
SELECT DISTINCT grid || ' ' || hectad AS square, period, taxon_id
FROM set_evidence JOIN group_taxa USING (taxon_id)
WHERE present AND hectad IS NOT NULL AND period IS NOT NULL;

CREATE OR REPLACE TABLE group_visits AS
SELECT DISTINCT visit, grid || ' ' || hectad AS square, period, third, taxon_id
FROM set_evidence JOIN group_taxa USING (taxon_id)
WHERE present AND NOT generalised AND hectad IS NOT NULL AND period IS NOT NULL AND visit IS NOT NULL AND third IS NOT NULL;

CREATE OR REPLACE TABLE group_places AS
SELECT p.grid || ' ' || p.square AS square, p.latitude, p.longitude
FROM square_places AS p
WHERE p.resolution_m = 10000 AND p.grid || ' ' || p.square IN (SELECT square FROM group_squares);
