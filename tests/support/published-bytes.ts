/** Reads everything a stranger can get from a published folder: every file as it is, unpacked and decoded. */
import { readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, relative } from "node:path";
import { gunzipSync } from "node:zlib";
import { PMTiles, type RangeResponse, type Source } from "pmtiles";
import { openDatabase } from "../../src/engine/database.ts";

/** Paths of all files below a folder. */
export function filesBelow(top: string): string[] {
  return readdirSync(top, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
}

/** One reading of a file: its path below the folder, with how it was read, and the bytes. */
export interface Reading {
  where: string;
  bytes: Buffer;
}

/** Every file of a folder as bytes; gzip unpacked, Parquet decoded with its metadata, every tile of an archive. */
export async function everyReading(top: string): Promise<Reading[]> {
  const readings: Reading[] = [];
  for (const path of filesBelow(top)) {
    const where = relative(top, path);
    const bytes = readFileSync(path);
    readings.push({ where, bytes });
    if (bytes[0] === 0x1f && bytes[1] === 0x8b) readings.push({ where: `${where} unpacked`, bytes: gunzipSync(bytes) });
    if (path.endsWith(".parquet")) readings.push({ where: `${where} decoded`, bytes: await decoded(path) });
    if (path.endsWith(".pmtiles"))
      for (const tile of await tilesOf(path)) readings.push({ where: `${where} tile`, bytes: tile });
  }
  return readings;
}

async function decoded(parquet: string): Promise<Buffer> {
  const spillFolder = join(tmpdir(), `atlaswright-reading-${process.pid}`);
  const database = await openDatabase({ spillFolder });
  const rows = await database.rows(`SELECT * FROM read_parquet('${parquet}')`);
  const about = await database.rows(`SELECT * FROM parquet_kv_metadata('${parquet}')`);
  database.close();
  rmSync(spillFolder, { recursive: true, force: true });
  return Buffer.from(JSON.stringify([rows, about]));
}

/** The metadata of an archive and every tile to zoom 7, unpacked. */
export async function tilesOf(path: string): Promise<Buffer[]> {
  const bytes = readFileSync(path);
  const source: Source = {
    getKey: () => path,
    getBytes: async (offset: number, length: number): Promise<RangeResponse> => ({
      data: new Uint8Array(bytes.subarray(offset, offset + length)).buffer,
    }),
  };
  const archive = new PMTiles(source);
  const { minZoom, maxZoom } = await archive.getHeader();
  const tiles = [Buffer.from(JSON.stringify(await archive.getMetadata()))];
  for (let zoom = minZoom; zoom <= Math.min(maxZoom, 7); zoom += 1)
    for (let x = 0; x < 2 ** zoom; x += 1)
      for (let y = 0; y < 2 ** zoom; y += 1) {
        const tile = await archive.getZxy(zoom, x, y);
        if (tile !== undefined) tiles.push(Buffer.from(tile.data));
      }
  return tiles;
}
