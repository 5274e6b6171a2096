/** Regions of a scheme, each with its species. */
import { z } from "zod";
import { ExpectedTaxon } from "./expected.ts";
import { count, year } from "./number-kinds.ts";

/** What was recorded in a region; squares and taxa are not additive over regions. */
export const RegionSummary = z.strictObject({
  field: z.string().describe("layer: the record's field that states such regions"),
  region_id: z.string(),
  slug: z.string().describe("its page"),
  name: z.string(),
  code: z.string(),
  territory: z.string().describe("territory id, or empty"),
  records: count,
  records_stated: count.describe("of these, records that state the region"),
  taxa: count.describe("fewest taxa that explain the records"),
  hectads: count,
  tetrads: count,
  first_year: year.nullable(),
  last_year: year.nullable(),
  land_hectads_inside: count.describe("10 km squares with land that touch this region alone"),
  land_hectads_boundary: count.describe("that touch it and another"),
});
export type RegionSummary = z.infer<typeof RegionSummary>;

/** All regions that one field of a record states. */
export const RegionLayer = z.strictObject({
  field: z.string(),
  regions: z.array(RegionSummary),
  not_assigned: z.strictObject({
    records: count,
    boundary: count.describe("records of a square that touches several regions"),
    outside: count.describe("records of a square that touches none"),
    no_square: count.describe("records that fill no square"),
  }),
});
export type RegionLayer = z.infer<typeof RegionLayer>;

export const RegionsFile = z.strictObject({
  land_known: z.boolean().describe("whether the scheme has a list of squares with land"),
  layers: z.array(RegionLayer),
});
export type RegionsFile = z.infer<typeof RegionsFile>;

const Counts = {
  records: count,
  hectads: count,
  tetrads: count,
  first_year: year.nullable(),
  last_year: year.nullable(),
};

export const RegionFile = RegionSummary.extend({
  taxa_list: z.array(z.strictObject({ slug: z.string(), ...Counts })).describe("most records first"),
  expected: z
    .array(ExpectedTaxon.extend({ square: z.string().describe("where it is likeliest"), square_slug: z.string() }))
    .describe("not recorded in the region in the latest period, likeliest first"),
});
export type RegionFile = z.infer<typeof RegionFile>;

/** A taxon in one region; of records that are in none the slug and the name are empty. */
export const RegionRow = z.strictObject({ field: z.string(), slug: z.string(), name: z.string(), ...Counts });
export type RegionRow = z.infer<typeof RegionRow>;
