import { centreOf } from "../grids/squares.ts";
import type { SiteRow } from "../scheme/sites-file.ts";
import { isUnplaced, middleOf, type Place, type PlacingRules } from "./place.ts";
import { readPlace } from "./read-place.ts";

/** A site by its name without case, or by its label point where it has none, and how far it reaches in metres. */
export interface NamedSite {
  name: string;
  uncertainty: number;
}

/** The label point of a named site, in WGS84 degrees, and how far the site reaches from it in metres. */
export interface SitePoint extends NamedSite {
  longitude: number;
  latitude: number;
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
  const points = sites.flatMap(({ name, gridReference, decimalLatitude, decimalLongitude, uncertainty_m }) => {
    const place = readPlace(
      { gridReference, decimalLatitude, decimalLongitude, geodeticDatum: "WGS84", ...nothing },
      rules,
    );
    if (isUnplaced(place)) return [];
    const [longitude, latitude] = middleOf(place);
    const known = siteKey(name) || gridReference || `${decimalLatitude} ${decimalLongitude}`;
    return [{ name: known, longitude, latitude, uncertainty: uncertainty_m }];
  });
  return Map.groupBy(points, ({ latitude }) => Math.round(latitude * 1000));
}

/** A site's name as localities are compared with it. @example siteKey(" Long Mead") // => "long mead" */
export function siteKey(name: string): string {
  return name.trim().toLowerCase();
}

/**
 * A place as uncertain as the named site it is of: by its locality, or because its point is the site's label point. A
 * place that is known less well than that stays as it is. Of several sites the furthest reaching counts, of those that
 * reach equally far the one the locality names.
 *
 * @param ofLocality the site the record's locality names; one that reaches 0 m for none
 * @example widenToSite(place, new Map(), { name: "long mead", uncertainty: 800 }).shape // => { kind: "circle", point: …, radius: 800 }
 */
export function widenToSite(place: Place, sites: SitePoints, ofLocality: NamedSite): Place {
  if (sites.size === 0 && ofLocality.uncertainty === 0) return place;
  const [longitude, latitude] = middleOf(place);
  const row = Math.round(latitude * 1000);
  const own = [row - 1, row, row + 1]
    .flatMap((near) => sites.get(near) ?? [])
    .filter((site) => isSame(site, longitude, latitude));
  const { name, uncertainty } = own.reduce<NamedSite>(
    (furthest, site) => (site.uncertainty > furthest.uncertainty ? site : furthest),
    ofLocality,
  );
  const { shape } = place;
  const reach = shape.kind === "circle" ? shape.radius : shape.square.size / Math.SQRT2;
  if (uncertainty < reach || uncertainty === 0) return place;
  if (uncertainty === reach) return { ...place, site: name };
  const point = shape.kind === "circle" ? shape.point : centreOf(shape.square);
  const radius = uncertainty;
  return { ...place, longitude, latitude, shape: { kind: "circle", point, radius }, radiusFrom: "site", site: name };
}

function isSame(site: SitePoint, longitude: number, latitude: number): boolean {
  const north = (site.latitude - latitude) * 111_195;
  const east = (site.longitude - longitude) * 111_195 * Math.cos((latitude * Math.PI) / 180);
  return Math.hypot(north, east) <= SAME_M;
}
