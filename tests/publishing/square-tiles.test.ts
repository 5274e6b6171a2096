import { PMTiles } from "pmtiles";
import { describe, expect, it } from "vitest";
import { packTiles } from "../../src/publishing/pmtiles-archive.ts";
import { boundsOf, type MapSquare, squareTiles, TILE_ZOOMS } from "../../src/publishing/square-tiles.ts";
import { chance, cornersOnEarth } from "../support/map-fixture.ts";
import { readTile } from "../support/vector-tile-reader.ts";

/** The reader of the `pmtiles` package over bytes in memory. */
function open(bytes: Uint8Array): PMTiles {
  return new PMTiles({
    getKey: () => "memory",
    getBytes: (offset, length) =>
      Promise.resolve({ data: new Uint8Array(bytes.subarray(offset, offset + length)).buffer }),
  });
}

const codes: [Parameters<typeof cornersOnEarth>[0], string][] = [
  ["british", "NZ27"],
  ["british", "SU30"],
  ["irish", "O13"],
  ["channel-islands", "WV64"],
  ["british", "NZ27A"],
  ["british", "NZ27Y"],
  ["irish", "O13N"],
];
const squares: MapSquare[] = codes.map(([grid, code], id) => ({ id, ...cornersOnEarth(grid, code) }));
const bytes = squareTiles(squares);

/** Longitude and latitude of a point of a tile, by the formulas of web Mercator. */
function onEarth([x, y]: readonly [number, number], z: number, tileX: number, tileY: number): [number, number] {
  const [u, v] = [(tileX + x / 4096) / 2 ** z, (tileY + y / 4096) / 2 ** z];
  return [u * 360 - 180, (Math.atan(Math.sinh(Math.PI * (1 - 2 * v))) * 180) / Math.PI];
}

async function everyTile(
  archive: PMTiles,
  z: number,
): Promise<{ x: number; y: number; layers: ReturnType<typeof readTile> }[]> {
  const found = [];
  const [west, south, east, north] = boundsOf(squares);
  const across = (degrees: number) => Math.floor(((degrees + 180) / 360) * 2 ** z);
  const down = (degrees: number) =>
    Math.floor(((1 - Math.asinh(Math.tan((degrees * Math.PI) / 180)) / Math.PI) / 2) * 2 ** z);
  for (let x = across(west); x <= across(east); x += 1) {
    for (let y = down(north); y <= down(south); y += 1) {
      const tile = await archive.getZxy(z, x, y);
      if (tile) found.push({ x, y, layers: readTile(new Uint8Array(tile.data)) });
    }
  }
  return found;
}

describe("tiles of squares", () => {
  it("open with the package's own reader, with the zooms and bounds of the squares", async () => {
    const header = await open(bytes).getHeader();
    expect([header.minZoom, header.maxZoom]).toEqual([TILE_ZOOMS.least, TILE_ZOOMS.most]);
    const [west, south, east, north] = boundsOf(squares);
    [header.minLon - west, header.minLat - south, header.maxLon - east, header.maxLat - north].forEach((miss) =>
      expect(Math.abs(miss)).toBeLessThan(1e-6),
    );
  });

  it.each([2, 5, 8])("hold every hectad at zoom %i, by its id", async (z) => {
    const tiles = await everyTile(open(bytes), z);
    for (const layer of ["hectad_cell", "hectad_spine", "hectad_page"]) {
      const ids = new Set(tiles.flatMap(({ layers }) => (layers.get(layer) ?? []).map(({ id }) => id)));
      expect([...ids].toSorted((a, b) => a - b)).toEqual([0, 1, 2, 3]);
    }
  });

  it("hold tetrads from zoom 7 only", async () => {
    for (const z of [6, 7, 8]) {
      const tiles = await everyTile(open(bytes), z);
      const ids = new Set(
        tiles.flatMap(({ layers }) =>
          [...(layers.get("tetrad_spine") ?? []), ...(layers.get("tetrad_page") ?? [])].map(({ id }) => id),
        ),
      );
      expect([...ids].toSorted((a, b) => a - b)).toEqual(z === 6 ? [] : [4, 5, 6]);
    }
  });

  it("draw each square at its corners: within two units of a tile of zoom 8, about 45 m", async () => {
    const tiles = await everyTile(open(bytes), 8);
    for (const { id, corners, resolution_m } of squares.filter(({ resolution_m: size }) => size === 10_000)) {
      const points = tiles.flatMap(({ x, y, layers }) =>
        (layers.get("hectad_cell") ?? [])
          .filter((feature) => feature.id === id)
          .flatMap(({ rings }) => rings.flat().map((point) => onEarth(point, 8, x, y))),
      );
      for (const [longitude, latitude] of corners) {
        const nearest = Math.min(
          ...points.map(([lon, lat]) =>
            Math.hypot((lon - longitude) * Math.cos((latitude * Math.PI) / 180), lat - latitude),
          ),
        );
        expect(nearest * 111_200).toBeLessThan(45);
      }
      expect(resolution_m).toBe(10_000);
    }
  });

  it("cut sea from land given, and leave it out where there is none", async () => {
    const island = {
      type: "Polygon" as const,
      coordinates: [
        [
          [-1.8, 54.9],
          [-1.4, 54.9],
          [-1.4, 55.2],
          [-1.8, 55.2],
          [-1.8, 54.9],
        ],
      ],
    };
    const withLand = squareTiles(squares, {
      land: { type: "FeatureCollection", features: [{ type: "Feature", properties: {}, geometry: island }] },
    });
    const sea = (await everyTile(open(withLand), 5)).flatMap(({ layers }) => layers.get("sea") ?? []);
    expect(sea.some(({ rings }) => rings.length === 2)).toBe(true);
    expect((await everyTile(open(bytes), 5)).some(({ layers }) => layers.has("sea"))).toBe(false);
  });

  it("are the same bytes for the same squares, in any order", () => {
    expect(Buffer.compare(bytes, squareTiles(squares.toReversed()))).toBe(0);
  });

  it("refuse a square without its corners", () => {
    expect(() => squareTiles([{ id: 0, code: "NZ27", resolution_m: 10_000, corners: [] }])).toThrow(
      "square NZ27 has 0 corners, four are needed",
    );
  });
});

describe("an archive of many tiles", () => {
  it("finds each by its place through leaf directories", async () => {
    const places = Array.from({ length: 20_000 }, (_, i) => ({
      z: 14,
      x: Math.floor(chance("x", i) * 16_384),
      y: Math.floor(chance("y", i) * 16_384),
    }));
    const tiles = [...new Map(places.map((place) => [`${place.x} ${place.y}`, place])).values()].map((place, i) => ({
      ...place,
      data: Buffer.from(`${place.x}/${place.y}/${"x".repeat(i % 97)}`),
    }));
    const archive = open(packTiles(tiles, { minZoom: 14, maxZoom: 14, bounds: [-180, -85, 180, 85], metadata: {} }));
    expect((await archive.getHeader()).leafDirectoryLength).toBeGreaterThan(0);
    for (const { x, y, data } of tiles.filter((_, i) => i % 997 === 0)) {
      expect(new TextDecoder().decode((await archive.getZxy(14, x, y))?.data)).toBe(data.toString());
    }
    expect(await archive.getZxy(7, 0, 0)).toBeUndefined();
  });
});
