/**
 * Zones, bands and letters of the Military Grid Reference System. Source: NGA.STND.0037, "Universal Grids and the
 * Transverse Mercator and Polar Stereographic Map Projections", sections on UTM zones and MGRS; checked against
 * GeoConvert and against an independent implementation.
 */
const BANDS = "CDEFGHJKLMNPQRSTUVWX";
const BAND_HEIGHT = 8;
/** UTM bands run from 80° S to 84° N; the last, X, is 12° high. The caps beyond have another projection. */
export const SOUTHERNMOST = -80;
export const NORTHERNMOST = 84;

/** Zones whose longitudes differ from the six-degree rule, by band: [zone, west, east] in degrees. A zone left out does not exist there. */
const IRREGULAR: Readonly<Record<string, readonly (readonly [zone: number, west: number, east: number])[]>> =
  Object.freeze({
    V: [
      [31, 0, 3],
      [32, 3, 12],
    ],
    X: [
      [31, 0, 9],
      [33, 9, 21],
      [35, 21, 33],
      [37, 33, 42],
    ],
  });
const IRREGULAR_ZONES: Readonly<Record<string, readonly [first: number, last: number]>> = Object.freeze({
  V: [31, 32],
  X: [31, 37],
});

/** Column letters of the 100 km squares from easting 100 km, by the zone's place in its set of three. */
const COLUMNS = ["ABCDEFGH", "JKLMNPQR", "STUVWXYZ"] as const;
/** Row letters repeat every 2,000 km; even zones begin five letters on. */
const ROWS = "ABCDEFGHJKLMNPQRSTUV";
const EVEN_ZONE_START = 5;

/**
 * The band letter of a latitude.
 *
 * @param latitude degrees, −80 to 84; beyond, the nearest band
 * @returns one letter, C to X without I and O
 * @example bandAt(51.5); // => "U"
 */
export function bandAt(latitude: number): string {
  const index = Math.floor((latitude - SOUTHERNMOST) / BAND_HEIGHT);
  return BANDS[Math.min(Math.max(index, 0), BANDS.length - 1)] as string;
}

/**
 * South and north limits of a band in degrees.
 *
 * @param band one letter
 * @returns [south, north]; undefined for a letter that is no band
 * @example bandLimits("X"); // => [72, 84]
 */
export function bandLimits(band: string): [south: number, north: number] | undefined {
  const index = band.length === 1 ? BANDS.indexOf(band) : -1;
  if (index < 0) return undefined;
  const south = SOUTHERNMOST + BAND_HEIGHT * index;
  return [south, band === "X" ? NORTHERNMOST : south + BAND_HEIGHT];
}

/**
 * West and east limits of a zone in a band, with the exceptions for western Norway (V) and Svalbard (X).
 *
 * @param zone 1 to 60
 * @param band one letter
 * @returns [west, east] in degrees; undefined where the zone does not exist
 * @example zoneLimits(32, "V"); // => [3, 12]
 */
export function zoneLimits(zone: number, band: string): [west: number, east: number] | undefined {
  const [first, last] = IRREGULAR_ZONES[band] ?? [0, 0];
  if (zone < first || zone > last) return [6 * zone - 186, 6 * zone - 180];
  const row = IRREGULAR[band]?.find(([irregular]) => irregular === zone);
  return row === undefined ? undefined : [row[1], row[2]];
}

/**
 * The UTM zone of a position, with the exceptions for western Norway and Svalbard.
 *
 * @param longitude degrees, −180 to 180 (180 counts to zone 60)
 * @param latitude degrees
 * @returns 1 to 60
 * @example zoneAt(5.3221, 60.3913); // => 32
 */
export function zoneAt(longitude: number, latitude: number): number {
  const irregular = IRREGULAR[bandAt(latitude)]?.find(([, west, east]) => longitude >= west && longitude < east);
  return irregular?.[0] ?? Math.min(Math.floor((longitude + 180) / 6) + 1, 60);
}

/**
 * The two letters of a 100 km square.
 *
 * @param zone 1 to 60
 * @param easting its south-west corner in metres, 100,000 to 800,000
 * @param northing its south-west corner in metres
 * @returns for example "YC"; undefined outside the eight columns
 * @example squareLetters(30, 700_000, 5_700_000); // => "YC"
 */
export function squareLetters(zone: number, easting: number, northing: number): string | undefined {
  const column = COLUMNS[(zone - 1) % 3]?.[easting / 100_000 - 1];
  const row = ROWS[(northing / 100_000 + rowStart(zone)) % ROWS.length];
  return column === undefined || row === undefined ? undefined : column + row;
}

/**
 * Easting of a column letter and northing of a row letter, the northing up to multiples of 2,000 km.
 *
 * @param zone 1 to 60
 * @param letters column and row letter
 * @returns [easting, northing] in metres, northing 0 to 1,900,000; undefined for letters the zone does not have
 * @example squareOffset(30, "YC"); // => [700000, 1700000]
 */
export function squareOffset(zone: number, letters: string): [easting: number, northing: number] | undefined {
  const column = (COLUMNS[(zone - 1) % 3] as string).indexOf(letters[0] ?? "?");
  const row = ROWS.indexOf(letters[1] ?? "?");
  if (column < 0 || row < 0) return undefined;
  return [100_000 * (column + 1), 100_000 * ((row - rowStart(zone) + ROWS.length) % ROWS.length)];
}

function rowStart(zone: number): number {
  return zone % 2 === 0 ? EVEN_ZONE_START : 0;
}
