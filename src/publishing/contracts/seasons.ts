/** Dates of a taxon's season, and how it moved. */
import { z } from "zod";
import { count, year } from "./number-kinds.ts";

const day = z.number().nullable().describe("day of the year, 1 to 365, above in the next year; null where not given");

/** Dates of the season of one caste, in one territory and period, from one basis. */
export const SeasonDatesRow = z.strictObject({
  caste: z.string().describe("caste id, not_stated, or all for every caste together"),
  caste_label: z.string(),
  territory: z.string().describe("territory id, or all"),
  period: z.string().describe("period id, or all for every date"),
  basis: z.enum(["records", "visits", "even_visits"]),
  n: count.describe("records or visits it rests on"),
  vague: count.describe("records left out because their date is not one day"),
  of_no_season: count.describe("specimens, literature and finds of nests, left out"),
  day_10: day,
  day_25: day,
  day_50: day,
  day_75: day,
  day_90: day,
  median_low: day,
  median_high: day.describe("95 % interval of day_50"),
  judged: z.boolean(),
  reason: z.string(),
});
export type SeasonDatesRow = z.infer<typeof SeasonDatesRow>;

/** How many days a decade the season of one caste moved, by one method. */
export const SeasonShiftRow = z.strictObject({
  caste: z.string().describe("caste id, or all for castes together"),
  caste_label: z.string(),
  method: z.enum(["yearly_medians", "regression"]),
  share: z.number().describe("share of the visits whose date is followed; 0.5 for the median"),
  adjusted: z.boolean().describe("whether latitude, territory, caste and the season of recording are allowed for"),
  first_year: year.nullable(),
  last_year: year.nullable(),
  years: count,
  n: count.describe("visits"),
  shift: z.number().nullable().describe("days a decade, below 0 for earlier"),
  low: z.number().nullable(),
  high: z.number().nullable().describe("95 % interval"),
  judged: z.boolean(),
  reason: z.string(),
});
export type SeasonShiftRow = z.infer<typeof SeasonShiftRow>;
