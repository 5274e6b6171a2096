/** How well the squares of 10 km on land were visited. */
import { z } from "zod";
import { count } from "./number-kinds.ts";

/** Squares covered in the compared periods under one rule, of one territory or of all. */
export const CoverageRule = z.strictObject({
  territory: z.string().describe("all for all of them"),
  rule: z.enum(["in force", "stricter"]),
  minimum_visits: count,
  squares: count,
  covered_from: count.nullable().describe("null with one period"),
  covered_to: count,
  covered_both: count.nullable().describe("null with one period"),
});
export type CoverageRule = z.infer<typeof CoverageRule>;

/** Squares by how complete their list is; they add up to `squares`. */
export const CompletenessCounts = z.strictObject({
  period: z.string().describe("identifier of the period; all for all dates"),
  squares: count,
  unsampled: count.describe("no visit that could tell"),
  not_judged: count.describe("fewer visits than asked for"),
  classes: z.array(count).length(4).describe("observed / expected below 0.5, 0.75 and 0.9, and from 0.9"),
  fullest_without_single_records: count.describe("from 0.9 when taxa of a single record are left out"),
});
export type CompletenessCounts = z.infer<typeof CompletenessCounts>;

/** Visits of one period by the length of their list. */
export const ListCounts = z.strictObject({
  period: z.string(),
  visits: count,
  one_species: count,
  two_or_three: count,
  four_or_more: count,
  complete: count,
});
export type ListCounts = z.infer<typeof ListCounts>;

export const CoverageFile = z.strictObject({
  minimum_visits_for_richness: count,
  rules: z.array(CoverageRule),
  completeness: z.array(CompletenessCounts),
  lists: z.array(ListCounts),
});
export type CoverageFile = z.infer<typeof CoverageFile>;
