-- Finds each event's parent, by its eventID or else by its id in the archive.
-- In: archive_core. Out: archive_core with parent_id (NULL without a parent in the archive).
CREATE OR REPLACE TABLE archive_core AS
SELECT e.*, nullif(coalesce(named.core_id, numbered.core_id), e.core_id) AS parent_id
FROM archive_core AS e
LEFT JOIN (SELECT "eventID" AS event_id, min(core_id) AS core_id FROM archive_core GROUP BY "eventID") AS named
  ON named.event_id = nullif(e."link_parentEventID", '')
LEFT JOIN archive_core AS numbered ON numbered.core_id = nullif(e."link_parentEventID", '');
