/** Where the grids lie on the small map, so that a click can be read as a square. */
import type { Affine } from "../../maps/affine.ts";

/** One grid on the map: a matrix from units of 10 km, east and north, to units of the map. */
export interface MapGrid {
  readonly grid: string;
  readonly matrix: Affine;
}

/**
 * The corner of the 10 km square of a grid under a point of the map.
 *
 * @param mapGrid a grid on the map
 * @param x units of the map
 * @param y units of the map, downwards
 * @returns easting and northing of the square's south-west corner, in units of 10 km
 * @example cornerAt({ grid: "british", matrix: [4, 0, 0, -4, 80, 492] }, 250, 263) // [42, 57]
 */
export function cornerAt({ matrix: [a, b, c, d, e, f] }: MapGrid, x: number, y: number): [number, number] {
  const determinant = a * d - b * c;
  const [u, v] = [x - e, y - f];
  return [Math.floor((d * u - c * v) / determinant), Math.floor((a * v - b * u) / determinant)];
}
