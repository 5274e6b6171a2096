/**
 * EPSG:1041, TM75 to ETRS89: the official polynomial of both Irish mapping agencies, derived at 183 points,
 * accuracy 0.4 m (95 %). Method EPSG:9648, general polynomial of degree 6. With U = 0.1·(latitude − 53.5) and
 * V = 0.1·(longitude + 7.7) in degrees, the shifts in arc-seconds are Σ A[m,n]·Uᵐ·Vⁿ and Σ B[m,n]·Uᵐ·Vⁿ.
 */
const ORIGIN_LATITUDE = 53.5;
const ORIGIN_LONGITUDE = -7.7;
const SCALE = 0.1;

/** m, n, A (latitude), B (longitude); arc-seconds. Source: EPSG v9.2, parameters of operation 1041. */
const COEFFICIENTS: readonly (readonly [m: number, n: number, latitude: number, longitude: number])[] = Object.freeze([
  [0, 0, 0.763, -2.81],
  [1, 0, -4.487, -0.341],
  [0, 1, 0.123, -4.68],
  [2, 0, 0.215, 1.196],
  [1, 1, -0.515, -0.119],
  [0, 2, 0.183, 0.17],
  [3, 0, -0.265, -0.887],
  [2, 1, -0.57, 4.877],
  [1, 2, 0.414, 3.913],
  [0, 3, -0.374, 2.163],
  [3, 1, 2.852, -46.666],
  [2, 2, 5.703, -27.795],
  [1, 3, 13.11, 18.867],
  [3, 2, -61.678, -95.377],
  [2, 3, 113.743, -284.294],
  [3, 3, -265.898, -853.95],
]);

/** Area of use of EPSG:1041 in WGS84 degrees (EPSG extent 1305, Ireland onshore): west, south, east, north. */
export const IRISH_POLYNOMIAL_AREA = Object.freeze({ west: -10.56, south: 51.39, east: -5.34, north: 55.43 });

/** 1e-11 degrees are about a micrometre. */
const CLOSE_ENOUGH = 1e-11;
const MOST_STEPS = 20;

/**
 * True when a WGS84 position is inside the polynomial's area; outside it the polynomial must not be used
 * (at the area's corners, all at sea, it is already 2 to 5 m from the seven-parameter shift).
 *
 * @param longitude WGS84 degrees
 * @param latitude WGS84 degrees
 * @example irishPolynomialCovers(-6.26, 53.35); // => true
 */
export function irishPolynomialCovers(longitude: number, latitude: number): boolean {
  const { west, south, east, north } = IRISH_POLYNOMIAL_AREA;
  return longitude >= west && longitude <= east && latitude >= south && latitude <= north;
}

/** Shift in degrees at a TM75 position: [longitude, latitude]. */
function shiftAt(longitude: number, latitude: number): [number, number] {
  const u = SCALE * (latitude - ORIGIN_LATITUDE);
  const v = SCALE * (longitude - ORIGIN_LONGITUDE);
  const powersOfU = [1, u, u * u, u * u * u];
  const powersOfV = [1, v, v * v, v * v * v];
  let northwards = 0;
  let eastwards = 0;
  for (const [m, n, a, b] of COEFFICIENTS) {
    const term = (powersOfU[m] as number) * (powersOfV[n] as number);
    northwards += a * term;
    eastwards += b * term;
  }
  return [eastwards / 3600, northwards / 3600];
}

/**
 * TM75 to ETRS89 (taken as WGS84) by EPSG:1041.
 *
 * @param longitude TM75 degrees
 * @param latitude TM75 degrees, inside Ireland: elsewhere the result means nothing
 * @returns [longitude, latitude] in degrees
 * @example irishPolynomialToWgs84(-6.5, 55); // => [-6.5009491261, 55.0000297229] to 10 decimals
 */
export function irishPolynomialToWgs84(longitude: number, latitude: number): [longitude: number, latitude: number] {
  const [east, north] = shiftAt(longitude, latitude);
  return [longitude + east, latitude + north];
}

/**
 * ETRS89 (taken as WGS84) to TM75: the inverse of EPSG:1041 by fixed-point iteration, exact to a micrometre.
 *
 * @param longitude WGS84 degrees
 * @param latitude WGS84 degrees, inside Ireland
 * @returns [longitude, latitude] in TM75 degrees
 * @throws {Error} where the iteration does not settle, far outside Ireland
 * @example irishPolynomialFromWgs84(-6.5009491261, 55.0000297229); // => [-6.5, 55] to 10 decimals
 */
export function irishPolynomialFromWgs84(longitude: number, latitude: number): [longitude: number, latitude: number] {
  let x = longitude;
  let y = latitude;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const [east, north] = shiftAt(x, y);
    const nextX = longitude - east;
    const nextY = latitude - north;
    const settled = Math.abs(nextX - x) < CLOSE_ENOUGH && Math.abs(nextY - y) < CLOSE_ENOUGH;
    x = nextX;
    y = nextY;
    if (settled) return [x, y];
  }
  throw new Error(`EPSG:1041 does not settle at ${longitude} ${latitude}; use it inside Ireland only`);
}
