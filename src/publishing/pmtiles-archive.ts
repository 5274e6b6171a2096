import { gzipSync } from "node:zlib";
import { zxyToTileId } from "pmtiles";

/** One vector tile, not yet compressed. */
export interface Tile {
  readonly z: number;
  readonly x: number;
  readonly y: number;
  readonly data: Uint8Array;
}

/** What the head of an archive says of its tiles. */
export interface ArchiveHead {
  readonly minZoom: number;
  readonly maxZoom: number;
  /** West, south, east, north in degrees. */
  readonly bounds: readonly [west: number, south: number, east: number, north: number];
  /** TileJSON's `vector_layers` and the like. */
  readonly metadata: unknown;
}

interface Entry {
  readonly id: number;
  readonly offset: number;
  readonly length: number;
}

const HEADER = 127;
const LARGEST_ROOT = 16_384 - HEADER;
const GZIP = 2;
const VECTOR = 1;

/**
 * Packs vector tiles into one file of PMTiles version 3, which a browser reads by byte ranges. The same tiles give
 * the same bytes, whatever their order.
 *
 * @param tiles at most one for each place; empty tiles are left out by the caller
 * @param head zooms, bounds and metadata
 * @returns the file's bytes
 * @see https://github.com/protomaps/PMTiles/blob/main/spec/v3/spec.md
 * @example packTiles([{ z: 0, x: 0, y: 0, data }], head).subarray(0, 7) // "PMTiles" in ASCII
 */
export function packTiles(tiles: readonly Tile[], head: ArchiveHead): Uint8Array {
  const sorted = tiles
    .map((tile) => ({ id: zxyToTileId(tile.z, tile.x, tile.y), bytes: squeeze(tile.data) }))
    .toSorted((a, b) => a.id - b.id);
  let offset = 0;
  const entries = sorted.map(({ id, bytes }): Entry => {
    const entry = { id, offset, length: bytes.length };
    offset += bytes.length;
    return entry;
  });
  const { root, leaves } = directories(entries);
  const metadata = squeeze(Buffer.from(JSON.stringify(head.metadata)));
  const header = headerBytes(head, {
    root: root.length,
    metadata: metadata.length,
    leaves: leaves.length,
    data: offset,
    tiles: entries.length,
  });
  return Buffer.concat([header, root, metadata, leaves, ...sorted.map(({ bytes }) => bytes)]);
}

/** Gzip without the byte that names the operating system, which would differ between machines. */
function squeeze(data: Uint8Array): Buffer {
  const bytes = gzipSync(data, { level: 9 });
  bytes[9] = 255;
  return bytes;
}

/** One directory where it fits beside the header, else a root that points to leaves. */
function directories(entries: readonly Entry[]): { root: Buffer; leaves: Buffer } {
  const single = directory(entries.map((entry) => ({ ...entry, run: 1 })));
  if (single.length <= LARGEST_ROOT) return { root: single, leaves: Buffer.alloc(0) };
  for (let size = 4096; ; size *= 2) {
    const leaves: Buffer[] = [];
    let offset = 0;
    const pointers = Array.from({ length: Math.ceil(entries.length / size) }, (_, i) => {
      const part = entries.slice(i * size, (i + 1) * size);
      const leaf = directory(part.map((entry) => ({ ...entry, run: 1 })));
      leaves.push(leaf);
      const pointer = { id: part[0]?.id ?? 0, offset, length: leaf.length, run: 0 };
      offset += leaf.length;
      return pointer;
    });
    const root = directory(pointers);
    if (root.length <= LARGEST_ROOT) return { root, leaves: Buffer.concat(leaves) };
  }
}

/** Columns of varints: ids as differences, runs, lengths, offsets (0 where a tile follows the one before). */
function directory(entries: readonly (Entry & { run: number })[]): Buffer {
  const bytes: number[] = [];
  writeVarint(bytes, entries.length);
  entries.forEach(({ id }, i) => writeVarint(bytes, id - (entries[i - 1]?.id ?? 0)));
  for (const { run } of entries) writeVarint(bytes, run);
  for (const { length } of entries) writeVarint(bytes, length);
  entries.forEach(({ offset }, i) => {
    const before = entries[i - 1];
    writeVarint(bytes, before && offset === before.offset + before.length ? 0 : offset + 1);
  });
  return squeeze(Buffer.from(bytes));
}

function writeVarint(bytes: number[], value: number): void {
  let rest = value;
  while (rest >= 0x80) {
    bytes.push((rest % 0x80) | 0x80);
    rest = Math.floor(rest / 0x80);
  }
  bytes.push(rest);
}

function headerBytes(
  { minZoom, maxZoom, bounds }: ArchiveHead,
  size: { root: number; metadata: number; leaves: number; data: number; tiles: number },
): Buffer {
  const header = Buffer.alloc(HEADER);
  header.write("PMTiles", 0, "ascii");
  header.writeUInt8(3, 7);
  const metadataAt = HEADER + size.root;
  const leavesAt = metadataAt + size.metadata;
  const dataAt = leavesAt + size.leaves;
  const numbers = [
    HEADER,
    size.root,
    metadataAt,
    size.metadata,
    leavesAt,
    size.leaves,
    dataAt,
    size.data,
    size.tiles,
    size.tiles,
    size.tiles,
  ];
  numbers.forEach((number, i) => header.writeBigUInt64LE(BigInt(number), 8 + 8 * i));
  [1, GZIP, GZIP, VECTOR, minZoom, maxZoom].forEach((byte, i) => header.writeUInt8(byte, 96 + i));
  const [west, south, east, north] = bounds.map((degrees) => Math.round(degrees * 1e7)) as [
    number,
    number,
    number,
    number,
  ];
  [west, south, east, north].forEach((degrees, i) => header.writeInt32LE(degrees, 102 + 4 * i));
  header.writeUInt8(minZoom, 118);
  header.writeInt32LE(Math.round((west + east) / 2), 119);
  header.writeInt32LE(Math.round((south + north) / 2), 123);
  return header;
}
