/** Animals that are not of the atlas's group, and are taken for it. */
import { z } from "zod";
import { Character } from "./taxon.ts";

/** A look-alike outside the group: characters and names, and no records. */
export const OutsideTaxon = z.strictObject({
  taxon_id: z.string().describe("begins with outside-"),
  slug: z.string().describe("lower-case ASCII, of no taxon of the atlas; an anchor of tell-apart/outside/"),
  scientific_name: z.string(),
  vernacular_name: z.string().describe("in the atlas's language; the scientific name where there is none"),
  short_name: z.string(),
  vernacular_names: z
    .array(z.strictObject({ name: z.string(), language: z.string() }))
    .describe("of every language, in the order of outside.csv"),
  kind: z.string().describe("what it is, in a word: hoverfly, solitary bee"),
  body_plan: z.string().describe("id of the body plan its characters use; empty for none"),
  lead: z.string(),
  castes: z.array(z.string()).describe("castes told apart; empty where they look alike"),
  characters: z.array(Character),
});
export type OutsideTaxon = z.infer<typeof OutsideTaxon>;
