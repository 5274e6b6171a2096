/**
 * Projections written from the formulas, another way than the program's library: the transverse Mercator by the Krüger
 * series in n to the fourth order (Karney 2011, Journal of Geodesy 85: 475–485, equations 35 and 36), the datum shifts
 * through geocentric coordinates with the position-vector rotation of EPSG method 9606.
 */
const RADIANS = Math.PI / 180;
const ARC_SECONDS = RADIANS / 3600;

interface Ellipsoid {
  a: number;
  f: number;
}

interface Shift {
  x: number;
  y: number;
  z: number;
  rx: number;
  ry: number;
  rz: number;
  ppm: number;
}

/** A national system as published in the EPSG register: ellipsoid, projection, and the shift to WGS84. */
export interface System {
  ellipsoid: Ellipsoid;
  shift: Shift;
  latitude0: number;
  longitude0: number;
  scale: number;
  east0: number;
  north0: number;
  /** How far in metres this computation and the best one may lie apart. */
  tolerance: number;
}

const WGS84: Ellipsoid = { a: 6_378_137, f: 1 / 298.257223563 };
const NO_SHIFT: Shift = { x: 0, y: 0, z: 0, rx: 0, ry: 0, rz: 0, ppm: 0 };
const AIRY: Ellipsoid = { a: 6_377_563.396, f: 1 / 299.3249646 };
const AIRY_MODIFIED: Ellipsoid = { a: 6_377_340.189, f: 1 / 299.3249646 };
const INTERNATIONAL: Ellipsoid = { a: 6_378_388, f: 1 / 297 };

/** EPSG 27700 with 1314; 29903 with 1954, up to 5 m from the polynomial 1041 at the corners of Ireland; 23030 with 1138. */
export const SYSTEMS: Readonly<Record<string, System>> = {
  british: {
    ellipsoid: AIRY,
    shift: { x: 446.448, y: -125.157, z: 542.06, rx: 0.15, ry: 0.247, rz: 0.842, ppm: -20.489 },
    ...{ latitude0: 49, longitude0: -2, scale: 0.9996012717, east0: 400_000, north0: -100_000 },
    tolerance: 0.02,
  },
  irish: {
    ellipsoid: AIRY_MODIFIED,
    shift: { x: 482.5, y: -130.6, z: 564.6, rx: -1.042, ry: -0.214, rz: -0.631, ppm: 8.15 },
    ...{ latitude0: 53.5, longitude0: -8, scale: 1.000035, east0: 200_000, north0: 250_000 },
    tolerance: 6,
  },
  "channel-islands": {
    ellipsoid: INTERNATIONAL,
    shift: { ...NO_SHIFT, x: -86, y: -96, z: -120 },
    ...{ latitude0: 0, longitude0: -3, scale: 0.9996, east0: 500_000, north0: 0 },
    tolerance: 0.02,
  },
};

/** WGS84 degrees to a national system's metres. */
export function project(
  { ellipsoid, shift, ...system }: System,
  longitude: number,
  latitude: number,
): [number, number] {
  const [x, y, z] = geocentric(WGS84, longitude, latitude);
  const [lon, lat] = geographic(ellipsoid, ...unshifted(shift, x, y, z));
  return transverseMercator({ ellipsoid, ...system }, lon, lat);
}

/** Degrees on a national system's own datum to WGS84 degrees. */
export function toWgs84({ ellipsoid, shift }: System, longitude: number, latitude: number): [number, number] {
  return geographic(WGS84, ...shifted(shift, ...geocentric(ellipsoid, longitude, latitude)));
}

/** A national system's metres to WGS84 degrees, by repeating the way there until it arrives. */
export function unproject(system: System, east: number, north: number): [number, number] {
  let [longitude, latitude] = [system.longitude0, system.latitude0];
  for (let step = 0; step < 12; step += 1) {
    const [e, n] = project(system, longitude, latitude);
    latitude += (north - n) / 111_200;
    longitude += (east - e) / (111_320 * Math.cos(latitude * RADIANS));
  }
  return [longitude, latitude];
}

function geocentric({ a, f }: Ellipsoid, longitude: number, latitude: number): [number, number, number] {
  const e2 = f * (2 - f);
  const [lon, lat] = [longitude * RADIANS, latitude * RADIANS];
  const nu = a / Math.sqrt(1 - e2 * Math.sin(lat) ** 2);
  return [nu * Math.cos(lat) * Math.cos(lon), nu * Math.cos(lat) * Math.sin(lon), nu * (1 - e2) * Math.sin(lat)];
}

function geographic({ a, f }: Ellipsoid, x: number, y: number, z: number): [number, number] {
  const e2 = f * (2 - f);
  const p = Math.hypot(x, y);
  let lat = Math.atan2(z, p * (1 - e2));
  for (let step = 0; step < 8; step += 1) {
    const nu = a / Math.sqrt(1 - e2 * Math.sin(lat) ** 2);
    lat = Math.atan2(z + e2 * nu * Math.sin(lat), p);
  }
  return [Math.atan2(y, x) / RADIANS, lat / RADIANS];
}

function shifted(shift: Shift, x: number, y: number, z: number): [number, number, number] {
  const [rx, ry, rz] = [shift.rx * ARC_SECONDS, shift.ry * ARC_SECONDS, shift.rz * ARC_SECONDS];
  const m = 1 + shift.ppm / 1e6;
  return [
    shift.x + m * (x - rz * y + ry * z),
    shift.y + m * (rz * x + y - rx * z),
    shift.z + m * (-ry * x + rx * y + z),
  ];
}

/** The way back, repeated until it arrives. */
function unshifted(shift: Shift, x: number, y: number, z: number): [number, number, number] {
  let from: [number, number, number] = [x, y, z];
  for (let step = 0; step < 4; step += 1) {
    const [sx, sy, sz] = shifted(shift, ...from);
    from = [from[0] + x - sx, from[1] + y - sy, from[2] + z - sz];
  }
  return from;
}

function transverseMercator(
  { ellipsoid: { a, f }, latitude0, longitude0, scale, east0, north0 }: Omit<System, "shift" | "tolerance">,
  longitude: number,
  latitude: number,
): [number, number] {
  const n = f / (2 - f);
  const radius = (a / (1 + n)) * (1 + n ** 2 / 4 + n ** 4 / 64);
  const alpha = [
    n / 2 - (2 / 3) * n ** 2 + (5 / 16) * n ** 3 + (41 / 180) * n ** 4,
    (13 / 48) * n ** 2 - (3 / 5) * n ** 3 + (557 / 1440) * n ** 4,
    (61 / 240) * n ** 3 - (103 / 140) * n ** 4,
    (49_561 / 161_280) * n ** 4,
  ];
  const xiOf = (lat: number, lon: number): [number, number] => {
    const e = Math.sqrt(f * (2 - f));
    const sine = Math.sin(lat * RADIANS);
    const t = Math.sinh(Math.atanh(sine) - e * Math.atanh(e * sine));
    const xi = Math.atan2(t, Math.cos(lon * RADIANS));
    const eta = Math.atanh(Math.sin(lon * RADIANS) / Math.sqrt(1 + t * t));
    let [x, y] = [xi, eta];
    alpha.forEach((coefficient, index) => {
      const j = 2 * (index + 1);
      x += coefficient * Math.sin(j * xi) * Math.cosh(j * eta);
      y += coefficient * Math.cos(j * xi) * Math.sinh(j * eta);
    });
    return [x, y];
  };
  const [xi, eta] = xiOf(latitude, longitude - longitude0);
  const [xi0] = xiOf(latitude0, 0);
  return [east0 + scale * radius * eta, north0 + scale * radius * (xi - xi0)];
}
