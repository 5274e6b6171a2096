import type { GridShift } from "../geodesy/grid-shift.ts";
import { transform } from "../geodesy/transform.ts";
import { readFigures, tidyReference, writeFigures } from "./figures.ts";
import type { Grid, GridId, ProjectedPoint, Refusal, Square, SquareSize } from "./grid.ts";
import { isRefusal } from "./grid.ts";

const WGS84 = "EPSG:4326";
/** The one size in metres that letters alone name. */
const LETTERED = 100_000;
const SIZES: ReadonlySet<SquareSize> = new Set([100_000, 10_000, 5_000, 2_000, 1_000, 100, 10, 1]);

/** What sets one national grid of lettered 100 km squares apart from another. */
export interface LetteredGridRules {
  readonly id: GridId;
  readonly name: string;
  readonly crs: string;
  /** Letters that name a 100 km square. */
  readonly letterCount: number;
  /** South-west corner in metres of a 100 km square, or why its letters name none. */
  readonly cornerOf: (letters: string) => readonly [easting: number, northing: number] | Refusal;
  /** Letters of the 100 km square with this south-west corner; undefined off the grid. */
  readonly lettersAt: (easting: number, northing: number) => string | undefined;
  /** Why a text that does not begin with this grid's letters is refused. */
  readonly refuseBeginning: (letters: string, text: string) => Refusal;
  readonly gridShift?: GridShift | undefined;
}

/**
 * Builds a grid whose references are letters for a 100 km square followed by figures, a tetrad letter or a quarter.
 *
 * @param rules what is particular to the grid
 * @returns the grid
 * @example letteredGrid(rules).parse("TQ 3877"); // => { grid: "british", crs: "EPSG:27700", easting: 538000, northing: 177000, size: 1000 }
 */
export function letteredGrid(rules: LetteredGridRules): Grid {
  const { id, name, crs, gridShift } = rules;
  return Object.freeze({
    id,
    name,
    parse: (text: string) => parseLettered(rules, text),
    format: (square: Square) => formatLettered(rules, square),
    project: (longitude: number, latitude: number) => {
      const [easting, northing] = transform(WGS84, crs, longitude, latitude, gridShift);
      return { crs, easting, northing };
    },
    unproject: (point: ProjectedPoint) => {
      refuseOtherSystem(rules, point);
      return transform(crs, WGS84, point.easting, point.northing, gridShift);
    },
    squareAt: (point: ProjectedPoint, size: SquareSize) => {
      refuseOtherSystem(rules, point);
      if (
        !SIZES.has(size) ||
        rules.lettersAt(floorTo(point.easting, LETTERED), floorTo(point.northing, LETTERED)) === undefined
      )
        return undefined;
      return { grid: id, crs, easting: floorTo(point.easting, size), northing: floorTo(point.northing, size), size };
    },
  });
}

function floorTo(value: number, size: number): number {
  return Math.floor(value / size) * size;
}

function refuseOtherSystem({ name, crs }: LetteredGridRules, point: ProjectedPoint): void {
  if (point.crs !== crs)
    throw new Error(`${point.easting} ${point.northing} is in ${point.crs}; the ${name} is in ${crs}`);
}

function parseLettered(rules: LetteredGridRules, text: string): Square | Refusal {
  const tidy = tidyReference(text);
  const answer = readTidy(rules, tidy);
  if (!isRefusal(answer)) return answer;
  const meant = likelyMeant(rules, tidy);
  if (meant === undefined) return answer;
  return {
    refused: answer.refused,
    wayOut: `if a letter stands for a figure, write ${meant}; otherwise ${answer.wayOut}`,
  };
}

function readTidy(rules: LetteredGridRules, tidy: string): Square | Refusal {
  const letters = /^[A-Z]*/.exec(tidy)?.[0] ?? "";
  const own = ownLetters(rules, letters);
  if (own === undefined) return rules.refuseBeginning(letters, tidy);
  const corner = rules.cornerOf(own);
  if ("refused" in corner) return corner;
  const figures = readFigures(tidy.slice(own.length));
  if ("refused" in figures) return figures;
  const { id, crs } = rules;
  return { grid: id, crs, easting: corner[0] + figures.east, northing: corner[1] + figures.north, size: figures.size };
}

/** The letters of the 100 km square; letters O and I straight after them are left to the figures, where they are refused. */
function ownLetters({ letterCount }: LetteredGridRules, letters: string): string | undefined {
  if (letters.length < letterCount || !/^[OI]*$/.test(letters.slice(letterCount))) return undefined;
  return letters.slice(0, letterCount);
}

/** The reference with O read as 0 and I as 1 among the figures, when that would be one: a question for a person, never applied. */
function likelyMeant(rules: LetteredGridRules, tidy: string): string | undefined {
  const figures = tidy.slice(rules.letterCount);
  if (!/\d/.test(figures)) return undefined;
  const candidate = tidy.slice(0, rules.letterCount) + figures.replaceAll("O", "0").replaceAll("I", "1");
  return candidate !== tidy && !isRefusal(readTidy(rules, candidate)) ? candidate : undefined;
}

function formatLettered(rules: LetteredGridRules, square: Square): string {
  refuseOtherSystem(rules, square);
  const east = floorTo(square.easting, LETTERED);
  const north = floorTo(square.northing, LETTERED);
  const letters = rules.lettersAt(east, north);
  if (letters === undefined) throw new RangeError(`${square.easting} ${square.northing} lies off the ${rules.name}`);
  return letters + writeFigures(square.easting - east, square.northing - north, square.size);
}
