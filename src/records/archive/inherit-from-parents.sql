-- One step of inheritance: what an event lacks it takes from its parent, whose parent becomes its own. Each step doubles
-- the number of generations looked through, and the nearest counts.
-- In: archive_core. Out: archive_core.
CREATE OR REPLACE TABLE archive_core AS
SELECT {columns}, parent.parent_id
FROM archive_core AS e
LEFT JOIN archive_core AS parent ON parent.core_id = e.parent_id;
