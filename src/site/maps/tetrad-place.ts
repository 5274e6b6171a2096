import { type Grid, isRefusal, type Square } from "../../grids/grid.ts";

/**
 * Reads a square's code on whichever of an atlas's grids it belongs to. Codes of different grids can look alike,
 * so the grid on which its 10 km square is one of the atlas's comes first.
 *
 * @param code as published, for example "NZ27A"
 * @param grids the atlas's grids, in its own order
 * @param isListed true where the atlas has a 10 km square of that grid at that corner, in metres
 * @returns the square, or undefined where no grid reads the code
 * @example readSquare("NZ27A", [british], () => true) // { grid: "british", crs: "EPSG:27700", easting: 420_000, northing: 570_000, size: 2000 }
 */
export function readSquare(
  code: string,
  grids: readonly Grid[],
  isListed: (grid: string, easting: number, northing: number) => boolean,
): Square | undefined {
  const read = grids.map((grid) => grid.parse(code)).flatMap((answer) => (isRefusal(answer) ? [] : [answer]));
  return read.find(({ grid, easting, northing }) => isListed(grid, floorTo(easting), floorTo(northing))) ?? read[0];
}

function floorTo(metres: number): number {
  return Math.floor(metres / 10_000) * 10_000;
}
