import type { SquareSize } from "../../src/grids/grid.ts";
import { gridOf } from "./grids.ts";
import type { Tetrad } from "./land.ts";
import type { Random } from "./random.ts";

/** A point on the grid of a 2 km square. */
export interface Spot {
  readonly tetrad: Tetrad;
  readonly easting: number;
  readonly northing: number;
}

/**
 * The grid reference of the square of a size that holds a point, mostly in the canonical form,
 * sometimes with spaces or in small letters.
 *
 * @param size side in metres
 * @example writtenReference(spot, 1000, random) // "TQ3877", "TQ 38 77" or "tq3877"
 */
export function writtenReference({ tetrad, easting, northing }: Spot, size: SquareSize, random: Random): string {
  const reference = referenceOf({ tetrad, easting, northing }, size);
  const way = random.next();
  if (way < 0.86 || size === 2000) {
    return reference;
  }
  return way < 0.96 ? spaced(reference) : reference.toLowerCase();
}

/** The canonical reference. @example referenceOf(spot, 10_000) // "TQ37" */
export function referenceOf({ tetrad, easting, northing }: Spot, size: SquareSize): string {
  const grid = gridOf(tetrad.grid);
  const square = grid.squareAt({ crs: tetrad.crs, easting, northing }, size);
  if (!square) {
    throw new Error(`no ${tetrad.grid} square at ${easting} ${northing}`);
  }
  return grid.format(square);
}

/** Longitude and latitude of a point, WGS84 degrees. @example longitudeLatitude(spot) // [-0.014, 51.477] */
export function longitudeLatitude({ tetrad, easting, northing }: Spot): [longitude: number, latitude: number] {
  const grid = gridOf(tetrad.grid);
  return grid.unproject({ crs: tetrad.crs, easting, northing });
}

function spaced(reference: string): string {
  const letters = /^[A-Z]+/.exec(reference)?.[0] ?? "";
  const digits = reference.slice(letters.length);
  const half = digits.length / 2;
  return digits.length > 2 ? `${letters} ${digits.slice(0, half)} ${digits.slice(half)}` : `${letters} ${digits}`;
}
