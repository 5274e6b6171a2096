import type { GridShift } from "../geodesy/grid-shift.ts";
import type { Grid, Refusal } from "./grid.ts";
import { letteredGrid } from "./lettered-grid.ts";
import { columnAndRowOf, letterAt } from "./letters.ts";

/** The grid's own extent in metres, from its false origin at the south-west corner of SV. */
const WIDTH = 700_000;
const HEIGHT = 1_300_000;
/** Columns and rows of 500 km squares between the corner of the letter block and the false origin (S is third column, second row). */
const ORIGIN_COLUMN = 2;
const ORIGIN_ROW = 1;
const CHANNEL_ISLANDS = new Set(["WA", "WV"]);

/**
 * The British National Grid (EPSG:27700): two letters and figures. Source of the lettering: Ordnance Survey,
 * "The National Grid". WGS84 positions are shifted by seven parameters (worst 5 m), or by a grid-shift file.
 *
 * @param gridShift the national grid-shift file's content, if the scheme supplies one
 * @returns the grid
 * @example britishGrid().parse("TQ 3877"); // => { grid: "british", crs: "EPSG:27700", easting: 538000, northing: 177000, size: 1000 }
 */
export function britishGrid(gridShift?: GridShift): Grid {
  return letteredGrid({
    id: "british",
    name: "British National Grid",
    crs: "EPSG:27700",
    letterCount: 2,
    cornerOf,
    lettersAt,
    refuseBeginning,
    gridShift,
  });
}

function cornerOf(letters: string): readonly [number, number] | Refusal {
  const big = columnAndRowOf(letters[0] ?? "");
  const small = columnAndRowOf(letters[1] ?? "");
  if (CHANNEL_ISLANDS.has(letters)) {
    return { refused: `${letters} is a Channel Islands letter pair`, wayOut: "read it with the Channel Islands grid" };
  }
  if (big === undefined || small === undefined) {
    return {
      refused: `${letters} holds the letter I, which the grid does not use`,
      wayOut: "check the letters (J, L or 1) against the source",
    };
  }
  const easting = 500_000 * (big[0] - ORIGIN_COLUMN) + 100_000 * small[0];
  const northing = 500_000 * (big[1] - ORIGIN_ROW) + 100_000 * small[1];
  if (lettersAt(easting, northing) === undefined) {
    return {
      refused: `${letters} lies off the British National Grid`,
      wayOut: "check the letters: the grid runs from SV in the south-west to 700 km east and 1,300 km north",
    };
  }
  return [easting, northing];
}

function lettersAt(easting: number, northing: number): string | undefined {
  if (!(easting >= 0 && easting < WIDTH && northing >= 0 && northing < HEIGHT)) return undefined;
  const big = letterAt(Math.floor(easting / 500_000) + ORIGIN_COLUMN, Math.floor(northing / 500_000) + ORIGIN_ROW);
  const small = letterAt(Math.floor((easting % 500_000) / 100_000), Math.floor((northing % 500_000) / 100_000));
  return big === undefined || small === undefined ? undefined : big + small;
}

function refuseBeginning(letters: string, text: string): Refusal {
  if (text === "") return { refused: "the reference is empty", wayOut: "give two letters and figures, as in TQ3877" };
  if (letters === "")
    return {
      refused: `“${text}” has no letters for its 100 km square`,
      wayOut: "begin with two letters, as in TQ3877; figures alone name a place in every 100 km square",
    };
  if (letters.length === 1)
    return {
      refused: `“${text}” begins with one letter, as an Irish reference does`,
      wayOut: "begin with two letters, as in TQ3877, or read it with the Irish grid",
    };
  return { refused: `“${text}” begins with more than two letters`, wayOut: "begin with two letters, as in TQ3877" };
}
