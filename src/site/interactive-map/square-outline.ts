/** A place on Earth: longitude and latitude. */
export type Place = readonly [longitude: number, latitude: number];

/**
 * The outline round pieces of one square: the smallest ring that holds all their points (Andrew 1979, "Another
 * efficient algorithm for convex hulls in two dimensions", Information Processing Letters 9, 216–219). Tiles cut a
 * square in pieces, and its spine and page are pieces too; the ring round them all has no line between them.
 *
 * @param points corners of the pieces, any order
 * @returns a closed ring, its first point again at the end; empty where the points make no area
 * @example outlineOf([[0, 0], [1, 0], [2, 0], [2, 2], [0, 2], [1, 1]]) // [[0, 0], [2, 0], [2, 2], [0, 2], [0, 0]]
 */
export function outlineOf(points: readonly Place[]): Place[] {
  const sorted = points.toSorted(([ax, ay], [bx, by]) => ax - bx || ay - by);
  const lower = halfOutline(sorted);
  const upper = halfOutline(sorted.toReversed());
  const ring = [...lower.slice(0, -1), ...upper.slice(0, -1)];
  const [first] = ring;
  return first === undefined || ring.length < 3 ? [] : [...ring, first];
}

function halfOutline(points: readonly Place[]): Place[] {
  const kept: Place[] = [];
  for (const point of points) {
    while (kept.length >= 2 && turn(kept.at(-2), kept.at(-1), point) <= 0) kept.pop();
    kept.push(point);
  }
  return kept;
}

function turn([ax, ay]: Place = [0, 0], [bx, by]: Place = [0, 0], [cx, cy]: Place): number {
  return (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
}
