/** One table of a made-up NTv2 file; degrees, longitude counted positive to the west as the format has it. */
export interface MadeTable {
  readonly name: string;
  readonly parent: string;
  readonly south: number;
  readonly north: number;
  /** Eastern limit, west positive: the smaller number. */
  readonly east: number;
  readonly west: number;
  readonly step: number;
  /** Shift in arc-seconds at a node: [northwards, westwards]. */
  readonly shift: (north: number, west: number) => [northwards: number, westwards: number];
}

/**
 * Writes an NTv2 grid-shift file.
 *
 * @param tables parents before their children
 * @param littleEndian byte order
 * @returns the file's bytes
 */
export function makeNtv2(tables: readonly MadeTable[], littleEndian = true): Uint8Array {
  const rows = (table: MadeTable) => Math.round((table.north - table.south) / table.step) + 1;
  const columns = (table: MadeTable) => Math.round((table.west - table.east) / table.step) + 1;
  const bytes = new Uint8Array(176 + tables.reduce((sum, table) => sum + 176 + 16 * rows(table) * columns(table), 0));
  const view = new DataView(bytes.buffer);
  let at = 0;
  const label = (text: string) => {
    for (let index = 0; index < 8; index += 1) bytes[at + index] = (text[index] ?? " ").charCodeAt(0);
    at += 8;
  };
  const integer = (key: string, value: number) => {
    label(key);
    view.setInt32(at, value, littleEndian);
    at += 8;
  };
  const real = (key: string, value: number) => {
    label(key);
    view.setFloat64(at, value, littleEndian);
    at += 8;
  };
  const text = (key: string, value: string) => {
    label(key);
    label(value);
  };
  integer("NUM_OREC", 11);
  integer("NUM_SREC", 11);
  integer("NUM_FILE", tables.length);
  text("GS_TYPE", "SECONDS");
  text("VERSION", "made-up");
  text("SYSTEM_F", "OSGB36");
  text("SYSTEM_T", "ETRS89");
  real("MAJOR_F", 6377563.396);
  real("MINOR_F", 6356256.909);
  real("MAJOR_T", 6378137);
  real("MINOR_T", 6356752.314);
  for (const table of tables) {
    text("SUB_NAME", table.name);
    text("PARENT", table.parent);
    text("CREATED", "");
    text("UPDATED", "");
    real("S_LAT", table.south * 3600);
    real("N_LAT", table.north * 3600);
    real("E_LONG", table.east * 3600);
    real("W_LONG", table.west * 3600);
    real("LAT_INC", table.step * 3600);
    real("LONG_INC", table.step * 3600);
    integer("GS_COUNT", rows(table) * columns(table));
    for (let row = 0; row < rows(table); row += 1) {
      for (let column = 0; column < columns(table); column += 1) {
        const [northwards, westwards] = table.shift(table.south + row * table.step, table.east + column * table.step);
        view.setFloat32(at, northwards, littleEndian);
        view.setFloat32(at + 4, westwards, littleEndian);
        at += 16;
      }
    }
  }
  return bytes;
}

/** A coarse table over eastern England with a finer one inside it; shifts bend, so that interpolation is put to use. */
export const MADE_TABLES: readonly MadeTable[] = [
  {
    name: "COARSE",
    parent: "NONE",
    south: 51,
    north: 54,
    east: -2,
    west: 2,
    step: 0.5,
    shift: (north, west) => [1.5 + 0.1 * (north - 52) ** 2, 6 - 0.4 * west + 0.05 * west * north],
  },
  {
    name: "FINE",
    parent: "COARSE",
    south: 52.5,
    north: 53,
    east: -2,
    west: -1,
    step: 0.125,
    shift: (north, west) => [1.6 + 0.3 * Math.sin(5 * north), 7 - 0.2 * west],
  },
];
