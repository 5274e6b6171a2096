/** Contracts of the scheme's small tables: `checklist.csv`, `outside.csv` and `characters.csv`. */
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

/** One row of `outside.csv`: an animal that is taken for the group and is not of it. */
export const OutsideRow = z.object({
  taxonID: z.string().min(1, "give it an id that begins with outside-"),
  scientificName: z.string().min(1, "give the accepted name without author"),
  vernacularNames: namesByLanguage,
  shortName: text,
  kind: z.string().min(1, "say in a word what it is, such as hoverfly"),
  bodyPlan: text.describe("id of the drawn body its characters refer to; empty for none"),
  castes: listOfValues.describe("castes or sexes told apart; empty where they look alike"),
  lead: text.describe("one sentence: what gives it away"),
});
export type OutsideRow = z.infer<typeof OutsideRow>;

/** One row of `characters.csv`: one part of the body in one state, for some castes and one age or form. */
export const CharacterRow = z.object({
  taxonID: z.string().min(1, "name a taxon of the checklist or of outside.csv, or * for every taxon"),
  castes: listOfValues,
  form: text,
  part: z.string().min(1, "name a part of the body plan, or size, coat, face-length …"),
  state: z.string().min(1, "give a colour or mark; “none” where it is absent, “varies” where it does"),
  note: text,
  reliability: z.enum(["settles", "supports", "misleads"], { error: "write settles, supports or misleads" }),
  evidence: text,
});
export type CharacterRow = z.infer<typeof CharacterRow>;

/** One row of `media.csv`: one picture or clip of a taxon. What is empty is told as a finding, so no cell is required here. */
export const MediaRow = z.object({
  file: text.describe("name in the folder media"),
  taxonID: text.describe("of the checklist or of outside.csv"),
  castes: listOfValues.describe("castes it shows; empty where that is not known"),
  form: text.describe("age or colour form; empty for the usual one"),
  kind: text.describe("photograph, drawing or clip"),
  parts: listOfValues.describe("parts of the body it shows, as characters.csv names them"),
  credit: text.describe("its maker, as the maker wishes to be named"),
  licence: text.describe("an SPDX identifier, such as CC-BY-4.0"),
  alt: text.describe("what it shows, for who does not see it"),
  caption: text,
  date: text.describe("ISO 8601, or empty"),
});
export type MediaRow = z.infer<typeof MediaRow>;
