/** `regions.geojson`: the polygons of regions records may state, such as counties and vice-counties. */
import type { MultiPolygon, Polygon } from "geojson";
import { z } from "zod";
import { Mistake } from "../mistake.ts";
import { contentPath } from "./content-path.ts";
import { readContent } from "./read-content.ts";

/** Name of the file in the scheme's folder. */
export const REGIONS_FILE = "regions.geojson";

/** Fields of a record that state a region, from large to small. */
export const REGION_FIELDS = ["country", "countryCode", "stateProvince", "county", "viceCounty"] as const;
export type RegionField = (typeof REGION_FIELDS)[number];

const ring = z.array(z.array(z.number()).min(2)).min(4);
const RegionFeature = z.object({
  properties: z
    .object({
      field: z.enum(REGION_FIELDS).describe("the record's field that states such regions"),
      name: z.string().min(1).describe("as records write it, in any case"),
      code: z
        .union([z.string(), z.number()])
        .default("")
        .transform(String)
        .describe("its number or code, if records write that"),
    })
    .loose(),
  geometry: z.discriminatedUnion("type", [
    z.object({ type: z.literal("Polygon"), coordinates: z.array(ring) }),
    z.object({ type: z.literal("MultiPolygon"), coordinates: z.array(z.array(ring)) }),
  ]),
});
const RegionsFile = z.object({ features: z.array(RegionFeature) });

/** A region that records may state, with its polygon in WGS84 degrees. */
export interface Region {
  field: RegionField;
  name: string;
  code: string;
  polygon: Polygon | MultiPolygon;
}

/**
 * Reads `regions.geojson`; none where the scheme has no such file.
 *
 * @throws {Mistake} where the file is no GeoJSON of polygons with the properties field and name
 */
export function readRegions(folder: string): Region[] {
  if (contentPath(folder, REGIONS_FILE) === undefined) return [];
  try {
    const { features } = RegionsFile.parse(JSON.parse(readContent(folder, REGIONS_FILE)));
    return features.map(({ properties: { field, name, code }, geometry }) => ({
      field,
      name,
      code,
      polygon: geometry as Polygon | MultiPolygon,
    }));
  } catch (error) {
    if (error instanceof Mistake) throw error;
    throw new Mistake(
      "the file",
      "is not GeoJSON of polygons that have the properties field and name",
      `give each feature "field", one of ${REGION_FIELDS.join(", ")}, and "name"`,
      { file: REGIONS_FILE },
    );
  }
}
