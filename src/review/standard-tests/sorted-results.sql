-- Results and proposals in a fixed order, since distinct texts come in none.
-- In: results_found, proposals_found. Out: standard_results, standard_proposals.
CREATE OR REPLACE TABLE standard_results AS
SELECT source, guid, label, status, result, sum(records)::INTEGER AS records
FROM results_found GROUP BY ALL ORDER BY source, label, status, result;

CREATE OR REPLACE TABLE standard_proposals AS
SELECT * FROM proposals_found ORDER BY source, label, record_no;

DROP TABLE results_found;
DROP TABLE proposals_found;
