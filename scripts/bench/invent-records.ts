import { closeSync, openSync, readFileSync, writeSync } from "node:fs";
import type { Grid, GridId, Square } from "../../src/grids/grid.ts";
import { isRefusal } from "../../src/grids/grid.ts";
import { gridNamed } from "../../src/grids/index.ts";
import { hashed, type Random, randomStream } from "../demonstration/random.ts";

/** Columns of the invented file, Darwin Core as it usually comes. */
const HEADER =
  "occurrenceID,scientificName,eventDate,gridReference,decimalLatitude,decimalLongitude,geodeticDatum," +
  "coordinateUncertaintyInMeters,recordedBy,locality,lifeStage,individualCount,occurrenceRemarks";

/** Records for each place there is; a fifth of the places have half of the visits, and some have none. */
const RECORDS_A_PLACE = 4;
/** Mean number of records of one visit. */
const RECORDS_A_VISIT = 5;
const RECORDERS = 3_000;
const FIRST_YEAR = 1970;
const LAST_YEAR = 2024;
const SUMMER = { from: 91, days: 180 };
const STAGES = ["", "", "", "", "adult", "adult", "larva"];

/** A 2 km square with land, where invented records lie. */
export interface LandTetrad {
  readonly grid: Grid;
  readonly square: Square;
}

/**
 * Writes a file of invented records, as many distinct places, dates and names as a real scheme's would hold. A seed
 * gives the same bytes. Nothing is held in memory but one visit.
 *
 * @param path the CSV to write
 * @param options how many records, the names to draw from, where the land is, and the seed
 * @example inventRecords("records.csv", { records: 1_000_000, names: ["Inventus bacula"], land, seed: 1 })
 */
export function inventRecords(
  path: string,
  {
    records,
    names,
    land,
    seed,
  }: { records: number; names: readonly string[]; land: readonly LandTetrad[]; seed: number },
): void {
  const random = randomStream(seed, "bench records");
  const places = Math.ceil(records / RECORDS_A_PLACE);
  const file = openSync(path, "w");
  let text = `${HEADER}\n`;
  for (let made = 0; made < records; ) {
    const visit = visitText(random, land, places);
    const listed = 1 + Math.floor(random.exponential(RECORDS_A_VISIT - 1));
    for (let i = 0; i < listed && made < records; i += 1) {
      made += 1;
      const name = writtenName(names[Math.floor(random.next() ** 3 * names.length)] ?? "", random);
      const count = random.chance(0.4) ? String(random.whole(1, 20)) : "";
      text += `invented-${made},${name},${visit},${random.pick(STAGES)},${count},\n`;
    }
    if (text.length > 1_000_000) {
      writeSync(file, text);
      text = "";
    }
  }
  writeSync(file, text);
  closeSync(file);
}

/** Date, place, recorder and locality of one visit, as the cells stand in the file. */
function visitText(random: Random, land: readonly LandTetrad[], places: number): string {
  const place = Math.floor(random.next() ** 2.5 * places);
  const recorder = Math.floor(random.next() ** 2 * RECORDERS);
  return `${writtenDate(random)},${placeText(place, land)},invented-recorder-${recorder},invented place ${place % 50_000}`;
}

function writtenDate(random: Random): string {
  const year = LAST_YEAR - Math.floor(random.next() ** 1.6 * (LAST_YEAR - FIRST_YEAR + 1));
  const kind = random.next();
  if (kind < 0.01) return String(year);
  const day = new Date(Date.UTC(year, 0, SUMMER.from + Math.floor(random.next() * SUMMER.days))).toISOString();
  return kind < 0.03 ? day.slice(0, 7) : day.slice(0, 10);
}

/** The four cells of one place, always the same for the same number: four in five a grid reference, else degrees. */
function placeText(place: number, land: readonly LandTetrad[]): string {
  const { grid, square } = land[Math.floor(hashed(place, 1, 1) * land.length)] as LandTetrad;
  const point = {
    crs: square.crs,
    easting: square.easting + Math.floor(hashed(place, 2, 2) * 2_000),
    northing: square.northing + Math.floor(hashed(place, 3, 3) * 2_000),
  };
  const kind = hashed(place, 4, 4);
  if (kind < 0.8) {
    const named = grid.squareAt(point, kind < 0.6 ? 100 : kind < 0.75 ? 1_000 : 2_000);
    return `${named === undefined ? "" : grid.format(named)},,,,`;
  }
  const [longitude, latitude] = grid.unproject(point);
  const uncertainty = kind < 0.85 ? "" : kind < 0.95 ? "10" : "250";
  return `,${latitude.toFixed(5)},${longitude.toFixed(5)},WGS84,${uncertainty}`;
}

function writtenName(name: string, random: Random): string {
  const how = random.next();
  if (how < 0.93) return name;
  if (how < 0.98) return `${name} Inv.`;
  return how < 0.99 ? name.toUpperCase() : `${name.slice(0, -1)}x`;
}

const SYLLABLES = ["ba", "ce", "di", "fo", "gu", "la", "me", "ni", "po", "ru", "sa", "te", "vi", "xo", "zu"];

/**
 * Invented binomials, all different and of one invented genus in thirty.
 *
 * @param number up to 5,000
 * @example inventNames(1) // ["Inventabaus babala"]
 */
export function inventNames(number: number): string[] {
  const syllable = (n: number) => SYLLABLES[n % SYLLABLES.length] ?? "";
  return Array.from({ length: number }, (_, i) => {
    const genus = Math.floor(i / 30);
    const epithet = syllable(i) + syllable(Math.floor(i / 15)) + syllable(Math.floor(i / 225)) + syllable(i * 7 + 5);
    return `Inventa${syllable(genus)}${syllable(Math.floor(genus / 15))}us ${epithet}`;
  });
}

/**
 * The land of the demonstration's list, one entry a 2 km square.
 *
 * @param file `content/land-squares.csv`
 * @example readLand("content/land-squares.csv").length // 64,000 or so
 */
export function readLand(file: string): LandTetrad[] {
  const grids = new Map<string, Grid>();
  return readFileSync(file, "utf8")
    .trim()
    .split("\n")
    .slice(1)
    .flatMap((line) => {
      const [id = "", , hectad = "", letters = ""] = line.split(",");
      const grid = grids.get(id) ?? gridNamed(id as GridId);
      grids.set(id, grid);
      return [...letters].flatMap((letter): LandTetrad[] => {
        const square = grid.parse(hectad + letter);
        return isRefusal(square) ? [] : [{ grid, square }];
      });
    });
}
