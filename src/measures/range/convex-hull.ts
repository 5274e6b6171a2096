import { convex } from "@turf/convex";

/** Directions in which the outermost points are sought before the hull is made. */
const DIRECTIONS = Array.from({ length: 8 }, (_, step) => [
  Math.cos((step * Math.PI) / 4),
  Math.sin((step * Math.PI) / 4),
]);

/**
 * Smallest convex polygon round some points of a plane. Points inside the polygon of the outermost in eight directions are
 * dropped first (Akl & Toussaint 1978, Information Processing Letters 7: 219–222), because most are.
 *
 * @param points in any order, repeated or not
 * @returns its corners in order of their angle, counter-clockwise, the first not repeated; none where all lie on one line
 * @example convexHull([{ x: 0, y: 0 }, { x: 2, y: 0 }, { x: 1, y: 0.5 }, { x: 0, y: 2 }]).length // => 3
 */
export function convexHull<Point extends { readonly x: number; readonly y: number }>(
  points: readonly Point[],
): Point[] {
  const rim = outermost(points);
  const kept = points.filter((point) => !isWithin(point, rim));
  const hull = convex({ type: "MultiPoint", coordinates: kept.map(({ x, y }) => [x, y]) });
  const corners = hull?.geometry.coordinates[0]?.slice(0, -1) ?? [];
  const at = new Map(kept.map((point) => [`${point.x} ${point.y}`, point]));
  const ring = corners.flatMap(([x, y]) => at.get(`${x} ${y}`) ?? []);
  return turns(ring) < 0 ? ring.reverse() : ring;
}

/** The outermost points in eight directions, counter-clockwise, each once. */
function outermost<Point extends { readonly x: number; readonly y: number }>(points: readonly Point[]): Point[] {
  const rim = DIRECTIONS.flatMap(([east = 0, north = 0]) => {
    let [best, most] = [points[0], -Infinity];
    for (const point of points) {
      const far = point.x * east + point.y * north;
      if (far > most) [best, most] = [point, far];
    }
    return best ?? [];
  });
  return rim.filter((point, index) => point !== rim[(index + 1) % rim.length]);
}

/** Whether a point is inside a convex polygon, clear of its sides by more than rounding. */
function isWithin(point: { x: number; y: number }, rim: readonly { x: number; y: number }[]): boolean {
  if (rim.length < 3) return false;
  return rim.every((from, index) => {
    const to = rim[(index + 1) % rim.length] ?? from;
    const left = (to.x - from.x) * (point.y - from.y) - (to.y - from.y) * (point.x - from.x);
    return left > 1e-12 * (Math.abs(to.x - from.x) + Math.abs(to.y - from.y));
  });
}

/** Twice the area of a ring, below 0 where it runs clockwise. */
function turns(ring: readonly { x: number; y: number }[]): number {
  return ring.reduce((sum, { x, y }, index) => {
    const next = ring[(index + 1) % ring.length] ?? { x, y };
    return sum + x * next.y - next.x * y;
  }, 0);
}
