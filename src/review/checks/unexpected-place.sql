-- Reports and visits of other people around each place where a taxon has few supporters: leave-one-out, for what a person
-- reported there themself never speaks for their own record.
-- Where {independent} or more others reported the taxon within the innermost ring, in the record's years or the {years}
-- before or after, a place is expected and nothing more is counted.
-- In: support, effort, taxon_reports, neighbouring_squares, rings (ring, from_km, to_km). Out: doubtful_places (place_no, taxon_no,
-- square_id, slab, supporter), place_rings (place_no, ring, visits, reports, lone: what others reported within the two
-- inner rings is one person's, all_share: of all visits, those of others that reported it),
-- place_years (place_no, visits and reports of others in the whole atlas in those years).
CREATE OR REPLACE TABLE window_support AS
SELECT DISTINCT taxon_no, square_id, slab + near.by AS slab, supporter, weight
FROM support CROSS JOIN (SELECT unnest([-1, 0, 1]) AS by) AS near;

CREATE OR REPLACE TABLE ring_neighbours AS
SELECT n.square_id, n.other_id, r.ring
FROM neighbouring_squares AS n JOIN rings AS r ON n.km > r.from_km AND n.km <= r.to_km;

-- First by the square alone, which settles most, then with its neighbours.
CREATE OR REPLACE TABLE few_in_square AS
SELECT p.taxon_no, p.square_id, p.slab
FROM (SELECT DISTINCT taxon_no, square_id, slab FROM support) AS p
JOIN window_support AS w USING (taxon_no, square_id, slab)
GROUP BY p.taxon_no, p.square_id, p.slab
HAVING sum(w.weight) - 1 < {independent};

CREATE OR REPLACE TABLE few_around AS
SELECT taxon_no, square_id, slab
FROM (
  SELECT DISTINCT p.taxon_no, p.square_id, p.slab, w.supporter, w.weight
  FROM few_in_square AS p
  JOIN ring_neighbours AS n ON n.square_id = p.square_id AND n.ring = 0
  JOIN window_support AS w ON w.taxon_no = p.taxon_no AND w.square_id = n.other_id AND w.slab = p.slab
)
GROUP BY taxon_no, square_id, slab
HAVING sum(weight) - 1 < {independent};

CREATE OR REPLACE TABLE doubtful_places AS
SELECT row_number() OVER (ORDER BY s.taxon_no, s.square_id, s.slab, s.supporter)::INTEGER AS place_no,
  s.taxon_no, s.square_id, s.slab, s.supporter
FROM support AS s JOIN few_around USING (taxon_no, square_id, slab);

CREATE OR REPLACE TABLE place_rings AS
WITH visits_around AS (
  SELECT p.square_id, p.slab, n.ring, sum(e.visits) AS visits
  FROM (SELECT DISTINCT square_id, slab FROM few_around) AS p
  JOIN ring_neighbours AS n USING (square_id)
  JOIN (
    SELECT square_id, slab + near.by AS slab, sum(visits) AS visits
    FROM effort CROSS JOIN (SELECT unnest([-1, 0, 1]) AS by) AS near GROUP BY ALL
  ) AS e ON e.square_id = n.other_id AND e.slab = p.slab
  GROUP BY p.square_id, p.slab, n.ring
),
own_visits AS (
  SELECT p.square_id, p.slab, p.supporter, n.ring, sum(e.visits) AS visits
  FROM (SELECT DISTINCT square_id, slab, supporter FROM doubtful_places) AS p
  JOIN effort AS e ON e.supporter = p.supporter AND e.slab BETWEEN p.slab - 1 AND p.slab + 1
  JOIN ring_neighbours AS n ON n.square_id = p.square_id AND n.other_id = e.square_id
  GROUP BY p.square_id, p.slab, p.supporter, n.ring
),
-- Whether reports of others are one person's: then the least and the greatest supporter are the same.
reports_around AS (
  SELECT p.place_no, n.ring, sum(s.reports) AS reports,
    min(s.supporter) AS one, max(s.supporter) AS other, max(s.weight) AS weight
  FROM doubtful_places AS p
  JOIN ring_neighbours AS n USING (square_id)
  JOIN support AS s
    ON s.taxon_no = p.taxon_no AND s.square_id = n.other_id AND s.supporter <> p.supporter AND s.slab BETWEEN p.slab - 1 AND p.slab + 1
  GROUP BY p.place_no, n.ring
),
lone AS (
  SELECT place_no, min(one) = max(other) AND max(weight) = 1 AS lone
  FROM reports_around WHERE ring <= 1 GROUP BY place_no
)
SELECT p.place_no, r.ring, (t.reports - w.reports) / t.visits AS all_share, (coalesce(v.visits, 0) - coalesce(o.visits, 0))::INTEGER AS visits,
  coalesce(x.reports, 0)::INTEGER AS reports, coalesce(l.lone, false) AND r.ring <= 1 AS lone
FROM doubtful_places AS p
JOIN taxon_reports AS t USING (taxon_no)
JOIN (SELECT taxon_no, supporter, sum(reports) AS reports FROM support GROUP BY taxon_no, supporter) AS w USING (taxon_no, supporter)
CROSS JOIN rings AS r
LEFT JOIN visits_around AS v ON v.square_id = p.square_id AND v.slab = p.slab AND v.ring = r.ring
LEFT JOIN own_visits AS o ON o.square_id = p.square_id AND o.slab = p.slab AND o.supporter = p.supporter AND o.ring = r.ring
LEFT JOIN reports_around AS x ON x.place_no = p.place_no AND x.ring = r.ring
LEFT JOIN lone AS l ON l.place_no = p.place_no;

CREATE OR REPLACE TABLE place_years AS
WITH near AS (SELECT unnest([-1, 0, 1]) AS by),
visits_then AS (SELECT slab + near.by AS slab, sum(visits) AS visits FROM effort CROSS JOIN near GROUP BY ALL),
own_visits AS (
  SELECT supporter, slab + near.by AS slab, sum(visits) AS visits
  FROM effort CROSS JOIN near WHERE supporter IN (SELECT supporter FROM doubtful_places) GROUP BY ALL
),
reports_then AS (SELECT taxon_no, slab + near.by AS slab, sum(reports) AS reports FROM support CROSS JOIN near GROUP BY ALL),
own_reports AS (
  SELECT s.taxon_no, s.supporter, s.slab + near.by AS slab, sum(s.reports) AS reports
  FROM support AS s JOIN (SELECT DISTINCT taxon_no, supporter FROM doubtful_places) USING (taxon_no, supporter) CROSS JOIN near GROUP BY ALL
)
SELECT p.place_no, (coalesce(v.visits, 0) - coalesce(o.visits, 0))::INTEGER AS visits, (r.reports - w.reports)::INTEGER AS reports
FROM doubtful_places AS p
JOIN reports_then AS r USING (taxon_no, slab)
JOIN own_reports AS w USING (taxon_no, supporter, slab)
LEFT JOIN visits_then AS v USING (slab)
LEFT JOIN own_visits AS o USING (supporter, slab);
