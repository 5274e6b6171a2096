import type { Database } from "../engine/database.ts";
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
