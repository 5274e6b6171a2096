/** The contract of `languages/<tag>.yaml`: the words of `atlas.yaml` and `outside.csv` in another language of the site. */
import { z } from "zod";

const words = z.string().default("");
const byId = z.record(z.string(), z.string()).default({});

/** Every word may be left out: it is then shown in the atlas's first language, and marked so. */
export const TranslationWords = z.strictObject({
  title: words.describe("name of the atlas, where it has one in this language"),
  heading: words.describe("what it is of"),
  summary: words.describe("one or two sentences under the heading"),
  invented_notice: words.describe("what is real and what is invented, without the two words before it"),
  citation: words.describe("how to cite the atlas"),
  sending: words.describe("what is said where records are sent"),
  group: z
    .strictObject({ one: z.string(), many: z.string() })
    .optional()
    .describe("what one and many of the animals are called in a sentence"),
  castes: z
    .record(z.string(), z.strictObject({ label: z.string(), many: z.string().describe("several of them") }))
    .default({})
    .describe("by id"),
  first_seen: z
    .record(z.string(), z.strictObject({ title: z.string(), look_at: words }))
    .default({})
    .describe("by id"),
  surroundings: z
    .record(z.string(), z.strictObject({ label: z.string(), terms: byId.describe("by id") }))
    .default({})
    .describe("by the id of the kind"),
  territories: byId.describe("names by id"),
  regions: byId.describe("names of regions that are called otherwise in this language, by id"),
  outside: z
    .record(z.string(), z.strictObject({ kind: words, lead: words }))
    .default({})
    .describe("what outside.csv says of an animal, by taxonID"),
});
export type TranslationWords = z.infer<typeof TranslationWords>;
