import type { Grid, ProjectedPoint } from "../grids/grid.ts";

/**
 * A WGS84 position in a grid's own coordinates; undefined where its projection does not reach.
 *
 * @param longitude degrees
 * @param latitude degrees
 * @example projectOn(britishGrid(), 52.8, -2.2) // => undefined: latitude and longitude exchanged
 */
export function projectOn(grid: Grid, longitude: number, latitude: number): ProjectedPoint | undefined {
  try {
    return grid.project(longitude, latitude);
  } catch {
    return undefined;
  }
}

/**
 * Whether a grid has a 100 km square at a WGS84 position: where the only territory of an atlas has no polygon, it ends
 * where its grid does.
 *
 * @param longitude degrees
 * @param latitude degrees
 * @example isOnGrid(britishGrid(), -2.2, 52.8) // => true
 */
export function isOnGrid(grid: Grid, longitude: number, latitude: number): boolean {
  const point = projectOn(grid, longitude, latitude);
  return point !== undefined && grid.squareAt(point, 100_000) !== undefined;
}
