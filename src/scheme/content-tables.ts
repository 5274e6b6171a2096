/** Contracts of the scheme's small tables: `checklist.csv` and `characters.csv`. */
import { z } from "zod";

/** A cell that holds several values, separated by a bar: "queen | worker". */
export const listOfValues = z
  .string()
  .default("")
  .transform((cell) =>
    cell
      .split("|")
      .map((part) => part.trim())
      .filter(Boolean),
  );

/** "en:Red-tailed bumblebee | cy:…" as language and name. */
const namesByLanguage = listOfValues.transform((parts) =>
  parts.map((part) => {
    const [, language, name] = part.match(/^([A-Za-z]{2,3}(?:-[A-Za-z0-9]+)*):\s*(.+)$/) ?? [undefined, "", part];
    return { language: language ?? "", name: name ?? part };
  }),
);

const text = z.string().default("");

/** One row of `checklist.csv`; names are those of Darwin Core's Taxon class where it has them. */
export const ChecklistRow = z.object({
  taxonID: z.string().min(1, "give the taxon an id of your own, never used for another"),
  scientificName: z.string().min(1, "give the accepted name without author"),
  scientificNameAuthorship: text,
  taxonRank: text,
  subgenus: text,
  within: listOfValues.describe("taxonIDs of the aggregates directly above"),
  synonyms: listOfValues,
  vernacularNames: namesByLanguage,
  shortName: text,
  castes: listOfValues.describe("caste ids the taxon can have; empty for all"),
  firstSeen: text.describe("id of one first_seen group of the settings"),
  establishmentMeans: text,
});
export type ChecklistRow = z.infer<typeof ChecklistRow>;

/** One row of `characters.csv`: one part of the body in one state, for some castes and one age or form. */
export const CharacterRow = z.object({
  taxonID: z.string().min(1, "name a taxon of the checklist"),
  castes: listOfValues,
  form: text,
  part: z.string().min(1, "name a part of the body plan, or size, coat, face-length …"),
  state: z.string().min(1, "give a colour or mark; “none” where it is absent, “varies” where it does"),
  note: text,
  reliability: z.enum(["settles", "supports", "misleads"], { error: "write settles, supports or misleads" }),
  evidence: text,
});
export type CharacterRow = z.infer<typeof CharacterRow>;
