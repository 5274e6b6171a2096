import { transform } from "../geodesy/transform.ts";
import { readFigures, tidyReference, writeFigures } from "./figures.ts";
import type { Grid, ProjectedPoint, Refusal, Square, SquareSize } from "./grid.ts";
import type { Lie, UtmSquare } from "./mgrs-block.ts";
import { lieOf } from "./mgrs-block.ts";
import { bandLimits, NORTHERNMOST, SOUTHERNMOST, squareLetters, squareOffset, zoneAt } from "./mgrs-lettering.ts";

const WGS84 = "EPSG:4326";
const BLOCK = 100_000;
/** Northings of one pair of letters repeat at this distance, in metres. */
const REPEAT = 2_000_000;
/** Northings in metres that hold 80° S to the equator and the equator to 84° N; beyond, unprojecting crosses the pole. */
const SOUTHERN = Object.freeze({ from: 1_100_000, to: 10_000_000 });
const NORTHERN = Object.freeze({ from: 0, to: 9_400_000 });
const SIZES: ReadonlySet<number> = new Set([100_000, 10_000, 5_000, 2_000, 1_000, 100, 10, 1]);
const UTM_CODE = /^EPSG:32([67])(\d\d)$/;

/**
 * The Military Grid Reference System on UTM zones (WGS84), with tetrad letters and 5 km quarters as on the national
 * grids (common practice, outside the standard). A square cut by a zone's edge is still named by its zone, and is not a
 * full square on the ground. A square that a band's edge crosses has two names; both are read, and the band of its
 * southern part is written, so that one square has one name.
 *
 * @returns the grid; each square's `crs` is its UTM zone
 * @example mgrsGrid().parse("30U YC 08 07"); // => { grid: "mgrs", crs: "EPSG:32630", easting: 708000, northing: 5707000, size: 1000 }
 */
export function mgrsGrid(): Grid {
  return Object.freeze({
    id: "mgrs",
    name: "Military Grid Reference System (UTM)",
    parse,
    format,
    project,
    unproject: (point: ProjectedPoint) => {
      zoneOf(point);
      return transform(point.crs, WGS84, point.easting, point.northing);
    },
    squareAt,
  } satisfies Grid);
}

function utmCode(zone: number, northern: boolean): string {
  return `EPSG:32${northern ? 6 : 7}${String(zone).padStart(2, "0")}`;
}

function zoneOf(point: ProjectedPoint): number {
  const parts = UTM_CODE.exec(point.crs);
  if (parts === null)
    throw new Error(`${point.easting} ${point.northing} is in ${point.crs}; this grid is in UTM zones on WGS84`);
  return Number(parts[2]);
}

function rowsOf(crs: string): { readonly from: number; readonly to: number } {
  return crs.startsWith("EPSG:326") ? NORTHERN : SOUTHERN;
}

function project(longitude: number, latitude: number): ProjectedPoint {
  if (!(latitude >= SOUTHERNMOST && latitude <= NORTHERNMOST)) {
    throw new Error(`latitude ${latitude} is outside the UTM zones, ${SOUTHERNMOST}° to ${NORTHERNMOST}°`);
  }
  const crs = utmCode(zoneAt(longitude, latitude), latitude >= 0);
  const [easting, northing] = transform(WGS84, crs, longitude, latitude);
  // Closer to the equator than a double can tell, the northing is that of the equator, which is in the other hemisphere.
  return { crs, easting, northing: Math.min(northing, latitude < 0 ? SOUTHERN.to - 0.001 : NORTHERN.to) };
}

/** The lie of each 100 km square met, since most finer squares share it. */
const blocks = new Map<string, Lie>();

function lieOfSquare(square: UtmSquare): Lie {
  const easting = Math.floor(square.easting / BLOCK) * BLOCK;
  const northing = Math.floor(square.northing / BLOCK) * BLOCK;
  const key = `${square.crs} ${easting} ${northing}`;
  let lie = blocks.get(key);
  if (lie === undefined) {
    lie = lieOf({ ...square, easting, northing, size: BLOCK });
    blocks.set(key, lie);
  }
  const settled = lie.bands.length === 0 || (lie.bands.length === 1 && lie.whole);
  return settled || square.size === BLOCK ? lie : lieOf(square);
}

function squareAt(point: ProjectedPoint, size: SquareSize): Square | undefined {
  const zone = zoneOf(point);
  const easting = Math.floor(point.easting / size) * size;
  const northing = Math.floor(point.northing / size) * size;
  const rows = rowsOf(point.crs);
  const onLetters = easting >= BLOCK && easting < 9 * BLOCK && northing >= rows.from && northing < rows.to;
  if (!SIZES.has(size) || !onLetters) return undefined;
  const square: Square = { grid: "mgrs", crs: point.crs, easting, northing, size };
  return lieOfSquare({ ...square, zone }).bands.length === 0 ? undefined : square;
}

function format(square: Square): string {
  const zone = zoneOf(square);
  const east = Math.floor(square.easting / BLOCK) * BLOCK;
  const north = Math.floor(square.northing / BLOCK) * BLOCK;
  const letters = squareLetters(zone, east, north);
  const band = lieOfSquare({ ...square, zone }).bands[0];
  if (letters === undefined || band === undefined) {
    throw new RangeError(`${square.easting} ${square.northing} lies outside UTM zone ${zone} (${square.crs})`);
  }
  return `${zone}${band}${letters}${writeFigures(square.easting - east, square.northing - north, square.size)}`;
}

function parse(text: string): Square | Refusal {
  const tidy = tidyReference(text);
  const parts = /^(\d{1,2})([A-Z])([A-Z]{2})(.*)$/.exec(tidy);
  if (parts === null) {
    return refusal(
      `“${text.trim()}” does not begin with a zone, a band and two letters`,
      "write them first, as in 30UYC0807",
    );
  }
  const [, zoneText = "", band = "", letters = "", rest = ""] = parts;
  const zone = Number(zoneText);
  const beginning = zoneText + band + letters;
  const corner = cornerOf(zone, band, letters);
  if ("refused" in corner) return corner;
  const figures = readFigures(rest);
  if ("refused" in figures) return suggestFigures(figures, beginning, rest);
  const [easting, northing] = [corner.easting + figures.east, corner.northing + figures.north];
  const square: Square = { grid: "mgrs", crs: corner.crs, easting, northing, size: figures.size };
  if (lieOfSquare({ ...square, zone }).bands.length > 0) return square;
  return refusal(`${tidy} lies outside zone ${zone}`, "write it in the zone it lies in, or check the zone's number");
}

function refusal(refused: string, wayOut: string): Refusal {
  return { refused, wayOut };
}

/** Adds what may have been meant where O stands for 0 or I for 1: a question for a person, never applied. */
function suggestFigures(answer: Refusal, beginning: string, rest: string): Refusal {
  const candidate = rest.replaceAll("O", "0").replaceAll("I", "1");
  if (candidate === rest || "refused" in readFigures(candidate)) return answer;
  return refusal(
    answer.refused,
    `if a letter stands for a figure, write ${beginning}${candidate}; otherwise ${answer.wayOut}`,
  );
}

function cornerOf(zone: number, band: string, letters: string): ProjectedPoint | Refusal {
  const limits = bandLimits(band);
  if (zone < 1 || zone > 60) return refusal(`${zone} is no UTM zone`, "use a zone from 1 to 60");
  if (limits === undefined)
    return refusal(`${band} is no band of the UTM zones`, "use C to X without I and O; the polar caps are not read");
  const offset = squareOffset(zone, letters);
  if (offset === undefined)
    return refusal(`zone ${zone} has no square ${letters}`, "check the letters against the zone");
  const crs = utmCode(zone, limits[0] >= 0);
  const rows = rowsOf(crs);
  for (let northing = offset[1]; northing < rows.to; northing += REPEAT) {
    if (northing < rows.from) continue;
    const { bands } = lieOfSquare({ zone, crs, easting: offset[0], northing, size: BLOCK });
    if (bands.includes(band)) return { crs, easting: offset[0], northing };
  }
  return refusal(`zone ${zone}${band} has no square ${letters}`, "check the band and the letters against the zone");
}
