import { inTerritory, makeTerritory, type Territory } from "../geodesy/territory.ts";
import type { GridId } from "../grids/grid.ts";
import { type Region, type RegionField, regionKey } from "../scheme/regions-file.ts";

/** A place in WGS84 degrees with its reach in metres, and the grid it was placed on. */
export interface RegionPlace {
  longitude: number;
  latitude: number;
  reach_m: number;
  grid: GridId;
}

/**
 * Codes (ISO 3166-1 alpha-2) and names of the countries in which each national grid is used. The Irish grid is used in
 * Northern Ireland whatever the flag, and the British on the Isle of Man.
 */
const COUNTRIES: Partial<Record<GridId, readonly string[]>> = {
  british: ["gb", "im", "uk", "united kingdom", "great britain", "england", "scotland", "wales", "isle of man"],
  irish: ["ie", "gb", "uk", "ireland", "republic of ireland", "eire", "éire", "northern ireland", "united kingdom"],
  "channel-islands": ["gg", "je", "gb", "uk", "channel islands", "guernsey", "jersey", "alderney", "sark"],
};
const KNOWN_COUNTRIES = new Set(Object.values(COUNTRIES).flat());
/** Points of a place's rim that are tried: a region that reaches into its circle holds one unless it is a sliver. */
const RIM = 16;

/**
 * Makes the test whether a stated region and a place may both be right. What is not known as a region says nothing, and
 * a place whose reach touches the region agrees with it: a recorder's stated region beats the square.
 *
 * @param regions of `regions.geojson`
 * @returns false where the two disagree
 * @example mayBeRight([])("countryCode", "IE", { longitude: -1.25, latitude: 51.75, reach_m: 71, grid: "british" }) // => false
 */
export function mayBeRight(
  regions: readonly Region[],
): (field: RegionField, stated: string, place: RegionPlace) => boolean {
  const polygons = new Map<string, Territory[]>();
  for (const { field, name, code, polygon } of regions)
    for (const key of new Set([name, code].filter(Boolean).map((text) => `${field} ${regionKey(text)}`)))
      polygons.set(key, [...(polygons.get(key) ?? []), makeTerritory(name, polygon)]);
  return (field, stated, place) => {
    const own = polygons.get(`${field} ${regionKey(stated)}`);
    if (own !== undefined) return own.some((region) => touches(region, place));
    const isCountry = field === "country" || field === "countryCode";
    const here = COUNTRIES[place.grid];
    const country = stated.trim().toLowerCase();
    return !isCountry || here === undefined || !isKnownCountry(field, country) || here.includes(country);
  };
}

/** A code of two letters is one of some country; of names only those of the islands are known. */
function isKnownCountry(field: RegionField, country: string): boolean {
  return KNOWN_COUNTRIES.has(country) || (field === "countryCode" && /^[a-z]{2}$/.test(country) && country !== "zz");
}

function touches(region: Territory, { longitude, latitude, reach_m }: RegionPlace): boolean {
  if (inTerritory(longitude, latitude, region)) return true;
  const north = reach_m / 111_195;
  const east = north / Math.cos((latitude * Math.PI) / 180);
  return Array.from({ length: RIM }, (_, step) => (2 * Math.PI * step) / RIM).some((angle) =>
    inTerritory(longitude + east * Math.cos(angle), latitude + north * Math.sin(angle), region),
  );
}
