import type { Database } from "../engine/database.ts";
import { transform } from "../geodesy/transform.ts";
import { Mistake } from "../mistake.ts";
import type { Scheme } from "../scheme/scheme.ts";

const CRS_OF_GRID = {
  british: "EPSG:27700",
  irish: "EPSG:29903",
  "channel-islands": "EPSG:23030",
  laea: "EPSG:3035",
} as const;

/** Projection of the drawn maps where the settings name none: that of the first territory's grid; for UTM the zone with most squares. */
export async function coordinateSystemOfGrid(
  database: Database,
  territory: Scheme["territories"][number] | undefined,
): Promise<string> {
  const grid = territory?.grid ?? "british";
  if (grid !== "mgrs") return CRS_OF_GRID[grid];
  const [most] = await database.rows<{ crs: string }>(
    "SELECT crs FROM square_places WHERE resolution_m = 10000 GROUP BY crs ORDER BY count(*) DESC, crs LIMIT 1",
  );
  return most?.crs ?? "EPSG:32631";
}

/**
 * The projection, once it is known that it can draw every square: one of a zone or a country cannot hold two continents.
 *
 * @throws {Mistake} with the first square it cannot hold
 * @example await ableToDraw(database, "EPSG:32630") // => "EPSG:32630"
 */
export async function ableToDraw(database: Database, crs: string): Promise<string> {
  const places = await database.rows<{ square: string; longitude: number; latitude: number }>(
    "SELECT square, longitude, latitude FROM square_places WHERE resolution_m = 10000 ORDER BY square",
  );
  for (const { square, longitude, latitude } of places) {
    try {
      transform("EPSG:4326", crs, longitude, latitude);
    } catch {
      throw new Mistake(
        "the map",
        `is drawn in ${crs}, which does not reach the square ${square} at ${latitude.toFixed(1)}, ${longitude.toFixed(1)}`,
        "name a projection that does in map: { crs: … }, or keep far-off records out with territory_polygons",
        { file: "atlas.yaml" },
      );
    }
  }
  return crs;
}
