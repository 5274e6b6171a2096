/** The part of `atlas.yaml` about what records say of the place and the company an animal was in. */
import { z } from "zod";
import { identifier } from "./setting-kinds.ts";

/** Fields of a record that state surroundings. */
export const SURROUNDING_FIELDS = ["habitat", "flowerVisited", "nestSite", "host"] as const;

export const SurroundingKind = z.strictObject({
  id: identifier,
  label: z.string().describe("as shown, such as Habitat or Flowers visited"),
  field: z.enum(SURROUNDING_FIELDS).describe("the record's field; several terms in a cell are parted by | or ;"),
  relations: z
    .array(z.string())
    .default([])
    .describe("words before the colon in associatedTaxa that mean the same, such as “visits flower of”"),
  terms: z
    .array(
      z.strictObject({
        id: identifier,
        label: z.string().describe("as shown"),
        words: z.array(z.string()).min(1).describe("what recorders write for it, in any case"),
      }),
    )
    .min(1),
});
export type SurroundingKind = z.infer<typeof SurroundingKind>;

export const SurroundingsSettings = z.strictObject({
  minimum_visits: z
    .int()
    .min(1)
    .default(30)
    .describe("visits with the taxon that state such a term, below which nothing is said of its use"),
  minimum_visits_of_term: z
    .int()
    .min(1)
    .default(10)
    .describe("visits of any taxon that state a term, below which nothing is said of that term"),
  kinds: z.array(SurroundingKind).default([]).describe("what is told apart, with the words records use"),
});
export type SurroundingsSettings = z.infer<typeof SurroundingsSettings>;
