/** What each method says of how a taxon changes. */
import { z } from "zod";
import { count, year } from "./number-kinds.ts";

export const TrendMethod = z.enum(["squares_compared", "relative_change", "local_frequency", "reporting_rate"]);
export type TrendMethod = z.infer<typeof TrendMethod>;

/** One method, between two periods, from one part of the evidence; `src/measures/change/trend.ts` says what each means. */
export const TrendRow = z.strictObject({
  method: TrendMethod,
  evidence_set: z.string().describe("main, or what was put in or left out"),
  from_period: z.string(),
  to_period: z.string(),
  n_from: count,
  n_to: count,
  n: count,
  estimate: z.number().nullable(),
  low: z.number().nullable(),
  high: z.number().nullable().describe("95 % interval"),
  judged: z.boolean(),
  reason: z.string().describe("empty, or why the method is not applicable"),
});
export type TrendRow = z.infer<typeof TrendRow>;

/** One point of a series by period or year. */
export const SeriesRow = z.strictObject({
  method: TrendMethod,
  unit: z.enum(["period", "year"]),
  time: z.string().describe("period id or year"),
  n: count,
  estimate: z.number().nullable(),
  low: z.number().nullable(),
  high: z.number().nullable(),
  provisional: z.boolean(),
});
export type SeriesRow = z.infer<typeof SeriesRow>;

/** Squares of 10 km in which a taxon was first recorded in a year, and all up to it: a year without new ones has no row. */
export const SpreadRow = z.strictObject({
  year,
  squares_new: count,
  squares_total: count,
  provisional: z.boolean().describe("records of that year still arrive"),
});
export type SpreadRow = z.infer<typeof SpreadRow>;
