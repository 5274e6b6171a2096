import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { FeatureCollection, Position } from "geojson";
import { transform } from "../../geodesy/transform.ts";
import { type Grid, isRefusal } from "../../grids/grid.ts";
import { placingTerritories } from "../../records/record-stage.ts";
import type { Scheme } from "../../scheme/scheme.ts";

/** A point in kilometres of a projection, y downwards. */
export type Point = readonly [x: number, y: number];

/** One projection to draw records in: where squares and places lie on it, and its land. */
export interface Sheet {
  readonly crs: string;
  /** Corners of a square, south-west first and round by north-west; undefined where its grid knows no such code. */
  corners(grid: string, code: string): readonly Point[] | undefined;
  /** A WGS84 position; undefined where the projection cannot hold it. */
  at(longitude: number, latitude: number): Point | undefined;
  /** Corners of a square of a size around a position, upright on its own territory's grid. */
  around(territory: string, longitude: number, latitude: number, size: number): readonly Point[];
  /** Outlines of the land as a path; empty where the scheme has none. */
  readonly land: string;
}

const KILOMETRE = 1000;

/**
 * Makes the sheets of a scheme, one a projection, each once: what costs time is kept.
 *
 * @returns the sheet on which squares of a territory stand upright; the first territory's for one that is not known
 * @example sheetsOf(scheme)("britain").crs // => "EPSG:27700"
 */
export function sheetsOf(scheme: Scheme): (territory: string, longitude: number, latitude: number) => Sheet {
  const territories = placingTerritories(scheme);
  const grids = new Map<string, Grid>(territories.map(({ grid }) => [grid.id, grid]));
  const land = landOf(scheme);
  const sheets = new Map<string, Sheet>();
  return (territory, longitude, latitude) => {
    const own = territories.find(({ id }) => id === territory) ?? territories[0];
    const crs = own?.grid.project(longitude, latitude).crs ?? "EPSG:4326";
    const sheet =
      sheets.get(crs) ?? makeSheet(crs, grids, new Map(territories.map(({ id, grid }) => [id, grid])), land);
    sheets.set(crs, sheet);
    return sheet;
  };
}

function makeSheet(
  crs: string,
  grids: ReadonlyMap<string, Grid>,
  ofTerritory: ReadonlyMap<string, Grid>,
  land: readonly Position[][],
): Sheet {
  const kept = new Map<string, readonly Point[] | undefined>();
  const place = (from: string, x: number, y: number): Point | undefined => {
    try {
      const [easting, northing] = transform(from, crs, x, y);
      return [easting / KILOMETRE, -northing / KILOMETRE];
    } catch {
      return undefined;
    }
  };
  const box = (from: string, west: number, south: number, size: number): readonly Point[] =>
    [
      [0, 0],
      [0, size],
      [size, size],
      [size, 0],
    ].flatMap(([dx = 0, dy = 0]) => {
      const point = place(from, west + dx, south + dy);
      return point === undefined ? [] : [point];
    });
  const corners = (grid: string, code: string): readonly Point[] | undefined => {
    const key = `${grid} ${code}`;
    if (kept.has(key)) return kept.get(key);
    const square = grids.get(grid)?.parse(code);
    const found =
      square === undefined || isRefusal(square)
        ? undefined
        : box(square.crs, square.easting, square.northing, square.size);
    kept.set(key, found?.length === 4 ? found : undefined);
    return kept.get(key);
  };
  const at = (longitude: number, latitude: number) => place("EPSG:4326", longitude, latitude);
  return {
    crs,
    corners,
    at,
    around(territory, longitude, latitude, size) {
      const middle = ofTerritory.get(territory)?.project(longitude, latitude);
      return middle === undefined ? [] : box(middle.crs, middle.easting - size / 2, middle.northing - size / 2, size);
    },
    land: land.map((line) => pathOf(line.flatMap(([x = 0, y = 0]) => [at(x, y)]))).join(""),
  };
}

/** A closed path in kilometres, to a tenth; empty where a point lies outside the projection. */
export function pathOf(points: readonly (Point | undefined)[]): string {
  const known = points.filter((point) => point !== undefined);
  if (known.length < 3 || known.length < points.length) return "";
  return `M${known.map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`).join("L")}Z`;
}

/** Rings of the land of a scheme's base map. */
function landOf({ folder, settings }: Scheme): Position[][] {
  const file = settings.basemap?.land;
  if (file === undefined) return [];
  const { features } = JSON.parse(readFileSync(join(folder, file), "utf8")) as FeatureCollection;
  return features.flatMap(({ geometry }) =>
    geometry.type === "Polygon"
      ? geometry.coordinates
      : geometry.type === "MultiPolygon"
        ? geometry.coordinates.flat()
        : [],
  );
}
