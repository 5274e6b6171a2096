/** The grid systems an atlas can use. */
export type GridId = "british" | "irish" | "channel-islands" | "laea" | "mgrs";

/**
 * Side of a square in metres. Hectad 10,000; 5 km quarter 5,000; tetrad 2,000; monad 1,000.
 * 50,000, 500 and 250 exist in the European grid (`laea`) alone.
 */
export type SquareSize = 100_000 | 50_000 | 10_000 | 5_000 | 2_000 | 1_000 | 500 | 250 | 100 | 10 | 1;

/** A point in a projected coordinate system: metres east and north in `crs` (an EPSG code such as "EPSG:27700"). */
export interface ProjectedPoint {
  readonly crs: string;
  readonly easting: number;
  readonly northing: number;
}

/** One square of a grid: its south-west corner in whole metres of `crs`, and its side in metres. */
export interface Square extends ProjectedPoint {
  readonly grid: GridId;
  readonly size: SquareSize;
}

/** Why a text is not a reference of a grid, in words for a finding: what was found, and the way out. */
export interface Refusal {
  readonly refused: string;
  readonly wayOut: string;
}

/**
 * What every grid system can do. A grid truncates, never rounds: a point belongs to the square
 * whose south-west corner is at or below it on both axes.
 */
export interface Grid {
  readonly id: GridId;
  /** Shown name, for example "British National Grid". */
  readonly name: string;
  /** Reads one reference in any form people write it (spaces, case); a text that names no square is refused, never shifted. */
  parse(text: string): Square | Refusal;
  /** The canonical reference of a square. `format(parse(x))` is the canonical form of x. */
  format(square: Square): string;
  /** Longitude and latitude (WGS84 degrees) to the grid's own projected coordinates; throws outside the projection. */
  project(longitude: number, latitude: number): ProjectedPoint;
  /** The reverse of `project`: [longitude, latitude] in WGS84 degrees. */
  unproject(point: ProjectedPoint): [longitude: number, latitude: number];
  /** The square of a size that holds a point, or undefined where the grid has no square there. */
  squareAt(point: ProjectedPoint, size: SquareSize): Square | undefined;
}

/** True when a grid's answer is a refusal. */
export function isRefusal(answer: Square | Refusal): answer is Refusal {
  return "refused" in answer;
}
