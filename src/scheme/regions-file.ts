/** `regions.geojson`: the polygons of regions, such as counties, that records may state and that species are listed for. */
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
      id: z
        .string()
        .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/)
        .optional()
        .describe(
          "small letters, figures and hyphens; made from the name where not given. Features that share it are one region",
        ),
      territory: z.string().default("").describe("territory of the atlas it belongs to, for headings; may be empty"),
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

/** A region that records may state, with its polygon in WGS84 degrees. Regions that share an id are one. */
export interface Region {
  id: string;
  /** Territory of the atlas, empty where the file names none. */
  territory: string;
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
    const regions = features.map(({ properties: { id, territory, field, name, code }, geometry }) => ({
      id: id ?? idOfName(name),
      territory,
      field,
      name,
      code,
      polygon: geometry as Polygon | MultiPolygon,
    }));
    refuseSharedIds(regions);
    return regions;
  } catch (error) {
    if (error instanceof Mistake) throw error;
    throw new Mistake(
      "the file",
      "is not GeoJSON of polygons that have the properties field and name",
      `give each feature "field", one of ${REGION_FIELDS.join(", ")}, and "name"; an "id" is of small letters, figures and hyphens`,
      { file: REGIONS_FILE },
    );
  }
}

/**
 * How a region is looked up by what a record states: names in any case, and "VC 07", "vc7" and "7" as one.
 *
 * @example regionKey("VC 07") // => "7"
 */
export function regionKey(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replace(/^vc\.?\s*(?=h?\d)/, "")
    .replace(/^(h?)0+(?=\d)/, "$1");
}

/** A name as an id: "Åland & Öland" is "aland-oland". A name without a letter or figure of the alphabet has none of its own. */
function idOfName(name: string): string {
  const plain = name.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase();
  return plain.replace(/[^a-z0-9]+/g, "-").replace(/^-|-$/g, "") || "region";
}

/** Two regions of one id would be counted as one. */
function refuseSharedIds(regions: readonly Region[]): void {
  const named = new Map<string, Region>();
  for (const region of regions) {
    const other = named.get(region.id);
    if (other !== undefined && (other.field !== region.field || other.name !== region.name))
      throw new Mistake(
        `the id ${region.id}`,
        `is that of two regions, ${other.name} (${other.field}) and ${region.name} (${region.field})`,
        'give each an "id" of its own',
        { file: REGIONS_FILE },
      );
    named.set(region.id, region);
  }
}
