import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import type { MultiPolygon, Polygon } from "geojson";
import { z } from "zod";
import { Mistake } from "../mistake.ts";
import { contentPath } from "./content-path.ts";
import { GRID_TERRITORIES } from "./grid-territories.ts";
import { readContent } from "./read-content.ts";
import type { Settings } from "./settings.ts";

/** A territory of the atlas and its polygon in WGS84 degrees; null where the only territory, on a continental grid, is everywhere. */
export interface TerritoryArea {
  id: string;
  name: string;
  grid: Settings["territories"][number]["grid"];
  datum: "ED50" | "WGS84";
  polygon: Polygon | MultiPolygon | null;
  /** National grid-shift file, with the hash of its content; null where seven parameters are used. */
  gridShift: { path: string; name: string; accuracy: number; sha256: string } | null;
}

const ring = z.array(z.array(z.number()).min(2)).min(4);
const TerritoryFile = z.object({
  features: z.array(
    z.object({
      properties: z.object({ territory: z.string() }).loose(),
      geometry: z.discriminatedUnion("type", [
        z.object({ type: z.literal("Polygon"), coordinates: z.array(ring) }),
        z.object({ type: z.literal("MultiPolygon"), coordinates: z.array(z.array(ring)) }),
      ]),
    }),
  ),
});

/**
 * Reads the territory polygons the settings name, one for each territory. Where they name none, a national grid has the
 * territory where it is used, and a continental grid is everywhere.
 *
 * @throws {Mistake} where the file is no such GeoJSON or a territory has no polygon in it
 */
export function readTerritories(folder: string, settings: Settings): TerritoryArea[] {
  const file = settings.territory_polygons;
  const polygons = file === undefined ? new Map<string, Polygon | MultiPolygon>() : readPolygons(folder, file);
  return settings.territories.map(({ id, name, grid, datum, grid_shift }) => {
    const polygon = polygons.get(id) ?? (file === undefined ? (GRID_TERRITORIES[grid] ?? null) : null);
    if (polygon === null && file !== undefined)
      throw new Mistake(
        `territory “${id}”`,
        `has no polygon in ${file}`,
        `give a feature the property "territory": "${id}"`,
        { file: "atlas.yaml" },
      );
    return {
      id,
      name,
      grid,
      datum,
      polygon,
      gridShift: grid_shift === undefined ? null : gridShiftFile(folder, grid_shift, grid),
    };
  });
}

function gridShiftFile(
  folder: string,
  { file, accuracy_m }: { file: string; accuracy_m: number },
  grid: string,
): TerritoryArea["gridShift"] {
  const where = { file: "atlas.yaml" };
  if (grid !== "british")
    throw new Mistake("grid_shift", `is set for the ${grid} grid`, "only the British grid uses one", where);
  const path = contentPath(folder, file);
  if (path === undefined)
    throw new Mistake(
      "grid_shift",
      `names ${file}, which is not there`,
      "put the file there, or take the setting out",
      where,
    );
  return {
    path,
    name: file,
    accuracy: accuracy_m,
    sha256: createHash("sha256").update(readFileSync(path)).digest("hex"),
  };
}

function readPolygons(folder: string, file: string): Map<string, Polygon | MultiPolygon> {
  let parsed: z.infer<typeof TerritoryFile>;
  try {
    parsed = TerritoryFile.parse(JSON.parse(readContent(folder, file)));
  } catch (error) {
    if (error instanceof Mistake) throw error;
    throw new Mistake(
      "the file",
      "is not GeoJSON with polygons that have a property territory",
      "see the contract of territory_polygons",
      { file },
    );
  }
  return new Map(
    parsed.features.map((feature) => [feature.properties.territory, feature.geometry as Polygon | MultiPolygon]),
  );
}
