/** The figures of one taxon: every statistic with its number of records or squares, its interval, and when it is silent. */
import { z } from "zod";
import { RangeRow } from "./ranges.ts";
import { RegionRow } from "./regions.ts";
import { SeasonDatesRow, SeasonShiftRow } from "./seasons.ts";
import { UseRow } from "./surroundings.ts";
import { SeriesRow, SpreadRow, TrendRow } from "./trends.ts";

export const FiguresFile = z.strictObject({
  taxon_id: z.string(),
  slug: z.string(),
  trends: z.array(TrendRow),
  series: z.array(SeriesRow),
  spread: z.array(SpreadRow),
  surroundings: z.array(UseRow),
  seasons: z.array(SeasonDatesRow),
  shifts: z.array(SeasonShiftRow),
  ranges: z.array(RangeRow),
  regions: z.array(RegionRow),
});
export type FiguresFile = z.infer<typeof FiguresFile>;
