-- Records that stand alone, each with places where they would be looked for: where the same recorder was that day, and
-- where nearly all of the recorder's or the locality's records of the source are.
-- Records of a day within {together_m} m of each other keep each other company: what has company is not odd.
-- A day with more than {most_places} places is no walk of one person: nothing is looked for on it. Nor is anything looked
-- for by day where the recorder's places usually stand alone, as those of a county's service or of traps do.
-- In: placed_records, raw_records. Out: odd_places (record_no, place_id, companion_no, mate_records, mates, longitude, latitude,
-- reach_m of the mate, gap_m).
CREATE OR REPLACE TABLE day_places AS
SELECT recorder, first_day, longitude, latitude, min(reach_m) AS reach_m, count(*) AS records, min(record_no) AS record_no
FROM placed_records
WHERE recorder <> '' AND first_day = last_day
GROUP BY recorder, first_day, longitude, latitude;

CREATE OR REPLACE TABLE walked_places AS
WITH walked AS (
  SELECT p.*
  FROM day_places AS p
  JOIN (
    SELECT recorder, first_day FROM day_places GROUP BY recorder, first_day HAVING count(*) BETWEEN 2 AND {most_places}
  ) AS d ON d.recorder = p.recorder AND d.first_day = p.first_day
)
SELECT odd.*, sum(mate.records) FILTER ({gap} <= {together_m})::INTEGER AS company
FROM walked AS odd
JOIN walked AS mate ON mate.recorder = odd.recorder AND mate.first_day = odd.first_day
GROUP BY ALL;

CREATE OR REPLACE TABLE walkers AS
SELECT recorder FROM walked_places GROUP BY recorder
HAVING count(*) < {usual_records} OR 2 * count(*) FILTER (company > 1) >= count(*);

CREATE OR REPLACE TABLE keyed_places AS
SELECT source, key, longitude, latitude, min(reach_m) AS reach_m, count(*) AS records, min(record_no) AS record_no
FROM (
  SELECT source, 'recorder ' || recorder AS key, longitude, latitude, reach_m, record_no FROM placed_records WHERE recorder <> ''
  UNION ALL
  SELECT p.source, 'locality ' || lower(trim(r.locality)), p.longitude, p.latitude, p.reach_m, p.record_no
  FROM placed_records AS p JOIN raw_records AS r USING (record_no)
  WHERE trim(r.locality) <> ''
)
GROUP BY source, key, longitude, latitude;

CREATE OR REPLACE TABLE usual_places AS
SELECT p.*
FROM keyed_places AS p
JOIN (SELECT source, key, sum(records) AS records FROM keyed_places GROUP BY source, key HAVING sum(records) >= {usual_records}) AS k
  ON k.source = p.source AND k.key = p.key
WHERE p.records >= {usual_share} * k.records;

CREATE OR REPLACE TABLE odd_places AS
WITH pairs AS (
  SELECT odd.record_no, mate.record_no AS companion_no, mate.company AS mate_records, 'day' AS mates,
    mate.longitude, mate.latitude, mate.reach_m, {gap} AS gap_m
  FROM walked_places AS odd
  JOIN walked_places AS mate ON mate.recorder = odd.recorder AND mate.first_day = odd.first_day
  WHERE odd.company = 1 AND mate.record_no <> odd.record_no AND odd.recorder IN (SELECT recorder FROM walkers)
  UNION ALL
  SELECT odd.record_no, mate.record_no, mate.records, split_part(mate.key, ' ', 1),
    mate.longitude, mate.latitude, mate.reach_m, {gap}
  FROM keyed_places AS odd
  JOIN usual_places AS mate ON mate.source = odd.source AND mate.key = odd.key
  WHERE odd.records = 1 AND mate.record_no <> odd.record_no
)
SELECT p.*, r.place_id
FROM pairs AS p
JOIN placed_records AS r USING (record_no)
WHERE p.gap_m > {together_m} AND r.counts;
