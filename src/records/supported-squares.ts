import { shareOfCircleInRectangle } from "../geodesy/circle-overlap.ts";
import type { Grid, SquareSize } from "../grids/grid.ts";
import { parentOf } from "../grids/squares.ts";
import type { Place } from "./place.ts";

/** The square of one resolution a place supports, or why it supports none. */
export interface Support {
  code: string | null;
  reason: string;
}

/**
 * The square of one resolution that a place supports. A square supports the square it lies in; a circle supports the
 * square of its centre when at least `minimumOverlap` of its area lies there.
 *
 * @param resolution side of the square asked for, in metres
 * @param minimumOverlap share of the circle's area, 0.5 to 1
 */
export function supportedSquare(place: Place, resolution: SquareSize, minimumOverlap: number): Support {
  const { grid } = place.territory;
  if (place.shape.kind === "square") {
    const { square } = place.shape;
    if (square.size > resolution) return { code: null, reason: `named a square of ${sizeInWords(square.size)}` };
    const parent = parentOf(grid, square, resolution);
    return parent === undefined
      ? { code: null, reason: `named a square of ${sizeInWords(square.size)}` }
      : { code: grid.format(parent), reason: "" };
  }
  const { point, radius } = place.shape;
  const square = grid.squareAt(point, resolution);
  if (square === undefined) return { code: null, reason: "outside the grid" };
  const share =
    minimumOverlap * Math.PI * radius * radius > resolution * resolution
      ? 0
      : shareOfCircleInRectangle(
          point.easting,
          point.northing,
          radius,
          square.easting,
          square.northing,
          square.easting + resolution,
          square.northing + resolution,
        );
  return share >= minimumOverlap
    ? { code: grid.format(square), reason: "" }
    : { code: null, reason: "too imprecise: its circle reaches into other squares" };
}

/**
 * The unit a visit happens in: the named site the record is of, else the 1 km square of the place where it is known that
 * well, else the place's own square.
 */
export function visitPlace(place: Place, grid: Grid = place.territory.grid): string {
  if (place.site !== undefined) return `site ${place.site}`;
  if (place.shape.kind === "square") {
    const { square } = place.shape;
    const parent = square.size < 1_000 ? parentOf(grid, square, 1_000) : undefined;
    return grid.format(parent ?? square);
  }
  const size: SquareSize = place.shape.radius <= 1_000 ? 1_000 : 10_000;
  const square = grid.squareAt(place.shape.point, size);
  return square === undefined ? "" : grid.format(square);
}

function sizeInWords(size: number): string {
  return size >= 1_000 ? `${size / 1_000} km` : `${size} m`;
}
