/** Where a taxon was recorded, and on what, against what recorders visited. */
import { z } from "zod";
import { count } from "./number-kinds.ts";

/** One term of a kind of surroundings for one caste; habitats count visits, flowers, nest sites and hosts taxa on visits. */
export const UseRow = z.strictObject({
  caste: z.string().describe("caste id, or all"),
  caste_label: z.string().describe("empty for all"),
  kind: z.string(),
  kind_label: z.string(),
  of_visit: z.boolean(),
  term: z.string(),
  term_label: z.string(),
  n_taxon_term: count,
  n_term: count,
  n_taxon: count,
  n_all: count,
  ratio: z.number().nullable().describe("share of the taxon's over share of all; 1 as often as anywhere"),
  low: z.number().nullable(),
  high: z.number().nullable().describe("95 % interval"),
  judged: z.boolean(),
  reason: z.string(),
});
export type UseRow = z.infer<typeof UseRow>;
