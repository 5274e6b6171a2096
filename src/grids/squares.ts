import type { Grid, ProjectedPoint, Square, SquareSize } from "./grid.ts";

/**
 * The one square of a coarser size that holds a whole square. Coarsening truncates, never rounds.
 *
 * @param grid the square's own grid
 * @param square for example the monad TQ3877
 * @param size side in metres of the square wanted, the same or coarser
 * @returns the square; undefined where none holds it whole (the tetrads across the middle of a hectad lie in two
 *   quarters, and nothing is inside a finer square) or the grid has no such size
 * @example parentOf(britishGrid(), { grid: "british", crs: "EPSG:27700", easting: 538000, northing: 177000, size: 1000 }, 10_000);
 *   // => { grid: "british", crs: "EPSG:27700", easting: 530000, northing: 170000, size: 10000 }
 */
export function parentOf(grid: Grid, square: Square, size: SquareSize): Square | undefined {
  if (size < square.size) return undefined;
  const parent = grid.squareAt(square, size);
  if (parent === undefined) return undefined;
  const holdsEast = square.easting + square.size <= parent.easting + size;
  const holdsNorth = square.northing + square.size <= parent.northing + size;
  return holdsEast && holdsNorth ? parent : undefined;
}

/**
 * The finer squares that tile a square, column by column from the south-west corner, northwards first (the order of
 * tetrad letters). Squares the grid does not have (beyond a zone's edge) are left out.
 *
 * @param grid the square's own grid
 * @param square for example the hectad TQ37
 * @param size side in metres; must divide the square's
 * @returns (square.size / size)² squares
 * @throws {RangeError} when the size does not tile the square
 * @example childrenOf(britishGrid(), hectad, 2_000).length; // => 25
 */
export function childrenOf(grid: Grid, square: Square, size: SquareSize): Square[] {
  if (size > square.size || square.size % size !== 0) {
    throw new RangeError(`squares of ${size} m do not tile a square of ${square.size} m`);
  }
  const children: Square[] = [];
  for (let east = 0; east < square.size; east += size) {
    for (let north = 0; north < square.size; north += size) {
      const corner = { crs: square.crs, easting: square.easting + east, northing: square.northing + north };
      const child = grid.squareAt(corner, size);
      if (child !== undefined) children.push(child);
    }
  }
  return children;
}

/**
 * Corners of a square in its own coordinates, counter-clockwise from the south-west: SW, SE, NE, NW.
 *
 * @param square any square
 * @returns four points in metres
 * @example cornersOf(square)[2]; // => { crs: "EPSG:27700", easting: 540000, northing: 180000 } for TQ37
 */
export function cornersOf({
  crs,
  easting,
  northing,
  size,
}: Square): [ProjectedPoint, ProjectedPoint, ProjectedPoint, ProjectedPoint] {
  return [
    { crs, easting, northing },
    { crs, easting: easting + size, northing },
    { crs, easting: easting + size, northing: northing + size },
    { crs, easting, northing: northing + size },
  ];
}

/**
 * Centre of a square in its own coordinates.
 *
 * @param square any square
 * @returns the point in metres; half metres for squares of 1 m
 * @example centreOf(square); // => { crs: "EPSG:27700", easting: 535000, northing: 175000 } for TQ37
 */
export function centreOf({ crs, easting, northing, size }: Square): ProjectedPoint {
  return { crs, easting: easting + size / 2, northing: northing + size / 2 };
}
