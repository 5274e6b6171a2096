/** Settings of the checks on species: what is unexpected, which evidence is asked for, and shares of scarce taxa. */
import { z } from "zod";

const taxonIDs = z.array(z.string()).default([]);

/** When a record is unexpected here and now. */
export const UnexpectedSettings = z.strictObject({
  rings_km: z
    .array(z.number().positive())
    .min(2)
    .default([15, 30, 60])
    .describe(
      "outer edges of the rings around a 10 km square whose visits are counted, ascending; 15 km holds a square and the eight around it",
    ),
  years: z
    .int()
    .min(1)
    .max(50)
    .default(5)
    .describe(
      "length of the blocks of years that are compared, each with the one before and after; newcomers move some tens of kilometres in five",
    ),
  one_visit_in: z
    .number()
    .min(2)
    .default(250)
    .describe(
      "asked where fewer visits than one in this many are expected to report the taxon: if one record in 200 carries a wrong name, that is about as seldom as a name is wrong",
    ),
  expected_reports: z
    .number()
    .positive()
    .default(3)
    .describe(
      "says nothing of a place where the visits around would bring fewer reports than this if the taxon were spread evenly: with 3, none comes about by chance once in twenty (e⁻³ = 0.05)",
    ),
  prior_visits: z
    .number()
    .positive()
    .default(15)
    .describe(
      "visits that what is known of the wider ring is worth: with fewer of its own a place is judged by its surroundings more than by itself",
    ),
  independent_recorders: z
    .int()
    .min(2)
    .default(3)
    .describe(
      "a place is expected once this many other people reported the taxon in the innermost ring and those years; one confirmed record counts as so many",
    ),
  first_after_visits: z
    .int()
    .min(1)
    .default(200)
    .describe("a first for a territory is asked about where others had made so many visits by then"),
  season_percent: z
    .number()
    .min(0)
    .max(10)
    .default(1)
    .describe("share of records, in percent, that may lie before the first and after the last day of the season"),
  season_days: z
    .int()
    .min(0)
    .default(14)
    .describe("asked from so many days outside the season: weather shifts it by about a fortnight"),
  season_minimum: z
    .int()
    .min(10)
    .default(30)
    .describe("says nothing of the season of a taxon with fewer dated records"),
  all_year: taxonIDs.describe(
    "taxonIDs that are active in any mild week: a date outside their season is a note, not a question",
  ),
  no_season_words: z
    .array(z.string())
    .default(["dead", "nest"])
    .describe("a record with one of these words in its remarks or stage says nothing of season"),
});

/** Which evidence records need. */
export const EvidenceSettings = z.strictObject({
  confirmed_words: z
    .array(z.string())
    .default([])
    .describe("values of identificationVerificationStatus that mean a person confirmed it; never assumed"),
  needed: z
    .array(
      z.strictObject({
        taxa: z.array(z.string()).min(1).describe("taxonIDs"),
        castes: z.array(z.string()).default([]).describe("castes it is asked for; empty for all, unstated too"),
        territories: z.array(z.string()).default([]).describe("territories it is asked in; empty for all"),
        least: z.enum(["sight", "photograph", "specimen"]).describe("least evidence"),
      }),
    )
    .default([])
    .describe("records that are asked for evidence wherever and whenever they are; the first that fits counts"),
});

/** When somebody's share of a taxon is far from their neighbours'. */
export const ShareSettings = z.strictObject({
  minimum_records: z.int().min(3).default(10).describe("records of the taxon a set must hold"),
  within_km: z.number().positive().default(30).describe("how far away others count as neighbours"),
  minimum_others: z.int().min(1).default(50).describe("records of others around, in the same years, to compare with"),
  scarce_below: z
    .number()
    .min(0)
    .max(1)
    .default(0.05)
    .describe("only taxa with less than this share of all records: a common one varies with habitat"),
  times: z
    .number()
    .min(1)
    .default(4)
    .describe("asked when the share is this many times what the neighbours' lets expect"),
  false_share: z
    .number()
    .min(0)
    .max(0.5)
    .default(0.01)
    .describe("share of the sets asked about that chance alone may bring (Benjamini and Hochberg 1995)"),
});
