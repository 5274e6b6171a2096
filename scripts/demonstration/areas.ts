import { fileURLToPath } from "node:url";
import { inTerritory, makeTerritory, type Territory } from "../../src/geodesy/territory.ts";
import { type Region, readRegions } from "../../src/scheme/regions-file.ts";
import { longitudeLatitude, type Spot } from "./places-as-written.ts";

/** An invented recording area, ready for many questions. */
interface Area {
  readonly region: Region;
  readonly territory: Territory;
  /** Every tenth point of its border, longitude and latitude. */
  readonly border: readonly (readonly number[])[];
}

let made: Area[] | undefined;

function areas(): Area[] {
  made ??= readRegions(fileURLToPath(new URL("../../content", import.meta.url))).map((region) => {
    const { polygon } = region;
    const polygons = polygon.type === "Polygon" ? [polygon.coordinates] : polygon.coordinates;
    return {
      region,
      territory: makeTerritory(region.id, polygon),
      border: polygons.flatMap(([outer = []]) => outer.filter((_, index) => index % 10 === 0)),
    };
  });
  return made;
}

/**
 * Name of the invented area that holds a point; empty off the areas' coarse coast.
 *
 * @example areaAt(spot) // "Trent Valley"
 */
export function areaAt(spot: Spot): string {
  const [longitude, latitude] = longitudeLatitude(spot);
  return areas().find(({ territory }) => inTerritory(longitude, latitude, territory))?.region.name ?? "";
}

/**
 * Names of the areas of a point's territory that lie at least so far from it, in the order of the file.
 *
 * @param kilometres from the point to the border, along a straight line in degrees: good to some kilometres
 * @example areasBeyond(spot, 40) // ["Lizard to Exmoor", "Levels and Wessex Downs", …]
 */
export function areasBeyond(spot: Spot, kilometres: number): string[] {
  const [longitude, latitude] = longitudeLatitude(spot);
  const across = 111.2 * Math.cos((latitude * Math.PI) / 180);
  return areas()
    .filter(
      ({ region, territory }) =>
        region.territory === spot.tetrad.territory && !inTerritory(longitude, latitude, territory),
    )
    .filter(({ border }) =>
      border.every(([x = 0, y = 0]) => Math.hypot((x - longitude) * across, (y - latitude) * 111.2) >= kilometres),
    )
    .map(({ region }) => region.name);
}
