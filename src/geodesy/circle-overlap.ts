/**
 * Exact share of a circle's area inside an axis-aligned rectangle, in closed form: with F(a, b) the area of the unit
 * disc where x ≤ a and y ≤ b, the share is [F(e, n) − F(w, n) − F(e, s) + F(w, s)] / π. All lengths in one unit
 * (metres of one projection); a projected circle is taken as a circle, which is good to 0.1 % on the national grids.
 *
 * @param cx centre, eastwards
 * @param cy centre, northwards
 * @param r radius, 0 or more; a circle of radius 0 is its centre, and counts to the rectangle on whose west or south side it lies
 * @param west side of the rectangle; −Infinity is allowed, and Infinity for the east and north
 * @param south side
 * @param east side, at least `west`
 * @param north side, at least `south`
 * @returns 0 to 1
 * @throws {RangeError} for a negative or missing radius, a centre that is not finite, or sides the wrong way round
 * @example shareOfCircleInRectangle(0, 0, 1, 0, 0, 10, 10); // => 0.25
 */
export function shareOfCircleInRectangle(
  cx: number,
  cy: number,
  r: number,
  west: number,
  south: number,
  east: number,
  north: number,
): number {
  if (!(r >= 0 && r < Infinity && Number.isFinite(cx) && Number.isFinite(cy))) {
    throw new RangeError(`a circle at ${cx} ${cy} of radius ${r} is not a circle`);
  }
  if (!(west <= east && south <= north)) {
    throw new RangeError(`a rectangle from ${west} ${south} to ${east} ${north} has its sides the wrong way round`);
  }
  if (r === 0) return cx >= west && cx < east && cy >= south && cy < north ? 1 : 0;
  const w = (west - cx) / r;
  const s = (south - cy) / r;
  const e = (east - cx) / r;
  const n = (north - cy) / r;
  if (w >= 1 || e <= -1 || s >= 1 || n <= -1) return 0;
  if (w <= -1 && e >= 1 && s <= -1 && n >= 1) return 1;
  const area = discBelow(e, n) - discBelow(w, n) - discBelow(e, s) + discBelow(w, s);
  return Math.min(1, Math.max(0, area / Math.PI));
}

/** Area of the unit disc where x ≤ a and y ≤ b. */
function discBelow(a: number, b: number): number {
  if (a <= -1 || b <= -1) return 0;
  const x = Math.min(a, 1);
  const y = Math.min(b, 1);
  if (x * x + y * y < 1) return Math.PI / 4 + strip(x) + strip(y) + x * y;
  if (x >= 0 && y >= 0) return Math.PI - cap(x) - cap(y);
  if (x < 0 && y >= 0) return cap(-x);
  return y < 0 && x >= 0 ? cap(-y) : 0;
}

/** Area under the unit circle's upper half between 0 and t. */
function strip(t: number): number {
  return (t * Math.sqrt(1 - t * t) + Math.asin(t)) / 2;
}

/** Area of the unit disc beyond a chord at distance t from the centre, 0 to 1. */
function cap(t: number): number {
  return Math.acos(t) - t * Math.sqrt(1 - t * t);
}
