import type { Grid, Refusal } from "./grid.ts";
import { letteredGrid } from "./lettered-grid.ts";

/** Datum a Channel Islands reference is read on; sources seldom say, and the two lie 238 m apart. */
export type ChannelIslandsDatum = "ED50" | "WGS84";

const SYSTEMS: Readonly<Record<ChannelIslandsDatum, string>> = Object.freeze({
  ED50: "EPSG:23030",
  WGS84: "EPSG:32630",
});

/**
 * South-west corners in metres in UTM zone 30N: the two 100 km squares of MGRS that hold the islands, written without
 * their "30U".
 */
const CORNERS: ReadonlyMap<string, readonly [easting: number, northing: number]> = new Map([
  ["WV", [500_000, 5_400_000] as const],
  ["WA", [500_000, 5_500_000] as const],
]);

/**
 * The Channel Islands grid: WV or WA and figures, in UTM zone 30N on the datum chosen.
 *
 * @param datum "ED50" (default; shifted to WGS84 by EPSG:1138, 6 m) or "WGS84"
 * @returns the grid
 * @example channelIslandsGrid().parse("WV6548"); // => { grid: "channel-islands", crs: "EPSG:23030", easting: 565000, northing: 5448000, size: 1000 }
 */
export function channelIslandsGrid(datum: ChannelIslandsDatum = "ED50"): Grid {
  return letteredGrid({
    id: "channel-islands",
    name: "Channel Islands grid",
    crs: SYSTEMS[datum],
    letterCount: 2,
    cornerOf,
    lettersAt,
    refuseBeginning,
  });
}

function cornerOf(letters: string): readonly [number, number] | Refusal {
  return (
    CORNERS.get(letters) ?? {
      refused: `${letters} is not a square of the Channel Islands`,
      wayOut: "begin with WV or WA, or read it with the grid its letters belong to",
    }
  );
}

function lettersAt(easting: number, northing: number): string | undefined {
  if (easting !== 500_000) return undefined;
  if (northing === 5_400_000) return "WV";
  return northing === 5_500_000 ? "WA" : undefined;
}

function refuseBeginning(_letters: string, text: string): Refusal {
  if (text === "") return { refused: "the reference is empty", wayOut: "give WV or WA and figures, as in WV6548" };
  return {
    refused: `“${text}” does not begin with WV or WA`,
    wayOut: "write the letters first, as in WV6548, or read it with the grid its letters belong to",
  };
}
