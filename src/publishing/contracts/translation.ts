/** What a scheme says in one further language: `languages/<tag>.json`, laid over the other files by the pages of it. */
import { z } from "zod";
import { PageFile } from "./atlas.ts";
import { AccountSection } from "./taxon.ts";

const byId = z.record(z.string(), z.string());

/** The words of an account. Each may be empty, and is then that of the first language. */
export const AccountInLanguage = z.strictObject({
  lead: z.string(),
  evidence: z.string(),
  size_notes: z.array(z.string()).describe("one for each size of the taxon, in its order"),
  differences: z.array(z.string()).describe("one for each look-alike of the taxon, in its order"),
  sections: z
    .array(AccountSection)
    .describe("with the ids of the first language; none where only the facts are translated"),
});
export type AccountInLanguage = z.infer<typeof AccountInLanguage>;

/** Words are empty, and ids missing, where the scheme has them in its first language alone. */
export const TranslationFile = z.strictObject({
  language: z.string().describe("BCP 47 tag"),
  title: z.string(),
  heading: z.string(),
  summary: z.string(),
  invented_notice: z.string(),
  citation: z.string(),
  sending: z.string(),
  group: z.strictObject({ one: z.string(), many: z.string() }).nullable(),
  castes: z.record(z.string(), z.strictObject({ label: z.string(), many: z.string() })),
  first_seen: z.record(z.string(), z.strictObject({ title: z.string(), look_at: z.string() })),
  surroundings: z.record(z.string(), z.strictObject({ label: z.string(), terms: byId })),
  territories: byId,
  regions: byId.describe("names by id"),
  outside: z.record(z.string(), z.strictObject({ kind: z.string(), lead: z.string() })).describe("by taxon_id"),
  accounts: z.record(z.string(), AccountInLanguage).describe("by slug"),
  pages: z.record(z.string(), PageFile.omit({ slug: true, in_footer: true })).describe("by slug"),
});
export type TranslationFile = z.infer<typeof TranslationFile>;
