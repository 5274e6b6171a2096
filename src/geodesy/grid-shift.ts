import { Mistake } from "../mistake.ts";

/**
 * A national grid-shift file in NTv2 form (`.gsb`), read once: a table of latitude and longitude shifts from a
 * datum to WGS84 or ETRS89. Immutable; handed to `transform` by whoever holds it.
 */
export interface GridShift {
  /** Shown name, for example the file's. */
  readonly name: string;
  /** Code of the geographic system it shifts from, for example "EPSG:4277". */
  readonly datum: string;
  /** Accuracy in metres that its publisher states. */
  readonly accuracy: number;
  /** Coarse to fine. */
  readonly tables: readonly ShiftTable[];
}

/** One table: rows from south to north, each from east to west; arc-seconds, longitude counted positive to the west. */
interface ShiftTable {
  readonly south: number;
  readonly north: number;
  readonly east: number;
  readonly west: number;
  readonly latitudeStep: number;
  readonly longitudeStep: number;
  readonly columns: number;
  readonly rows: number;
  readonly latitudeShifts: Float64Array;
  readonly longitudeShifts: Float64Array;
}

/** Layout of NTv2: header records are 16 bytes, an 8-byte label and an 8-byte value. */
const RECORD = 16;
const HEADER_RECORDS = 11;
const NODE_BYTES = 16;
const SECONDS_IN: Readonly<Record<string, number>> = Object.freeze({ SECONDS: 1, MINUTES: 60, DEGREES: 3600 });
/** 1e-8 arc-seconds are less than a micrometre. */
const CLOSE_ENOUGH = 1e-8;
const MOST_STEPS = 20;

/**
 * Reads an NTv2 file.
 *
 * @param bytes the whole file, either byte order
 * @param about shown name; code of the geographic system the file shifts from; the accuracy stated for it in metres
 * @returns the tables, coarse to fine
 * @throws {Mistake} when the bytes are not NTv2 or end too early
 * @example readGridShift(bytes, { name: "national.gsb", datum: "EPSG:4277", accuracy: 0.1 }).tables.length; // => 1
 */
export function readGridShift(bytes: Uint8Array, about: { name: string; datum: string; accuracy: number }): GridShift {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const littleEndian = byteOrderOf(view, about.name);
  const count = view.getInt32(2 * RECORD + 8, littleEndian);
  const unit = SECONDS_IN[textAt(view, 3 * RECORD + 8)];
  if (unit === undefined) throw notNtv2(about.name, `shifts in “${textAt(view, 3 * RECORD + 8)}”`);
  const tables: ShiftTable[] = [];
  let offset = HEADER_RECORDS * RECORD;
  for (let index = 0; index < count; index += 1) {
    if (offset + HEADER_RECORDS * RECORD > view.byteLength)
      throw notNtv2(about.name, `no room for table ${index + 1} of ${count}`);
    const table = readTable(view, offset, littleEndian, unit, about.name);
    tables.push(table);
    offset += HEADER_RECORDS * RECORD + table.columns * table.rows * NODE_BYTES;
  }
  tables.sort((a, b) => b.latitudeStep - a.latitudeStep);
  return Object.freeze({ ...about, tables });
}

function byteOrderOf(view: DataView, name: string): boolean {
  if (view.byteLength >= HEADER_RECORDS * RECORD) {
    if (view.getInt32(8, true) === HEADER_RECORDS) return true;
    if (view.getInt32(8, false) === HEADER_RECORDS) return false;
  }
  throw notNtv2(name, "no header of eleven records");
}

function notNtv2(name: string, found: string): Mistake {
  return new Mistake(
    name,
    `is not a grid-shift file in NTv2 form (${found})`,
    "give the .gsb file as its publisher supplies it",
  );
}

function textAt(view: DataView, offset: number): string {
  return String.fromCharCode(...new Uint8Array(view.buffer, view.byteOffset + offset, 8)).replace(/[\0\s]+$/, "");
}

function readTable(view: DataView, start: number, littleEndian: boolean, unit: number, name: string): ShiftTable {
  const limit = (record: number) => view.getFloat64(start + record * RECORD + 8, littleEndian) * unit;
  const [south, north, east, west, latitudeStep, longitudeStep] = [
    limit(4),
    limit(5),
    limit(6),
    limit(7),
    limit(8),
    limit(9),
  ];
  const columns = Math.round((west - east) / longitudeStep) + 1;
  const rows = Math.round((north - south) / latitudeStep) + 1;
  const nodes = view.getInt32(start + 10 * RECORD + 8, littleEndian);
  if (nodes !== columns * rows || columns < 2 || rows < 2)
    throw notNtv2(name, `${nodes} nodes in ${columns} × ${rows}`);
  const first = start + HEADER_RECORDS * RECORD;
  if (first + nodes * NODE_BYTES > view.byteLength)
    throw notNtv2(name, `${nodes} nodes announced, the file ends before`);
  const latitudeShifts = new Float64Array(nodes);
  const longitudeShifts = new Float64Array(nodes);
  for (let node = 0; node < nodes; node += 1) {
    latitudeShifts[node] = view.getFloat32(first + node * NODE_BYTES, littleEndian) * unit;
    longitudeShifts[node] = view.getFloat32(first + node * NODE_BYTES + 4, littleEndian) * unit;
  }
  return { south, north, east, west, latitudeStep, longitudeStep, columns, rows, latitudeShifts, longitudeShifts };
}

/** Bilinear shift at a position in arc-seconds (west positive) from the finest table that holds it: [westwards, northwards]. */
function shiftAt(gridShift: GridShift, west: number, north: number): [number, number] | undefined {
  for (let index = gridShift.tables.length - 1; index >= 0; index -= 1) {
    const table = gridShift.tables[index] as ShiftTable;
    if (west < table.east || west > table.west || north < table.south || north > table.north) continue;
    const across = (west - table.east) / table.longitudeStep;
    const up = (north - table.south) / table.latitudeStep;
    const column = Math.min(Math.floor(across), table.columns - 2);
    const row = Math.min(Math.floor(up), table.rows - 2);
    const node = row * table.columns + column;
    const { columns } = table;
    return [
      between(table.longitudeShifts, node, columns, across - column, up - row),
      between(table.latitudeShifts, node, columns, across - column, up - row),
    ];
  }
  return undefined;
}

function between(shifts: Float64Array, node: number, columns: number, across: number, up: number): number {
  const at = (index: number) => shifts[index] as number;
  const below = at(node) * (1 - across) + at(node + 1) * across;
  const above = at(node + columns) * (1 - across) + at(node + columns + 1) * across;
  return below * (1 - up) + above * up;
}

/**
 * The file's datum to WGS84.
 *
 * @param longitude degrees on the file's datum
 * @param latitude degrees on the file's datum
 * @returns [longitude, latitude] in WGS84 degrees, or undefined outside the file's cover
 * @example gridShiftToWgs84(file, 30, 80); // => undefined, when the file is for Britain
 */
export function gridShiftToWgs84(
  gridShift: GridShift,
  longitude: number,
  latitude: number,
): [number, number] | undefined {
  const shift = shiftAt(gridShift, -longitude * 3600, latitude * 3600);
  return shift === undefined ? undefined : [longitude - shift[0] / 3600, latitude + shift[1] / 3600];
}

/**
 * WGS84 to the file's datum: the inverse of `gridShiftToWgs84` by iteration, exact to a micrometre.
 *
 * @param longitude WGS84 degrees
 * @param latitude WGS84 degrees
 * @returns [longitude, latitude] on the file's datum, or undefined outside the file's cover
 * @example gridShiftFromWgs84(file, 30, 80); // => undefined, when the file is for Britain
 */
export function gridShiftFromWgs84(
  gridShift: GridShift,
  longitude: number,
  latitude: number,
): [number, number] | undefined {
  const targetWest = -longitude * 3600;
  const targetNorth = latitude * 3600;
  let west = targetWest;
  let north = targetNorth;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const shift = shiftAt(gridShift, west, north);
    if (shift === undefined) return undefined;
    const nextWest = targetWest - shift[0];
    const nextNorth = targetNorth - shift[1];
    const settled = Math.abs(nextWest - west) < CLOSE_ENOUGH && Math.abs(nextNorth - north) < CLOSE_ENOUGH;
    west = nextWest;
    north = nextNorth;
    if (settled) return [-west / 3600, north / 3600];
  }
  return undefined;
}
