/** Smallest box around points, in any units; `top` and `bottom` are by the axis that grows downwards on a map. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/**
 * The sheet a map is drawn on: a projection, and how its metres become units. A unit is about a pixel of a
 * phone that shows the whole, so lines, ticks and words have one size on every atlas; 346 units are 328 pixels
 * of text width and 8 more in either margin.
 */
export interface Frame {
  readonly crs: string;
  readonly width: number;
  readonly height: number;
  /** Easting at the left edge and northing at the upper edge, in metres. */
  readonly west: number;
  readonly north: number;
  readonly metresPerUnit: number;
}

/** Width of every frame, in units. */
export const FRAME_WIDTH = 346;

const SIDE_MARGIN = 0.5;
const MARGIN = 8;
const TALLEST = 500;
const HECTAD = 10_000;
const CELL_UNITS = 4;
/** A 10 km square is drawn at most 48 units wide. */
const LARGEST = 12;

/**
 * The frame that shows a box of a projection whole. A 10 km square is 4 units, made larger or smaller by quarters
 * (by twentieths where it must shrink), so that squares of the projection's own grid fall on whole or half units.
 *
 * @param crs EPSG code of the projection
 * @param extent metres of the projection: left and right are eastings, top and bottom northings (top is larger)
 * @returns the frame, its left and upper edge on whole units of the projection's 10 km lines
 * @example frameAround("EPSG:27700", { left: -201_000, right: 660_000, bottom: 0, top: 1_230_000 }).metresPerUnit // 2500
 */
export function frameAround(crs: string, extent: Box): Frame {
  const [wide, high] = [Math.max(extent.right - extent.left, HECTAD), Math.max(extent.top - extent.bottom, HECTAD)];
  const fitting = Math.min((FRAME_WIDTH - 2 * SIDE_MARGIN) / wide, TALLEST / high) * (HECTAD / CELL_UNITS);
  const metresPerUnit = HECTAD / (CELL_UNITS * stepped(Math.min(fitting, LARGEST)));
  const slack = (FRAME_WIDTH * metresPerUnit - wide) / 2;
  const north = Math.ceil(extent.top / metresPerUnit) * metresPerUnit + MARGIN * metresPerUnit;
  return {
    crs,
    width: FRAME_WIDTH,
    height: Math.ceil((north - extent.bottom) / metresPerUnit) + MARGIN,
    west: Math.floor((extent.left - slack) / metresPerUnit) * metresPerUnit,
    north,
    metresPerUnit,
  };
}

function stepped(scale: number): number {
  if (scale >= 1) return Math.floor(scale * 4) / 4;
  return scale >= 0.05 ? Math.floor(scale * 20) / 20 : scale;
}

/**
 * Metres of the frame's projection to units of the frame, from its upper left corner.
 *
 * @param frame the sheet
 * @param easting metres
 * @param northing metres
 * @returns [x, y] in units, y downwards
 * @example toUnits({ crs: "EPSG:27700", width: 346, height: 512, west: -200_000, north: 1_232_000, metresPerUnit: 2500 }, 0, 0) // [80, 492.8]
 */
export function toUnits({ west, north, metresPerUnit }: Frame, easting: number, northing: number): [number, number] {
  return [(easting - west) / metresPerUnit, (north - northing) / metresPerUnit];
}

/**
 * The smallest box around points.
 *
 * @param points any number; without points the box is empty: left is Infinity, right -Infinity
 * @example boxAround([[1, 5], [3, 2]]) // { left: 1, top: 2, right: 3, bottom: 5 }
 */
export function boxAround(points: Iterable<readonly [number, number]>): Box {
  let [left, top, right, bottom] = [
    Number.POSITIVE_INFINITY,
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
  ];
  for (const [x, y] of points) {
    [left, right] = [Math.min(left, x), Math.max(right, x)];
    [top, bottom] = [Math.min(top, y), Math.max(bottom, y)];
  }
  return { left, top, right, bottom };
}

/** True where two boxes share more than an edge. */
export function overlap(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}
