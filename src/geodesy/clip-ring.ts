/** A closed line of a plane as x and y in turn, the first point not repeated. */
export type Ring = readonly number[];

/** A rectangle along the axes of a plane. */
export interface Rectangle {
  readonly west: number;
  readonly south: number;
  readonly east: number;
  readonly north: number;
}

/**
 * What of a ring lies in a rectangle, cut side by side (Sutherland & Hodgman 1974, Communications of the ACM 17: 32–42).
 * Where the ring leaves and enters again the parts stay joined along the rectangle's sides, which adds nothing to the area.
 *
 * @returns a ring; empty where nothing of it lies inside
 * @example clipRing([0, 0, 4, 0, 4, 4, 0, 4], { west: 2, south: 2, east: 9, north: 9 }) // => [4, 2, 4, 4, 2, 4, 2, 2]
 */
export function clipRing(ring: Ring, { west, south, east, north }: Rectangle): Ring {
  return cut(cut(cut(cut(ring, 0, 1, west), 0, -1, east), 1, 1, south), 1, -1, north);
}

/** The part of a ring on one side of a line along an axis: at or above the bound for side 1, at or below for side −1. */
function cut(ring: Ring, axis: 0 | 1, side: 1 | -1, bound: number): Ring {
  const kept: number[] = [];
  for (let index = 0; index < ring.length; index += 2) {
    const before = index === 0 ? ring.length - 2 : index - 2;
    const [fromX, fromY] = [ring[before] ?? 0, ring[before + 1] ?? 0];
    const [x, y] = [ring[index] ?? 0, ring[index + 1] ?? 0];
    const was = side * ((axis === 0 ? fromX : fromY) - bound);
    const is = side * ((axis === 0 ? x : y) - bound);
    if (was >= 0 !== is >= 0) {
      const part = was / (was - is);
      if (axis === 0) kept.push(bound, fromY + part * (y - fromY));
      else kept.push(fromX + part * (x - fromX), bound);
    }
    if (is >= 0) kept.push(x, y);
  }
  return kept;
}

/**
 * Area of a ring in the square of its unit, whichever way it runs.
 *
 * @example ringArea([0, 0, 4, 0, 4, 4, 0, 4]) // => 16
 */
export function ringArea(ring: Ring): number {
  const [originX, originY] = [ring[0] ?? 0, ring[1] ?? 0];
  let twice = 0;
  for (let index = 0; index < ring.length; index += 2) {
    const next = (index + 2) % ring.length;
    const [x, y] = [(ring[index] ?? 0) - originX, (ring[index + 1] ?? 0) - originY];
    twice += x * ((ring[next + 1] ?? 0) - originY) - ((ring[next] ?? 0) - originX) * y;
  }
  return Math.abs(twice) / 2;
}

/**
 * Bounds of a ring.
 *
 * @example boundsOf([0, 0, 4, 0, 4, 3]) // => { west: 0, south: 0, east: 4, north: 3 }
 */
export function boundsOf(ring: Ring): Rectangle {
  let [west, south, east, north] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let index = 0; index < ring.length; index += 2) {
    const [x, y] = [ring[index] ?? 0, ring[index + 1] ?? 0];
    [west, south, east, north] = [Math.min(west, x), Math.min(south, y), Math.max(east, x), Math.max(north, y)];
  }
  return { west, south, east, north };
}

/** Whether two rectangles have a point in common. @example overlap(a, a) // => true */
export function overlap(one: Rectangle, other: Rectangle): boolean {
  return one.west <= other.east && other.west <= one.east && one.south <= other.north && other.south <= one.north;
}
