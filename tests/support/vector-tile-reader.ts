/** One feature of a vector tile: its id and rings or lines in tile units. */
export interface TileFeature {
  readonly id: number;
  readonly rings: [x: number, y: number][][];
}

/**
 * Reads layers, feature ids and geometry of a Mapbox Vector Tile, after version 2.1 of its specification
 * (https://github.com/mapbox/vector-tile-spec/tree/master/2.1). Written apart from the code that makes tiles.
 */
export function readTile(bytes: Uint8Array): Map<string, TileFeature[]> {
  const layers = new Map<string, TileFeature[]>();
  for (const { field, value } of fields(bytes)) {
    if (field !== 3 || typeof value === "number") continue;
    const parts = fields(value);
    const name = new TextDecoder().decode(parts.find((part) => part.field === 1)?.value as Uint8Array);
    layers.set(
      name,
      parts.filter((part) => part.field === 2).map((part) => feature(part.value as Uint8Array)),
    );
  }
  return layers;
}

function feature(bytes: Uint8Array): TileFeature {
  const parts = fields(bytes);
  const id = parts.find(({ field }) => field === 1)?.value;
  const geometry = parts.find(({ field }) => field === 4)?.value;
  return {
    id: typeof id === "number" ? id : Number.NaN,
    rings: geometry instanceof Uint8Array ? rings(varints(geometry)) : [],
  };
}

function rings(numbers: readonly number[]): [number, number][][] {
  const all: [number, number][][] = [];
  let [x, y, i] = [0, 0, 0];
  while (i < numbers.length) {
    const command = numbers[i] ?? 0;
    i += 1;
    const [kind, count] = [command & 7, command >> 3];
    if (kind === 7) continue;
    for (let n = 0; n < count; n += 1) {
      x += zigzag(numbers[i] ?? 0);
      y += zigzag(numbers[i + 1] ?? 0);
      i += 2;
      if (kind === 1) all.push([]);
      all.at(-1)?.push([x, y]);
    }
  }
  return all;
}

const zigzag = (number: number) => (number >>> 1) ^ -(number & 1);

function varints(bytes: Uint8Array): number[] {
  const numbers: number[] = [];
  let at = 0;
  while (at < bytes.length) {
    const [value, next] = varint(bytes, at);
    numbers.push(value);
    at = next;
  }
  return numbers;
}

function varint(bytes: Uint8Array, from: number): [value: number, next: number] {
  let [value, scale, at] = [0, 1, from];
  for (;;) {
    const byte = bytes[at] ?? 0;
    at += 1;
    value += (byte & 127) * scale;
    if (byte < 128) return [value, at];
    scale *= 128;
  }
}

function fields(bytes: Uint8Array): { field: number; value: number | Uint8Array }[] {
  const found: { field: number; value: number | Uint8Array }[] = [];
  let at = 0;
  while (at < bytes.length) {
    const [key, next] = varint(bytes, at);
    const [value, after] = varint(bytes, next);
    if ((key & 7) === 2) {
      found.push({ field: key >> 3, value: bytes.subarray(after, after + value) });
      at = after + value;
    } else {
      found.push({ field: key >> 3, value });
      at = after;
    }
  }
  return found;
}
