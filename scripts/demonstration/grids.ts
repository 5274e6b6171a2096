import type { Grid, GridId } from "../../src/grids/grid.ts";
import { gridNamed } from "../../src/grids/index.ts";

const made = new Map<GridId, Grid>();

/**
 * A grid system with its settings left as they are, made once.
 *
 * @example gridOf("irish").name // "Irish Grid"
 */
export function gridOf(id: GridId): Grid {
  const grid = made.get(id) ?? gridNamed(id);
  made.set(id, grid);
  return grid;
}
