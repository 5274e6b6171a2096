import { booleanPointInPolygon } from "@turf/boolean-point-in-polygon";
import type { MultiPolygon, Polygon } from "geojson";

/** A territory of an atlas, ready for many questions: its polygons with their bounds, in WGS84 degrees. */
export interface Territory {
  readonly id: string;
  readonly parts: readonly Part[];
}

interface Part {
  readonly polygon: Polygon;
  readonly west: number;
  readonly south: number;
  readonly east: number;
  readonly north: number;
}

/**
 * Prepares a territory.
 *
 * @param id the territory's id in the settings
 * @param geometry GeoJSON in WGS84, holes allowed; edges are straight in longitude and latitude
 * @returns the territory
 * @example makeTerritory("ireland", polygon).id; // => "ireland"
 */
export function makeTerritory(id: string, geometry: Polygon | MultiPolygon): Territory {
  const polygons = geometry.type === "Polygon" ? [geometry.coordinates] : geometry.coordinates;
  return Object.freeze({ id, parts: polygons.map(partOf) });
}

function partOf(coordinates: Polygon["coordinates"]): Part {
  const outer = coordinates[0] ?? [];
  const longitudes = outer.map((position) => position[0] as number);
  const latitudes = outer.map((position) => position[1] as number);
  return {
    polygon: { type: "Polygon", coordinates },
    west: Math.min(...longitudes),
    south: Math.min(...latitudes),
    east: Math.max(...longitudes),
    north: Math.max(...latitudes),
  };
}

/**
 * True when a position is inside a territory or on its line.
 *
 * @param longitude WGS84 degrees
 * @param latitude WGS84 degrees
 * @param territory from `makeTerritory`
 * @example inTerritory(-8, 53.5, makeTerritory("ireland", polygon)); // => true
 */
export function inTerritory(longitude: number, latitude: number, territory: Territory): boolean {
  for (const part of territory.parts) {
    if (longitude < part.west || longitude > part.east || latitude < part.south || latitude > part.north) continue;
    if (booleanPointInPolygon([longitude, latitude], part.polygon)) return true;
  }
  return false;
}

/**
 * The one territory a position belongs to. On a line two territories share, the first listed holds it.
 *
 * @param longitude WGS84 degrees
 * @param latitude WGS84 degrees
 * @param territories in the settings' order
 * @returns the territory's id; undefined in none, and for numbers that are not finite
 * @example territoryOf(-8, 53.5, territories); // => "ireland"
 */
export function territoryOf(
  longitude: number,
  latitude: number,
  territories: readonly Territory[],
): string | undefined {
  if (!Number.isFinite(longitude) || !Number.isFinite(latitude)) return undefined;
  return territories.find((territory) => inTerritory(longitude, latitude, territory))?.id;
}
