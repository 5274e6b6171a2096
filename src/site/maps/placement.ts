import type { HectadSummary } from "../../publishing/contracts.ts";
import { type Affine, applyAffine, fitAffine, type PointPair } from "./affine.ts";
import { CELL } from "./book-cell.ts";
import type { Cell } from "./cell-paths.ts";

/** The side of a square of a map, in metres. */
export type Resolution = 10_000 | 2_000;

/** What of a hectad a map needs. */
export type PlacedHectad = Pick<
  HectadSummary,
  "square" | "grid" | "territory" | "crs" | "easting" | "northing" | "on_land"
>;

/** Metres of one projection to metres of another; throws where the target cannot hold the point. */
export type Transform = (from: string, to: string, x: number, y: number) => [number, number];

/**
 * Where the squares of one grid lie on a map. Cells count from the west and from the north, in the grid's own
 * rows and columns; one affine matrix turns cells of 4 × 4 units into units of the frame.
 */
export interface Placement {
  readonly grid: string;
  readonly crs: string;
  /** Territory drawn in an inset, or undefined for the squares drawn where they are. */
  readonly inset: string | undefined;
  /** Easting of column 0's west edge and northing of row 0's north edge, in metres of `crs`. */
  readonly west: number;
  readonly north: number;
  /** Cells of 10 km to units of the frame. */
  readonly matrix: Affine;
  /** How far a corner of a square may lie from its true place, in units. */
  readonly error: number;
}

const HECTAD = 10_000;

/** Key of the placement a hectad belongs to; zones of one grid have a key each. */
export function placementKey(
  { grid, crs, territory }: Pick<PlacedHectad, "grid" | "crs" | "territory">,
  insets: readonly string[],
): string {
  return [grid, crs, insets.includes(territory) ? territory : ""].join(" ");
}

/**
 * Fits one placement over the corners of its squares. Where the grid is the frame's own projection the matrix is
 * exact and the squares stay upright.
 *
 * @param hectads squares of one grid, projection and inset; at least one
 * @param inset territory of the inset, if it is one
 * @param place metres of a projection to units of the frame
 * @returns the placement, with its largest error in units
 * @example placeSquares([{ square: "NZ27", grid: "british", territory: "gb", crs: "EPSG:27700", easting: 420_000, northing: 570_000, on_land: true }], undefined, (crs, x, y) => [x / 2500, -y / 2500]).matrix // [1, 0, 0, 1, 168, -232]
 */
export function placeSquares(
  hectads: readonly PlacedHectad[],
  inset: string | undefined,
  place: (crs: string, easting: number, northing: number) => readonly [number, number],
): Placement {
  const first = hectads[0];
  if (!first) throw new Error("no squares to place");
  const west = Math.min(...hectads.map((hectad) => hectad.easting));
  const north = Math.max(...hectads.map((hectad) => hectad.northing)) + HECTAD;
  const pairs: PointPair[] = hectads.flatMap(({ crs, easting, northing }) =>
    [0, HECTAD].flatMap((dx) =>
      [0, HECTAD].map((dy) => ({
        from: [((easting + dx - west) / HECTAD) * CELL, ((north - northing - dy) / HECTAD) * CELL] as const,
        to: place(crs, easting + dx, northing + dy),
      })),
    ),
  );
  return { grid: first.grid, crs: first.crs, inset, west, north, ...fitAffine(pairs) };
}

/**
 * Column and row of a square in its placement.
 *
 * @param placement where its grid lies
 * @param easting of the square's south-west corner, metres
 * @param northing of the square's south-west corner, metres
 * @param size side of the square in metres
 * @returns whole numbers; negative outside the placement's squares
 * @example cellOf({ ...placement, west: 0, north: 100_000 }, 20_000, 80_000, 10_000) // { column: 2, row: 1 }
 */
export function cellOf({ west, north }: Placement, easting: number, northing: number, size: number): Cell {
  return { column: Math.floor((easting - west) / size), row: Math.ceil((north - northing) / size) - 1 };
}

/**
 * The matrix that draws cells of a size: smaller squares are the same cells of 4 × 4 units made smaller.
 *
 * @example matrixFor({ ...placement, matrix: [1, 0, 0, 1, 168, 40] }, 2000) // [.2, 0, 0, .2, 168, 40]
 */
export function matrixFor({ matrix: [a, b, c, d, e, f] }: Placement, size: Resolution): Affine {
  const scale = size / HECTAD;
  return [a * scale, b * scale, c * scale, d * scale, e, f];
}

/** The four corners of a cell of 10 km in units of the frame. */
export function cellCorners({ matrix }: Placement, { column, row }: Cell): [number, number][] {
  const [x, y] = [column * CELL, row * CELL];
  return [
    [x, y],
    [x + CELL, y],
    [x + CELL, y + CELL],
    [x, y + CELL],
  ].map(([cornerX, cornerY]) => applyAffine(matrix, cornerX ?? 0, cornerY ?? 0));
}
