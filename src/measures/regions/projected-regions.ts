import { boundsOf, clipRing, overlap, type Rectangle, type Ring } from "../../geodesy/clip-ring.ts";
import type { Region } from "../../scheme/regions-file.ts";

/** A ring of a region in metres of one coordinate system. */
export interface RegionRing {
  /** Place of the region in the list that was given. */
  readonly region: number;
  /** 1 for an outer ring, −1 for a hole. */
  readonly sign: 1 | -1;
  readonly ring: Ring;
  readonly bounds: Rectangle;
}

/**
 * Longest side in degrees before a ring is projected: sides are straight in longitude and latitude, and one of 0.05° (5 km)
 * bends from the straight line of a projection by a metre at most.
 */
const LONGEST_SIDE = 0.05;

/**
 * Brings regions into the plane of a grid, cut to where its squares are, for a projection may not hold the rest.
 *
 * @param area where the squares are, in degrees of longitude and latitude
 * @param project longitude and latitude to metres
 */
export function projectRegions(
  regions: readonly Region[],
  area: Rectangle,
  project: (longitude: number, latitude: number) => readonly [x: number, y: number],
): RegionRing[] {
  return regions.flatMap(({ polygon }, region) => {
    const polygons = polygon.type === "Polygon" ? [polygon.coordinates] : polygon.coordinates;
    return polygons.flatMap((rings) =>
      rings.flatMap((positions, index): RegionRing[] => {
        const whole = positions.slice(0, -1).flatMap(([longitude = 0, latitude = 0]) => [longitude, latitude]);
        if (!overlap(boundsOf(whole), area)) return [];
        const ring = projected(clipRing(whole, area), project);
        return ring.length < 6 ? [] : [{ region, sign: index === 0 ? 1 : -1, ring, bounds: boundsOf(ring) }];
      }),
    );
  });
}

function projected(
  ring: Ring,
  project: (longitude: number, latitude: number) => readonly [x: number, y: number],
): number[] {
  const out: number[] = [];
  for (let index = 0; index < ring.length; index += 2) {
    const next = (index + 2) % ring.length;
    const [x, y, toX, toY] = [ring[index] ?? 0, ring[index + 1] ?? 0, ring[next] ?? 0, ring[next + 1] ?? 0];
    const steps = Math.max(1, Math.ceil(Math.max(Math.abs(toX - x), Math.abs(toY - y)) / LONGEST_SIDE));
    for (let step = 0; step < steps; step += 1)
      out.push(...project(x + ((toX - x) * step) / steps, y + ((toY - y) * step) / steps));
  }
  return out;
}
