-- The distinct texts on surroundings that records state, each with an id: what TypeScript reads once. Records that state
-- none have no row anywhere, so that a scheme without them pays nothing.
-- In: stated_records. Out: surrounding_texts.
CREATE OR REPLACE TABLE surrounding_texts AS
SELECT row_number() OVER () AS surrounding_id, *
FROM (
  SELECT DISTINCT habitat, "flowerVisited", "nestSite", host, "associatedTaxa"
  FROM stated_records
  WHERE habitat <> '' OR "flowerVisited" <> '' OR "nestSite" <> '' OR host <> '' OR "associatedTaxa" <> ''
);
