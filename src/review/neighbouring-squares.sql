-- Pairs of squares up to {kilometres} apart. Squares are sorted into boxes of that side, so that only those of the same and
-- of touching boxes are compared. A chord of the sphere becomes the arc over it: arc = diameter × asin(chord / diameter).
-- In: review_squares. Out: neighbouring_squares (square_id, other_id, km).
CREATE OR REPLACE TABLE neighbouring_squares AS
WITH boxed AS (
  SELECT square_id, x, y, z,
    floor(x / {kilometres})::INTEGER AS box_x, floor(y / {kilometres})::INTEGER AS box_y, floor(z / {kilometres})::INTEGER AS box_z
  FROM review_squares
),
step AS (SELECT unnest([-1, 0, 1]) AS by),
around AS (
  SELECT b.square_id, b.x, b.y, b.z, b.box_x + i.by AS box_x, b.box_y + j.by AS box_y, b.box_z + k.by AS box_z
  FROM boxed AS b CROSS JOIN step AS i CROSS JOIN step AS j CROSS JOIN step AS k
)
SELECT square_id, other_id, {diameter} * asin(sqrt(chord_squared) / {diameter}) AS km
FROM (
  SELECT a.square_id, b.square_id AS other_id, (a.x - b.x) ** 2 + (a.y - b.y) ** 2 + (a.z - b.z) ** 2 AS chord_squared
  FROM around AS a JOIN boxed AS b USING (box_x, box_y, box_z)
)
WHERE chord_squared <= ({diameter} * sin({kilometres} / {diameter})) ** 2;
