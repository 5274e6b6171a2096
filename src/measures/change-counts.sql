-- Change of each taxon between the compared periods, at both resolutions, in each territory and in all.
-- Only squares covered in both periods count as retained, gained or lost; the rest is counted beside.
-- In: square_states. Out: change_counts.
CREATE OR REPLACE TABLE change_counts AS
SELECT taxon_id, resolution_m, coalesce(territory, 'all') AS territory,
  count(*) FILTER (state = 'retained' AND covered_from AND covered_to) AS retained,
  count(*) FILTER (state = 'gained') AS gained,
  count(*) FILTER (state = 'lost') AS lost,
  count(*) FILTER (state = 'retained' AND NOT (covered_from AND covered_to)) AS recorded_both_not_covered,
  count(*) FILTER (state = 'not_comparable_since') AS not_comparable_since,
  count(*) FILTER (state = 'not_comparable_before') AS not_comparable_before,
  count(*) FILTER (NOT recorded_ever AND covered_from AND covered_to) AS covered_both_no_record,
  count(*) FILTER (NOT recorded_ever AND covered_from <> covered_to) AS covered_one_no_record,
  count(*) FILTER (NOT recorded_ever AND NOT covered_from AND NOT covered_to) AS covered_neither,
  count(*) FILTER (recorded_from) AS squares_from,
  count(*) FILTER (recorded_to) AS squares_to
FROM square_states
GROUP BY GROUPING SETS ((taxon_id, resolution_m, territory), (taxon_id, resolution_m));
