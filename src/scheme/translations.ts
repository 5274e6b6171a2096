/** What a scheme has in further languages: `languages/<tag>.yaml`, `species/<name>.<tag>.md` and `pages/<name>.<tag>.md`. */
import { existsSync, readdirSync } from "node:fs";
import { basename, join } from "node:path";
import { z } from "zod";
import { Mistake } from "../mistake.ts";
import { type Account, PageFrontMatter, parseTextFile, type SchemePage, type TextFile } from "./account.ts";
import { unknownTaxon } from "./checklist-file.ts";
import { contentPath } from "./content-path.ts";
import { readContent } from "./read-content.ts";
import type { Settings } from "./settings.ts";
import { TranslationWords } from "./translation-words.ts";
import { readYaml } from "./yaml-file.ts";

const difference = { difference: z.string().default("") };

/** The words of an account; its facts stand in the first language's file alone. */
export const AccountTranslation = z.strictObject({
  taxonID: z.string().describe("id of the taxon in checklist.csv"),
  lead: z.string().default("").describe("one sentence under the name"),
  evidence: z.string().default("").describe("what a record needs, in words"),
  sizes: z.array(z.strictObject({ caste: z.string(), note: z.string() })).default([]),
  look_alikes: z
    .array(
      z.union([
        z.strictObject({ taxonID: z.string(), ...difference }),
        z.strictObject({ outside: z.string(), ...difference }),
      ]),
    )
    .default([])
    .describe("each named as in the first language's account"),
});

/** A scheme's texts in one further language. */
export interface Translation {
  language: string;
  words: TranslationWords;
  accounts: TextFile<z.infer<typeof AccountTranslation>>[];
  pages: SchemePage[];
}

/** What translations are held against. */
export interface Translated {
  settings: Settings;
  accounts: ReadonlyMap<string, Account>;
  pages: readonly Pick<SchemePage, "slug">[];
  known: ReadonlySet<string>;
  outside: readonly { taxonID: string }[];
  regions: readonly { id: string }[];
}

/**
 * The language in a file's name, before its ending.
 *
 * @returns undefined for a file of the first language
 * @example languageOfFile("species/terrestris.fr.md") // => "fr"
 */
export function languageOfFile(file: string): string | undefined {
  return /\.([a-z]{2,3}(?:-[A-Za-z0-9]+)*)\.md$/.exec(basename(file))?.[1];
}

/**
 * Reads what a scheme has in each of its further languages, in the order of the settings.
 *
 * @throws {Mistake} on a file of a language the settings do not name, on an id that nothing has, and on an account
 *   whose sections are not those of the first language
 */
export function readTranslations(folder: string, scheme: Translated): Translation[] {
  const further = scheme.settings.languages.filter((tag) => tag !== scheme.settings.language);
  const files = ["species", "pages"].flatMap((part) => textFiles(folder, part));
  refuseStrays(folder, [...files, ...wordFiles(folder)], further);
  return further.map((language) => ({
    language,
    words: readWords(folder, `languages/${language}.yaml`, scheme),
    accounts: files
      .filter((file) => file.startsWith("species/") && languageOfFile(file) === language)
      .map((file) => readAccount(folder, file, scheme)),
    pages: files
      .filter((file) => file.startsWith("pages/") && languageOfFile(file) === language)
      .map((file) => readPage(folder, file, scheme)),
  }));
}

function textFiles(folder: string, part: string): string[] {
  if (!existsSync(join(folder, part))) return [];
  const names = readdirSync(join(folder, part)).sort();
  return names.map((name) => `${part}/${name}`).filter((file) => languageOfFile(file) !== undefined);
}

function wordFiles(folder: string): string[] {
  if (!existsSync(join(folder, "languages"))) return [];
  return readdirSync(join(folder, "languages"))
    .filter((name) => name.endsWith(".yaml"))
    .sort()
    .map((name) => `languages/${name}`);
}

function refuseStrays(folder: string, files: readonly string[], further: readonly string[]): void {
  for (const file of files) {
    const tag = languageOfFile(file) ?? basename(file, ".yaml");
    if (contentPath(folder, file) !== undefined && !further.includes(tag))
      throw new Mistake(
        `“${tag}”`,
        "is no further language of atlas.yaml",
        "add it to languages, or take the file away",
        {
          file,
        },
      );
  }
}

function readWords(folder: string, file: string, { settings, outside, regions }: Translated): TranslationWords {
  if (contentPath(folder, file) === undefined) return TranslationWords.parse({});
  const { value, at } = readYaml(readContent(folder, file), file, TranslationWords);
  const kinds = settings.surroundings.kinds;
  const ids: [path: string[], own: Readonly<Record<string, unknown>>, known: readonly string[]][] = [
    [["castes"], value.castes, settings.castes.map(({ id }) => id)],
    [["first_seen"], value.first_seen, settings.first_seen.map(({ id }) => id)],
    [["territories"], value.territories, settings.territories.map(({ id }) => id)],
    [["surroundings"], value.surroundings, kinds.map(({ id }) => id)],
    [["outside"], value.outside, outside.map(({ taxonID }) => taxonID)],
    [["regions"], value.regions, regions.map(({ id }) => id)],
    ...Object.entries(value.surroundings).map(([kind, { terms }]): (typeof ids)[number] => [
      ["surroundings", kind, "terms"],
      terms,
      kinds.find(({ id }) => id === kind)?.terms.map(({ id }) => id) ?? [],
    ]),
  ];
  for (const [path, own, all] of ids) {
    const stray = Object.keys(own).find((id) => !all.includes(id));
    if (stray !== undefined)
      throw new Mistake(
        `${path.join(".")}.${stray}`,
        "is no id of the scheme",
        all.length === 0 ? "take it away" : `write one of ${all.join(", ")}`,
        at([...path, stray]),
      );
  }
  return value;
}

function readAccount(folder: string, file: string, { accounts, known }: Translated): Translation["accounts"][number] {
  const account = parseTextFile<z.infer<typeof AccountTranslation>>(
    readContent(folder, file),
    file,
    AccountTranslation,
  );
  if (!known.has(account.front.taxonID)) throw unknownTaxon(account.front.taxonID, { file });
  const first = accounts.get(account.front.taxonID);
  if (first === undefined || account.sections.length === first.sections.length || account.sections.length === 0)
    return account;
  throw new Mistake(
    "the account",
    `has ${account.sections.length} sections, and ${first.file} has ${first.sections.length}`,
    `give it the same sections in the same order: ${first.sections.map(({ title }) => title || "text before the first heading").join(", ")}`,
    { file },
  );
}

function readPage(folder: string, file: string, { pages }: Translated): SchemePage {
  const slug = basename(file).split(".")[0] ?? "";
  if (!pages.some((page) => page.slug === slug))
    throw new Mistake(`“${file}”`, "translates no page", `add pages/${slug}.md in the first language`, { file });
  return { ...parseTextFile<z.infer<typeof PageFrontMatter>>(readContent(folder, file), file, PageFrontMatter), slug };
}
