/** What is expected in a square or region and not yet found, and squares that want a visit. */
import { z } from "zod";
import { count, year } from "./number-kinds.ts";

const third = z.int().min(0).max(35);

/** A taxon expected and not found in the latest period: where to look, no prediction that it is there. */
export const ExpectedTaxon = z.strictObject({
  slug: z.string(),
  chance: count.max(1000).describe("of 1,000"),
  squares_near: count.describe("covered squares around"),
  squares_with: count.describe("of these, with a record in the latest period"),
  visits_here: count.describe("everyday visits of the latest period that did not find it"),
  last_year: year.nullable().describe("latest record in the square, before the latest period"),
  months: z
    .tuple([third, third])
    .nullable()
    .describe("thirds of the month between which eight in ten of its records lie; null under 30"),
});
export type ExpectedTaxon = z.infer<typeof ExpectedTaxon>;

/** A square with what a few further visits could add. */
export const WantedSquare = z.strictObject({
  square: z.string(),
  slug: z.string(),
  territory: z.string(),
  regions: z.array(z.string()).describe("slugs of the regions it touches"),
  visits: count.describe("everyday visits in the latest period"),
  gain: count.describe("thousandths of a taxon"),
  best_third: third.nullable(),
  rank: count,
  likely: z.array(z.string()).describe("slugs of the taxa that make most of the gain, at most three"),
});
export type WantedSquare = z.infer<typeof WantedSquare>;

export const WantedFile = z.strictObject({
  further_visits: count.describe("visits that the gain is told for"),
  reach_km: count.describe("how far the squares around reach"),
  least_covered: count.describe("covered squares around that are needed"),
  squares: z.array(WantedSquare).describe("by rank"),
});
export type WantedFile = z.infer<typeof WantedFile>;
