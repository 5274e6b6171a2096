import { readFileSync } from "node:fs";

interface Feature {
  properties: { territory: string };
  geometry: { coordinates: [number, number][][] };
}

/** The demonstration's territories, straight from their file: each of one polygon without holes. */
const RINGS = new Map(
  (
    JSON.parse(readFileSync(new URL("../../../content/basemap/territories.geojson", import.meta.url), "utf8")) as {
      features: Feature[];
    }
  ).features.map(({ properties, geometry }) => [properties.territory, geometry.coordinates[0] ?? []]),
);
const GRID_OF: Readonly<Record<string, string>> = {
  britain: "british",
  ireland: "irish",
  "channel-islands": "channel-islands",
};
/** Degrees: closer to a border than about 40 m nobody is blamed. */
const CLOSE = 0.0004;

/** The grid used at a position: by the angle that each border turns around it; "border" where it is too close to tell. */
export function gridUsedAt(longitude: number, latitude: number): string | undefined {
  for (const [name, ring] of RINGS) if (distance(ring, longitude, latitude) < CLOSE) return `border of ${name}`;
  for (const [name, ring] of RINGS) if (Math.abs(turns(ring, longitude, latitude)) > 0.5) return GRID_OF[name];
  return undefined;
}

function turns(ring: readonly [number, number][], x: number, y: number): number {
  let angle = 0;
  for (let i = 1; i < ring.length; i += 1) {
    const [[ax, ay], [bx, by]] = [ring[i - 1], ring[i]] as [[number, number], [number, number]];
    angle += Math.atan2((ax - x) * (by - y) - (bx - x) * (ay - y), (ax - x) * (bx - x) + (ay - y) * (by - y));
  }
  return angle / (2 * Math.PI);
}

function distance(ring: readonly [number, number][], x: number, y: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 1; i < ring.length; i += 1) {
    const [[ax, ay], [bx, by]] = [ring[i - 1], ring[i]] as [[number, number], [number, number]];
    const length = (bx - ax) ** 2 + (by - ay) ** 2;
    const t = Math.max(0, Math.min(1, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / length));
    least = Math.min(least, Math.hypot(ax + t * (bx - ax) - x, ay + t * (by - ay) - y));
  }
  return least;
}
