import type { Grid } from "./grid.ts";
export function mgrsGrid(): Grid {
  throw new Error("not built");
}
