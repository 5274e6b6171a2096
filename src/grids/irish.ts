import type { Grid, Refusal } from "./grid.ts";
import { letteredGrid } from "./lettered-grid.ts";
import { columnAndRowOf, letterAt } from "./letters.ts";

/** The grid is one block of 25 squares of 100 km, V at the false origin. */
const SIDE = 500_000;

/**
 * The Irish Grid (TM75, EPSG:29903): one letter and figures. WGS84 positions are shifted by the official polynomial
 * EPSG:1041 (0.4 m) inside its area, by seven parameters (1 m) elsewhere.
 *
 * @returns the grid
 * @example irishGrid().parse("O 1534"); // => { grid: "irish", crs: "EPSG:29903", easting: 315000, northing: 234000, size: 1000 }
 */
export function irishGrid(): Grid {
  return letteredGrid({
    id: "irish",
    name: "Irish Grid",
    crs: "EPSG:29903",
    letterCount: 1,
    cornerOf,
    lettersAt,
    refuseBeginning,
  });
}

function cornerOf(letter: string): readonly [number, number] | Refusal {
  const place = columnAndRowOf(letter);
  if (place === undefined) {
    return { refused: "the Irish Grid has no square I", wayOut: "check the letter (J, L or 1) against the source" };
  }
  return [100_000 * place[0], 100_000 * place[1]];
}

function lettersAt(easting: number, northing: number): string | undefined {
  if (!(easting >= 0 && easting < SIDE && northing >= 0 && northing < SIDE)) return undefined;
  return letterAt(easting / 100_000, northing / 100_000);
}

function refuseBeginning(letters: string, text: string): Refusal {
  if (text === "") return { refused: "the reference is empty", wayOut: "give a letter and figures, as in O1534" };
  if (letters === "")
    return {
      refused: `“${text}” has no letter for its 100 km square`,
      wayOut: "begin with one letter, as in O1534; figures alone name a place in every 100 km square",
    };
  return {
    refused: `“${text}” begins with ${letters.length === 2 ? "two" : "several"} letters, and an Irish reference with one`,
    wayOut: "begin with one letter, as in O1534, or read it with the grid its letters belong to",
  };
}
