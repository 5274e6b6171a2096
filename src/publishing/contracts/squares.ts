/** Hectads: in lists, and each in its own file. */
import { z } from "zod";
import { ExpectedTaxon } from "./expected.ts";
import { count, year } from "./number-kinds.ts";
import { SquareState } from "./taxon.ts";

/** One hectad with its visits; `on_land` is true for all squares of the scheme's list of land squares. */
export const HectadSummary = z.strictObject({
  square: z.string(),
  slug: z.string(),
  grid: z.string(),
  territory: z.string(),
  crs: z.string(),
  easting: z.int(),
  northing: z.int(),
  latitude: z.number(),
  longitude: z.number(),
  on_land: z.boolean(),
  visits: z.array(count).describe("one number a period"),
  taxa: z.array(count).describe("fewest taxa that explain the records, one number a period"),
  taxa_all: count,
  records: count,
});
export type HectadSummary = z.infer<typeof HectadSummary>;

export const SquaresFile = z.strictObject({ squares: z.array(HectadSummary) });
export type SquaresFile = z.infer<typeof SquaresFile>;

export const SquareFile = HectadSummary.extend({
  taxa_list: z.array(
    z.strictObject({
      slug: z.string(),
      state: SquareState,
      records: count,
      first_year: year.nullable(),
      last_year: year.nullable(),
    }),
  ),
  tetrads: z.array(
    z.strictObject({ square: z.string(), letter: z.string(), visits: count, taxa: count, records: count }),
  ),
  years: z.array(z.strictObject({ year, records: count, visits: count })),
  land_tetrads: z
    .string()
    .nullable()
    .describe("letters of the tetrads with land; null where the scheme has no list of them"),
  regions: z.array(z.string()).describe("slugs of the regions it touches"),
  expected: z.array(ExpectedTaxon).describe("likeliest first"),
  wanted_rank: count.nullable().describe("among the squares that want a visit; null where nothing is expected"),
  wanted_gain: count.describe("thousandths of a taxon that some further visits could add"),
  wanted_third: z.int().min(0).max(35).nullable().describe("third of a month in which one would add most"),
});
export type SquareFile = z.infer<typeof SquareFile>;
