/** How far a taxon reaches. */
import { z } from "zod";
import { count } from "./number-kinds.ts";

/** Range of a taxon in one period and territory, from established records: minimum figures, and no assessment. */
export const RangeRow = z.strictObject({
  territory: z.string().describe("territory id, or all"),
  period: z.string().describe("period id, or all for every date"),
  grids: z.array(z.string()).describe("grid systems of its squares"),
  records: count,
  records_not_shown: count.describe("shown at 10 km or coarser on purpose"),
  records_left_out: count.describe("not established"),
  tetrads: count,
  hectads: count,
  hectads_without_tetrad: count.describe("10 km squares in which no record reaches 2 km"),
  occupancy_km2: z.number().nonnegative().nullable().describe("4 km² a 2 km square"),
  occupancy_reason: z.string().describe("empty, or why it is not given"),
  occupancy_below_km2: count.nullable().describe("smallest threshold of criterion B2 it is strictly below"),
  extent_km2: z.number().nonnegative().nullable().describe("smallest convex polygon"),
  extent_reason: z.string(),
  extent_raised: z.boolean().describe("set equal to the area of occupancy, which was larger"),
  extent_below_km2: count.nullable().describe("smallest threshold of criterion B1 it is strictly below"),
});
export type RangeRow = z.infer<typeof RangeRow>;
