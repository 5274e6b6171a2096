/** A plane affine transform in SVG's order: x' = a x + c y + e, y' = b x + d y + f. */
export type Affine = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

/** A point before and after a transform. */
export interface PointPair {
  readonly from: readonly [x: number, y: number];
  readonly to: readonly [x: number, y: number];
}

/**
 * Where an affine transform puts a point.
 *
 * @param matrix six numbers in SVG's order
 * @param x first coordinate
 * @param y second coordinate
 * @returns the point in the target's units
 * @example applyAffine([2, 0, 0, 2, 10, 0], 3, 4) // [16, 8]
 */
export function applyAffine([a, b, c, d, e, f]: Affine, x: number, y: number): [number, number] {
  return [a * x + c * y + e, b * x + d * y + f];
}

/**
 * The affine transform that fits pairs of points best by least squares, and the largest distance it misses by.
 * Two projected grids differ by a little more than an affine transform; the error says by how much on this map.
 *
 * @param pairs at least three pairs that do not lie on one line
 * @returns the matrix, and the largest residual in units of the target; infinite where the pairs lie on one line
 * @example fitAffine([{ from: [0, 0], to: [5, 5] }, { from: [1, 0], to: [7, 5] }, { from: [0, 1], to: [5, 7] }]).matrix // [2, 0, 0, 2, 5, 5]
 */
export function fitAffine(pairs: readonly PointPair[]): { matrix: Affine; error: number } {
  const mean = (pick: (pair: PointPair) => number) => pairs.reduce((sum, pair) => sum + pick(pair), 0) / pairs.length;
  const [mx, my] = [mean((pair) => pair.from[0]), mean((pair) => pair.from[1])];
  const [mu, mv] = [mean((pair) => pair.to[0]), mean((pair) => pair.to[1])];
  let [xx, xy, yy, xu, yu, xv, yv] = [0, 0, 0, 0, 0, 0, 0];
  for (const { from, to } of pairs) {
    const [x, y, u, v] = [from[0] - mx, from[1] - my, to[0] - mu, to[1] - mv];
    [xx, xy, yy] = [xx + x * x, xy + x * y, yy + y * y];
    [xu, yu, xv, yv] = [xu + x * u, yu + y * u, xv + x * v, yv + y * v];
  }
  const determinant = xx * yy - xy * xy;
  if (!(determinant > 0)) return { matrix: [1, 0, 0, 1, mu - mx, mv - my], error: Number.POSITIVE_INFINITY };
  const a = (xu * yy - yu * xy) / determinant;
  const c = (yu * xx - xu * xy) / determinant;
  const b = (xv * yy - yv * xy) / determinant;
  const d = (yv * xx - xv * xy) / determinant;
  const matrix: Affine = [a, b, c, d, mu - a * mx - c * my, mv - b * mx - d * my];
  return { matrix, error: largestMiss(matrix, pairs) };
}

function largestMiss(matrix: Affine, pairs: readonly PointPair[]): number {
  let worst = 0;
  for (const { from, to } of pairs) {
    const [u, v] = applyAffine(matrix, from[0], from[1]);
    worst = Math.max(worst, Math.hypot(u - to[0], v - to[1]));
  }
  return worst;
}
