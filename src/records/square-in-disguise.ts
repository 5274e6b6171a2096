import type { Square, SquareSize } from "../grids/grid.ts";
import type { Place } from "./place.ts";

/**
 * Sizes of square a point may stand for, largest first. 5 km is not among them: the centre and the corner of a 5 km
 * quarter are those of a 1 km square too, and 1 km squares are what files are full of.
 */
export const DISGUISE_SIZES: readonly SquareSize[] = [10_000, 2_000, 1_000, 100];

/** A point that stands on a square's centre or corner, and how many points in a hundred would by chance. */
export interface Disguise {
  square: Square;
  /** Share of honest points that would look like this by chance, 0 to 1. */
  chance: number;
}

/**
 * Looks whether a point stands on the centre or the south-west corner of a square, within the blur of its digits and
 * of the transform: many a square reaches a file as one of the two. A corner stands for the square to its north-east.
 * Eastings and northings with trailing zeros, which are read as the square they are the corner of, may be the centre of
 * a square ten times as large: 535000, 185000.
 *
 * @returns the largest such square, or undefined; always undefined for squares named by a reference
 */
export function squareInDisguise(place: Place): Disguise | undefined {
  if (place.shape.kind === "square")
    return place.from === "easting and northing" ? centredSquare(place, place.shape.square) : undefined;
  const { point } = place.shape;
  for (const size of DISGUISE_SIZES) {
    const chance = Math.min(1, 2 * ((2 * place.blur) / size) ** 2);
    const half = size / 2;
    const atCentre =
      offset(point.easting - half, size) <= place.blur && offset(point.northing - half, size) <= place.blur;
    const atCorner = offset(point.easting, size) <= place.blur && offset(point.northing, size) <= place.blur;
    if (!atCentre && !atCorner) continue;
    const shift = atCentre ? 0 : place.blur;
    const square = place.territory.grid.squareAt(
      { crs: point.crs, easting: point.easting + shift, northing: point.northing + shift },
      size,
    );
    if (square !== undefined) return { square, chance };
  }
  return undefined;
}

function centredSquare({ territory }: Place, square: Square): Disguise | undefined {
  const size = DISGUISE_SIZES.find((larger) => larger === square.size * 10);
  if (size === undefined || offset(square.easting - size / 2, size) > 0 || offset(square.northing - size / 2, size) > 0)
    return undefined;
  const larger = territory.grid.squareAt(square, size);
  return larger === undefined ? undefined : { square: larger, chance: (square.size / size) ** 2 };
}

/** Distance to the nearest multiple of a size. */
function offset(metres: number, size: number): number {
  const rest = ((metres % size) + size) % size;
  return Math.min(rest, size - rest);
}
