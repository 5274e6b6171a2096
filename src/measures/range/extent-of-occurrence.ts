import { geodesicArea } from "../../geodesy/geodesic-area.ts";
import type { PlanePoint } from "../../geodesy/gnomonic.ts";
import { convexHull } from "./convex-hull.ts";

/** A position with its place in the gnomonic plane the hull is found in. */
export interface PlacedPosition extends PlanePoint {
  readonly longitude: number;
  readonly latitude: number;
}

/**
 * Extent of occurrence: the area on the WGS84 ellipsoid of the smallest convex polygon that holds all positions, its sides
 * geodesics (IUCN 2012, Red List Categories and Criteria, version 3.1, 2nd ed.). It holds sea, and places where nobody
 * looked, and grows with every stray record.
 *
 * @param positions all in one gnomonic plane, where the sides of the polygon are straight
 * @returns square kilometres; 0 where all positions lie on one line
 * @example extentOfOccurrence(corners) // => 249053.791616916
 */
export function extentOfOccurrence(positions: readonly PlacedPosition[]): number {
  return extentOfHull(convexHull(positions));
}

/** The same of a hull that is known. @example extentOfHull(convexHull(corners)) // => 249053.791616916 */
export function extentOfHull(hull: readonly PlacedPosition[]): number {
  return geodesicArea(hull.map(({ longitude, latitude }) => [longitude, latitude])) / 1e6;
}

/**
 * An extent that is never smaller than the area of occupancy, which lies in it by definition (IUCN Standards and Petitions
 * Committee 2024, Guidelines, version 16, section 4.9): where the polygon is smaller it is set equal.
 *
 * @param polygon_km2 area of the polygon
 * @param occupancy_km2 area of occupancy, null where there is none
 * @returns the extent, to a tenth of a square kilometre, and whether it was raised
 * @example extentNotBelow(0.08, 12) // => { extent_km2: 12, raised: true }
 */
export function extentNotBelow(
  polygon_km2: number,
  occupancy_km2: number | null,
): { extent_km2: number; raised: boolean } {
  const extent_km2 = Math.round(polygon_km2 * 10) / 10;
  return occupancy_km2 !== null && extent_km2 < occupancy_km2
    ? { extent_km2: occupancy_km2, raised: true }
    : { extent_km2, raised: false };
}
