import { z } from "zod";
import { readContent } from "./read-content.ts";
import type { Settings } from "./settings.ts";
import { parseTable } from "./table-file.ts";

const LandRow = z.object({
  grid: z.string(),
  territory: z.string(),
  hectad: z.string(),
  tetrads: z.string().default("").describe("letters of the tetrads with land"),
});

/** The scheme's reviewed list of squares with land: hectads in file order, with the letters of their land tetrads. */
export type LandSquares = z.infer<typeof LandRow>[];

/**
 * Reads the list of land squares the settings name; null where the scheme has none, and then
 * nothing is said about squares that were never visited.
 */
export function readLandSquares(folder: string, settings: Settings): LandSquares | null {
  if (settings.land_squares === undefined) return null;
  return parseTable(readContent(folder, settings.land_squares), settings.land_squares, LandRow);
}
