import type { FeatureCollection } from "geojson";
import { boxAround, type Frame, overlap, toUnits } from "./frame.ts";
import type { Inset, InsetRequest } from "./insets.ts";
import { type Outline, outlinesOf, outlinesPath, ringArea, simplify } from "./outline.ts";
import type { Transform } from "./placement.ts";

/** Paths of the base map in halves of a unit of the frame; "" where the scheme has none. */
export interface Coast {
  readonly land: string;
  readonly coarseLand: string;
  readonly lakes: string;
  readonly borders: string;
  /** Area of all land in the frame, in square units. */
  readonly area: number;
}

/** What of the layout decides where an outline falls. */
export interface Ground {
  readonly frame: Frame;
  readonly insets: readonly Inset[];
  readonly requests: readonly InsetRequest[];
  readonly transform: Transform;
}

/** Smallest triangle of an outline that is kept, in square units. */
const FINE = 4;
const COARSE = 9;
const FINE_LAKE = 0.7;
/** Smallest island and lake drawn, in square units: an island of a pixel of a phone. The large map has a finer coast. */
const SMALLEST_ISLAND = 1;
const SMALLEST_LAKE = 10;
const SMALLEST_COARSE = 4;

/**
 * The coast, lakes and borders of a map, simplified for the size they are drawn at. Islands that lie on an inset's
 * ground move with it; a ring the projection cannot hold, or outside the frame, is left out.
 *
 * @param collections GeoJSON in longitude and latitude
 * @param ground frame, insets and the means to project
 * @returns paths
 * @example drawCoast({}, ground).land // ""
 */
export function drawCoast(
  { land, lakes, borders }: Readonly<Partial<Record<"land" | "lakes" | "borders", FeatureCollection | undefined>>>,
  ground: Ground,
): Coast {
  const coast = inUnits(land, ground);
  const path = (outlines: readonly Outline[], least: number, limit: number) =>
    outlinesPath(largerThan(least, outlines).map((outline) => simplify(outline, limit)));
  return {
    land: path(coast, SMALLEST_ISLAND, FINE),
    coarseLand: path(coast, SMALLEST_COARSE, COARSE),
    lakes: path(inUnits(lakes, ground), SMALLEST_LAKE, FINE_LAKE),
    borders: outlinesPath(inUnits(borders, ground).map((outline) => simplify(outline, FINE))),
    area: Math.abs(coast.reduce((sum, { points }) => sum + ringArea(points), 0)),
  };
}

/** Outlines of at least an area, in square units. */
export function largerThan(least: number, outlines: readonly Outline[]): Outline[] {
  return outlines.filter((outline) => Math.abs(ringArea(outline.points)) >= least);
}

/**
 * The outlines of one file of the base map, in units of the frame, those of an inset's ground moved with it.
 *
 * @param collection GeoJSON in longitude and latitude; none gives none
 * @param ground frame, insets and the means to project
 * @example inUnits(undefined, ground) // []
 */
export function inUnits(
  collection: FeatureCollection | undefined,
  { frame, insets, requests, transform }: Ground,
): Outline[] {
  return (collection?.features ?? [])
    .flatMap((feature) => outlinesOf(feature, (longitude, latitude) => [longitude, latitude]))
    .flatMap((outline) => {
      const placed = projected(outline, frame, transform);
      return placed ? [intoInset(placed, requests, insets)] : [];
    })
    .filter((outline) => inFrame(outline, frame));
}

function projected({ points, closed }: Outline, frame: Frame, transform: Transform): Outline | undefined {
  try {
    const place = (longitude: number, latitude: number) =>
      toUnits(frame, ...transform("EPSG:4326", frame.crs, longitude, latitude));
    return { points: points.map(([longitude, latitude]) => place(longitude, latitude)), closed };
  } catch {
    return undefined;
  }
}

/** Moves an outline that lies within an inset's own ground into the inset. */
function intoInset(outline: Outline, requests: readonly InsetRequest[], insets: readonly Inset[]): Outline {
  const box = boxAround(outline.points);
  const request = requests.find(
    ({ box: ground }) =>
      box.left >= ground.left - 4 &&
      box.right <= ground.right + 4 &&
      box.top >= ground.top - 4 &&
      box.bottom <= ground.bottom + 4,
  );
  const inset = request && insets.find(({ territory }) => territory === request.territory);
  if (!inset) return outline;
  return { points: outline.points.map(([x, y]) => [x + inset.dx, y + inset.dy] as const), closed: outline.closed };
}

function inFrame(outline: Outline, { width, height }: Frame): boolean {
  return overlap(boxAround(outline.points), { left: 0, top: 0, right: width, bottom: height });
}
