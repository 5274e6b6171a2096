import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { GeoJSONVT } from "@maplibre/geojson-vt";
import { fromGeojsonVt } from "@maplibre/vt-pbf";
import type { Feature, FeatureCollection, Polygon } from "geojson";
import { packTiles, type Tile } from "./pmtiles-archive.ts";

/** A position in WGS84 degrees. */
export type LonLat = readonly [longitude: number, latitude: number];

/** One square of the interactive map. */
export interface MapSquare {
  /** Its place in the list of all squares: hectads and tetrads share one count from 0. */
  readonly id: number;
  readonly code: string;
  readonly resolution_m: 10_000 | 2_000;
  /** South-west, south-east, north-east, north-west; a closing point may follow. */
  readonly corners: readonly LonLat[];
}

/** Land and lakes to draw under the squares, in longitude and latitude. */
export interface MapGround {
  readonly land?: FeatureCollection | undefined;
  readonly lakes?: FeatureCollection | undefined;
}

/** Zooms the tiles hold; a map that zooms closer enlarges the last. */
export const TILE_ZOOMS = Object.freeze({ least: 2, tetrads: 7, most: 8 });

/** Parts of a cell as shares of its side: left, right, bottom, top. The same proportions as the printed maps. */
const PARTS = Object.freeze({
  cell: [0, 1, 0, 1],
  spine: [0.0625, 0.375, 0.0625, 0.9375],
  page: [0.375, 0.9375, 0.0625, 0.9375],
} as const);

type Part = keyof typeof PARTS;
const EXTENT = 4096;
/** Latitude the sea reaches to; tiles hold the world to about 85°. */
const WORLD = 84.9;

/**
 * The tiles of all squares of an atlas as one PMTiles archive of vector tiles. Layers: `hectad_cell` (whole 10 km
 * squares), `hectad_spine` and `hectad_page` (the two parts of the small book) from zoom 2; `tetrad_spine` and
 * `tetrad_page` from zoom 7; `sea` (all that is not land, for drawing over whole squares) and `lakes` where given. A feature's id is its square's id; it has no
 * properties, since a species is painted by feature state.
 *
 * @param squares in any order
 * @param ground land and lakes, simplified here for each zoom
 * @returns bytes of the archive, the same for the same squares
 * @throws {Error} where a square has fewer than four corners
 * @example squareTiles([{ id: 0, code: "NZ27", resolution_m: 10_000, corners }]).subarray(0, 7) // "PMTiles" in ASCII
 */
export function squareTiles(squares: readonly MapSquare[], ground: MapGround = {}): Uint8Array {
  const sorted = squares.toSorted((a, b) => a.id - b.id);
  const of = (size: MapSquare["resolution_m"]) => sorted.filter(({ resolution_m }) => resolution_m === size);
  const [hectads, tetrads] = [of(10_000), of(2_000)];
  const { least, tetrads: fine } = TILE_ZOOMS;
  const bounds = boundsOf(squares);
  const layers = [
    ...(ground.land ? [{ name: "sea", from: least, index: indexOf(seaAround(ground.land), 4, 64) }] : []),
    ...(ground.lakes ? [{ name: "lakes", from: least, index: indexOf(ground.lakes, 4, 64) }] : []),
    ...(["cell", "spine", "page"] as const).map((part) => ({
      name: `hectad_${part}`,
      from: least,
      index: indexOf(partsOf(hectads, part), 0, 16),
    })),
    ...(["spine", "page"] as const).map((part) => ({
      name: `tetrad_${part}`,
      from: fine,
      index: indexOf(partsOf(tetrads, part), 0, 16),
    })),
  ];
  const tiles = placesOf(squares, ground).flatMap(({ z, x, y }): Tile[] => {
    const found = layers
      .filter(({ from }) => z >= from)
      .flatMap(({ name, index }) => {
        const tile = index.getTile(z, x, y);
        return tile && tile.features.length > 0 ? [[name, tile] as const] : [];
      });
    return found.length === 0
      ? []
      : [{ z, x, y, data: fromGeojsonVt(Object.fromEntries(found), { version: 2, extent: EXTENT }) }];
  });
  const metadata = {
    vector_layers: layers.map(({ name, from }) => ({ id: name, minzoom: from, maxzoom: TILE_ZOOMS.most, fields: {} })),
  };
  return packTiles(tiles, { minZoom: least, maxZoom: TILE_ZOOMS.most, bounds, metadata });
}

/**
 * Writes the archive of `squareTiles` to a file, making its folder if missing.
 *
 * @param squares every hectad and tetrad of the atlas
 * @param file usually `map/squares.pmtiles` of the published folder
 * @param ground land and lakes
 * @returns bytes written
 * @example writeSquareTiles(squares, "published/map/squares.pmtiles", { land }) // 1_960_112
 */
export function writeSquareTiles(squares: readonly MapSquare[], file: string, ground: MapGround = {}): number {
  const bytes = squareTiles(squares, ground);
  mkdirSync(path.dirname(file), { recursive: true });
  writeFileSync(file, bytes);
  return bytes.length;
}

function indexOf(data: FeatureCollection, tolerance: number, buffer: number): GeoJSONVT {
  return new GeoJSONVT(data, {
    maxZoom: TILE_ZOOMS.most,
    indexMaxZoom: 5,
    indexMaxPoints: 20_000,
    tolerance,
    buffer,
    extent: EXTENT,
  });
}

/** The world with every island cut out of it; lagoons inside islands are areas of their own. */
function seaAround(land: FeatureCollection): FeatureCollection {
  const polygons = land.features.flatMap(({ geometry }) =>
    geometry?.type === "Polygon"
      ? [geometry.coordinates]
      : geometry?.type === "MultiPolygon"
        ? geometry.coordinates
        : [],
  );
  const frame = [
    [-180, -WORLD],
    [180, -WORLD],
    [180, WORLD],
    [-180, WORLD],
    [-180, -WORLD],
  ];
  const sea: Polygon = {
    type: "Polygon",
    coordinates: [frame, ...polygons.flatMap(([island]) => (island ? [island] : []))],
  };
  const lagoons = polygons.flatMap(([, ...holes]) =>
    holes.map((hole): Polygon => ({ type: "Polygon", coordinates: [hole] })),
  );
  return {
    type: "FeatureCollection",
    features: [sea, ...lagoons].map((geometry) => ({ type: "Feature", properties: {}, geometry })),
  };
}

function partsOf(squares: readonly MapSquare[], part: Part): FeatureCollection {
  return { type: "FeatureCollection", features: squares.map((square) => partOf(square, part)) };
}

function partOf({ id, code, corners }: MapSquare, part: Part): Feature<Polygon> {
  const [southWest, southEast, northEast, northWest] = corners;
  if (!southWest || !southEast || !northEast || !northWest)
    throw new Error(`square ${code} has ${corners.length} corners, four are needed`);
  const at = (east: number, north: number): [number, number] =>
    [0, 1].map((axis) => {
      const south = (southWest[axis] ?? 0) * (1 - east) + (southEast[axis] ?? 0) * east;
      const top = (northWest[axis] ?? 0) * (1 - east) + (northEast[axis] ?? 0) * east;
      return south * (1 - north) + top * north;
    }) as [number, number];
  const [left, right, bottom, upper] = PARTS[part];
  const ring = [at(left, bottom), at(right, bottom), at(right, upper), at(left, upper), at(left, bottom)];
  return { type: "Feature", id, properties: {}, geometry: { type: "Polygon", coordinates: [ring] } };
}

/** West, south, east and north of all squares, in degrees; of the whole world without squares. */
export function boundsOf(squares: readonly Pick<MapSquare, "corners">[]): [number, number, number, number] {
  let [west, south, east, north] = [180, 85, -180, -85];
  for (const { corners } of squares) {
    for (const [longitude, latitude] of corners) {
      [west, east] = [Math.min(west, longitude), Math.max(east, longitude)];
      [south, north] = [Math.min(south, latitude), Math.max(north, latitude)];
    }
  }
  return west > east ? [-180, -85, 180, 85] : [west, south, east, north];
}

/** Places of all tiles that can hold something: those that squares touch, and round them where there is land. */
function placesOf(squares: readonly MapSquare[], ground: MapGround): { z: number; x: number; y: number }[] {
  const [west, south, east, north] = boundsOf(squares);
  const pad = ground.land ? 0.5 : 0;
  const places: { z: number; x: number; y: number }[] = [];
  for (let z = TILE_ZOOMS.least; z <= TILE_ZOOMS.most; z += 1) {
    const [left, top] = tileAt(west - pad, north + pad, z);
    const [right, bottom] = tileAt(east + pad, south - pad, z);
    for (let x = left; x <= right; x += 1) for (let y = top; y <= bottom; y += 1) places.push({ z, x, y });
  }
  return places;
}

function tileAt(longitude: number, latitude: number, z: number): [x: number, y: number] {
  const most = 2 ** z - 1;
  const radians = (Math.max(-85, Math.min(85, latitude)) * Math.PI) / 180;
  const clamp = (value: number) => Math.max(0, Math.min(most, Math.floor(value * 2 ** z)));
  return [clamp((longitude + 180) / 360), clamp((1 - Math.asinh(Math.tan(radians)) / Math.PI) / 2)];
}
