/** A circle on a projection, in metres. */
export interface Circle {
  readonly easting: number;
  readonly northing: number;
  /** 0 or more. */
  readonly radius: number;
}

/** Sides of a rectangle along the axes of the same projection, in metres; −Infinity and Infinity are allowed. */
export interface Rectangle {
  readonly west: number;
  readonly south: number;
  readonly east: number;
  readonly north: number;
}

/**
 * Exact share of a circle's area inside a rectangle, in closed form: with F(a, b) the area of the unit disc where
 * x ≤ a and y ≤ b, the share is [F(e, n) − F(w, n) − F(e, s) + F(w, s)] / π. A circle on the ground is taken as a
 * circle on the projection, which is good to 0.1 % of its radius on the national grids.
 *
 * @param circle a circle of radius 0 is its centre, and belongs to the rectangle on whose west or south side it lies
 * @param rectangle may be empty (west = east), never the wrong way round
 * @returns 0 to 1
 * @throws {RangeError} for a negative or missing radius, a centre that is not finite, or sides the wrong way round
 * @example shareOfCircleInRectangle({ easting: 0, northing: 0, radius: 1 }, { west: 0, south: 0, east: 9, north: 9 }); // => 0.25
 */
export function shareOfCircleInRectangle(circle: Circle, rectangle: Rectangle): number {
  const { easting, northing, radius } = circle;
  const { west, south, east, north } = rectangle;
  if (!(radius >= 0 && radius < Infinity && Number.isFinite(easting) && Number.isFinite(northing))) {
    throw new RangeError(`a circle at ${easting} ${northing} of radius ${radius} is not a circle`);
  }
  if (!(west <= east && south <= north)) {
    throw new RangeError(`a rectangle from ${west} ${south} to ${east} ${north} has its sides the wrong way round`);
  }
  if (radius === 0) return easting >= west && easting < east && northing >= south && northing < north ? 1 : 0;
  const w = (west - easting) / radius;
  const s = (south - northing) / radius;
  const e = (east - easting) / radius;
  const n = (north - northing) / radius;
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
