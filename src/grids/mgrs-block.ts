import { transform } from "../geodesy/transform.ts";
import { bandAt, bandLimits, NORTHERNMOST, SOUTHERNMOST, zoneLimits } from "./mgrs-lettering.ts";

/** A square in a UTM zone: south-west corner and side in metres. */
export interface UtmSquare {
  readonly zone: number;
  readonly crs: string;
  readonly easting: number;
  readonly northing: number;
  readonly size: number;
}

/** Where a square lies: bands, south to north, in which part of it is inside its zone; whether no zone's edge cuts it. */
export interface Lie {
  readonly bands: readonly string[];
  readonly whole: boolean;
}

/**
 * From this northing of a northern zone on, 83.75°, a zone of 6° is 73 km wide: only squares beside its meridian touch it, and corners of the outer
 * ones lie further from the meridian than the projection holds.
 */
const POLAR_ROWS = 9_300_000;

/**
 * Where a square of a UTM zone lies. Edges of a 100 km square do not cross the central meridian, so the extremes of
 * latitude and longitude are at its corners.
 *
 * @param square the square; inside one 100 km square
 * @returns its bands and whether it is whole; no bands when it lies outside its zone or beyond 80° S and 84° N
 * @example lieOf({ zone: 30, crs: "EPSG:32630", easting: 500000, northing: 5700000, size: 100000 }); // => { bands: ["U"], whole: true }
 */
export function lieOf({ zone, crs, easting, northing, size }: UtmSquare): Lie {
  const isPolar = crs.startsWith("EPSG:326") && northing + size > POLAR_ROWS;
  if (isPolar && (easting + size <= 400_000 || easting >= 600_000)) return { bands: [], whole: false };
  const middle = 6 * zone - 183;
  let [south, north, west, east] = [90, -90, 180, -180];
  for (const x of [easting, easting + size]) {
    for (const y of [northing, northing + size]) {
      const [longitude, latitude] = transform(crs, "EPSG:4326", x, y);
      const apart = ((longitude - middle + 540) % 360) - 180;
      [south, north] = [Math.min(south, latitude), Math.max(north, latitude)];
      [west, east] = [Math.min(west, apart), Math.max(east, apart)];
    }
  }
  if (north <= SOUTHERNMOST || south >= NORTHERNMOST) return { bands: [], whole: false };
  const touched: string[] = [];
  let whole = south >= SOUTHERNMOST && north <= NORTHERNMOST;
  for (const band of bandsBetween(south, north)) {
    const limits = zoneLimits(zone, band);
    const inside = limits !== undefined && east > limits[0] - middle && west < limits[1] - middle;
    if (inside) touched.push(band);
    whole &&= inside && west >= limits[0] - middle && east <= limits[1] - middle;
  }
  return { bands: touched, whole };
}

function bandsBetween(south: number, north: number): string[] {
  const bands = [bandAt(south)];
  for (;;) {
    const last = bands[bands.length - 1] as string;
    const top = bandLimits(last)?.[1] ?? NORTHERNMOST;
    if (top >= north || top >= NORTHERNMOST) return bands;
    bands.push(bandAt(top));
  }
}
