import type { GridShift } from "../geodesy/grid-shift.ts";
import { britishGrid } from "./british.ts";
import type { ChannelIslandsDatum } from "./channel-islands.ts";
import { channelIslandsGrid } from "./channel-islands.ts";
import type { Grid, GridId } from "./grid.ts";
import { irishGrid } from "./irish.ts";
import { laeaGrid } from "./laea.ts";
import { mgrsGrid } from "./mgrs.ts";

/** What a scheme may settle about its grids. */
export interface GridOptions {
  /** Datum of Channel Islands references; "ED50" unless set. */
  readonly channelIslandsDatum?: ChannelIslandsDatum | undefined;
  /** National grid-shift file for the British grid. */
  readonly britishGridShift?: GridShift | undefined;
}

const MAKERS: Readonly<Record<GridId, (options: GridOptions) => Grid>> = Object.freeze({
  british: ({ britishGridShift }: GridOptions) => britishGrid(britishGridShift),
  irish: () => irishGrid(),
  "channel-islands": ({ channelIslandsDatum }: GridOptions) => channelIslandsGrid(channelIslandsDatum),
  laea: () => laeaGrid(),
  mgrs: () => mgrsGrid(),
});

/** Every grid's id, in the order settings list them. */
export const GRID_IDS: readonly GridId[] = Object.freeze(Object.keys(MAKERS) as GridId[]);

/**
 * The grid of an id. This table is where a new grid system is added.
 *
 * @param id one of GRID_IDS
 * @param options datum and grid-shift settings; left out, the defaults
 * @returns the grid
 * @throws {Error} for any other id
 * @example gridNamed("irish").name; // => "Irish Grid"
 */
export function gridNamed(id: GridId, options: GridOptions = {}): Grid {
  const make = Object.hasOwn(MAKERS, id) ? MAKERS[id] : undefined;
  if (make === undefined) throw new Error(`unknown grid “${id}”; use one of ${GRID_IDS.join(", ")}`);
  return make(options);
}
