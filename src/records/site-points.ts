import { centreOf } from "../grids/squares.ts";
import type { SiteRow } from "../scheme/sites-file.ts";
import { isUnplaced, middleOf, type Place, type PlacingRules } from "./place.ts";
import { readPlace } from "./read-place.ts";

/** The label point of a named site, in WGS84 degrees, and how far the site reaches from it in metres. */
export interface SitePoint {
  longitude: number;
  latitude: number;
  uncertainty: number;
}

/** Two points this near are one, in metres: seven figures of a grid reference and five decimals of a degree differ less. */
const SAME_M = 10;

/** Label points by thousandths of a degree of latitude, some 110 m, so that no place is held against all. */
export type SitePoints = ReadonlyMap<number, readonly SitePoint[]>;

/**
 * The label points of a scheme's sites. Those that have only a name, or a point that cannot be read, have none.
 *
 * @param rules placing rules, of which only the territories count
 */
export function sitePoints(sites: readonly SiteRow[], rules: PlacingRules): SitePoints {
  const nothing = { coordinateUncertaintyInMeters: "", easting: "", northing: "", dataGeneralizations: "" };
  const points = sites.flatMap(({ gridReference, decimalLatitude, decimalLongitude, uncertainty_m }) => {
    const place = readPlace(
      { gridReference, decimalLatitude, decimalLongitude, geodeticDatum: "WGS84", ...nothing },
      rules,
    );
    if (isUnplaced(place)) return [];
    const [longitude, latitude] = middleOf(place);
    return [{ longitude, latitude, uncertainty: uncertainty_m }];
  });
  return Map.groupBy(points, ({ latitude }) => Math.round(latitude * 1000));
}

/**
 * A place as uncertain as the named site it is of: by its locality, or because its point is the site's label point. A
 * place that is known less well than that stays as it is.
 *
 * @param ofLocality metres of the site the record's locality names; 0 for none
 * @example widenToSite(place, new Map(), 800).shape // => { kind: "circle", point: …, radius: 800 }
 */
export function widenToSite(place: Place, sites: SitePoints, ofLocality: number): Place {
  if (sites.size === 0 && ofLocality === 0) return place;
  const [longitude, latitude] = middleOf(place);
  const row = Math.round(latitude * 1000);
  const own = [row - 1, row, row + 1]
    .flatMap((near) => sites.get(near) ?? [])
    .filter((site) => isSame(site, longitude, latitude))
    .map(({ uncertainty }) => uncertainty);
  const radius = Math.max(ofLocality, ...own);
  const { shape } = place;
  const reach = shape.kind === "circle" ? shape.radius : shape.square.size / Math.SQRT2;
  if (radius <= reach) return place;
  const point = shape.kind === "circle" ? shape.point : centreOf(shape.square);
  return { ...place, longitude, latitude, shape: { kind: "circle", point, radius }, radiusFrom: "site" };
}

function isSame(site: SitePoint, longitude: number, latitude: number): boolean {
  const north = (site.latitude - latitude) * 111_195;
  const east = (site.longitude - longitude) * 111_195 * Math.cos((latitude * Math.PI) / 180);
  return Math.hypot(north, east) <= SAME_M;
}
