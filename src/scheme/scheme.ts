import { existsSync, readdirSync } from "node:fs";
import { basename, join } from "node:path";
import type { z } from "zod";
import { Mistake } from "../mistake.ts";
import { buildChecklist, type Checklist } from "../names/checklist.ts";
import { type Account, AccountFrontMatter, PageFrontMatter, parseTextFile, type SchemePage } from "./account.ts";
import { CharacterRow, ChecklistRow } from "./content-tables.ts";
import { type LandSquares, readLandSquares } from "./land-squares.ts";
import { readContent } from "./read-content.ts";
import { Settings } from "./settings.ts";
import { checkSettings } from "./settings-agree.ts";
import { parseTable } from "./table-file.ts";
import { readTerritories, type TerritoryArea } from "./territory-areas.ts";
import { parseYaml } from "./yaml-file.ts";

/** A scheme's folder, read and checked: everything but the records. */
export interface Scheme {
  folder: string;
  settings: Settings;
  taxa: ChecklistRow[];
  checklist: Checklist;
  characters: CharacterRow[];
  accounts: Map<string, Account>;
  pages: SchemePage[];
  territories: TerritoryArea[];
  landSquares: LandSquares | null;
}

/**
 * Reads a scheme's folder: settings, checklist, characters, accounts, pages, territories and land squares.
 *
 * @param folder the folder that holds `atlas.yaml`
 * @throws {Mistake} on the first thing that is wrong, with file and place
 */
export function readScheme(folder: string): Scheme {
  if (!existsSync(join(folder, "atlas.yaml")))
    throw new Mistake(
      "atlas.yaml",
      `is not in ${folder}`,
      "name the scheme's folder with --content, or make one with atlaswright new FOLDER",
    );
  const settings = parseYaml(readContent(folder, "atlas.yaml"), "atlas.yaml", Settings);
  checkSettings(settings);
  const taxa = parseTable(readContent(folder, "checklist.csv"), "checklist.csv", ChecklistRow);
  return {
    folder,
    settings,
    taxa,
    checklist: checklistOf(taxa, settings),
    characters: charactersOf(folder, taxa),
    accounts: accountsOf(folder, taxa),
    pages: pagesOf(folder),
    territories: readTerritories(folder, settings),
    landSquares: readLandSquares(folder, settings),
  };
}

function checklistOf(taxa: (ChecklistRow & { row: number })[], settings: Settings): Checklist {
  const castes = new Set(settings.castes.map((caste) => caste.id));
  const groups = new Set(settings.first_seen.map((group) => group.id));
  for (const taxon of taxa) {
    const where = { file: "checklist.csv", row: taxon.row };
    const stray = taxon.castes.find((caste) => !castes.has(caste));
    if (stray !== undefined)
      throw new Mistake(`“${stray}”`, "is no caste of atlas.yaml", `write one of ${[...castes].join(", ")}`, {
        ...where,
        field: "castes",
      });
    if (taxon.firstSeen !== "" && !groups.has(taxon.firstSeen))
      throw new Mistake(
        `“${taxon.firstSeen}”`,
        "is no first_seen group of atlas.yaml",
        `write one of ${[...groups].join(", ")}`,
        { ...where, field: "firstSeen" },
      );
  }
  const checklist = buildChecklist(
    taxa.map((taxon) => ({
      taxonId: taxon.taxonID,
      scientificName: taxon.scientificName,
      authorship: taxon.scientificNameAuthorship,
      rank: taxon.taxonRank,
      synonyms: taxon.synonyms,
      vernacular: namesByLanguage(taxon),
      within: taxon.within,
      castes: taxon.castes,
    })),
  );
  const [problem] = checklist.problems;
  if (problem !== undefined) {
    const row = taxa.find((taxon) => taxon.taxonID === problem.taxonIds.at(-1))?.row;
    throw new Mistake("the checklist", `does not agree with itself: ${problem.found}`, problem.wayOut, {
      file: "checklist.csv",
      ...(row === undefined ? {} : { row }),
    });
  }
  return checklist;
}

/** All names of each language, for a taxon may have several in one. */
function namesByLanguage({ vernacularNames }: ChecklistRow): Record<string, string[]> {
  const names: Record<string, string[]> = {};
  for (const { language, name } of vernacularNames) names[language] = [...(names[language] ?? []), name];
  return names;
}

function charactersOf(folder: string, taxa: ChecklistRow[]): CharacterRow[] {
  if (!existsSync(join(folder, "characters.csv"))) return [];
  const known = new Set(taxa.map((taxon) => taxon.taxonID));
  const rows = parseTable(readContent(folder, "characters.csv"), "characters.csv", CharacterRow);
  for (const { taxonID, row } of rows)
    if (!known.has(taxonID)) throw unknownTaxon(taxonID, { file: "characters.csv", row, field: "taxonID" });
  return rows;
}

function accountsOf(folder: string, taxa: ChecklistRow[]): Map<string, Account> {
  const known = new Set(taxa.map((taxon) => taxon.taxonID));
  const accounts = new Map<string, Account>();
  for (const file of markdownFiles(folder, "species")) {
    const account = parseTextFile<z.infer<typeof AccountFrontMatter>>(
      readContent(folder, file),
      file,
      AccountFrontMatter,
    );
    const ids = [account.front.taxonID, ...account.front.look_alikes.flatMap((look) => look.taxonID ?? [])];
    const stray = ids.find((id) => !known.has(id));
    if (stray !== undefined) throw unknownTaxon(stray, { file });
    const other = accounts.get(account.front.taxonID);
    if (other !== undefined)
      throw new Mistake(account.front.taxonID, `has an account in ${other.file} already`, "join the two", { file });
    accounts.set(account.front.taxonID, account);
  }
  return accounts;
}

function pagesOf(folder: string): SchemePage[] {
  return markdownFiles(folder, "pages").map((file) => {
    const slug = basename(file, ".md");
    if (!/^[a-z0-9-]+$/.test(slug))
      throw new Mistake(`“${slug}.md”`, "cannot be part of an address", "use lower-case letters, figures and -", {
        file,
      });
    return {
      ...parseTextFile<z.infer<typeof PageFrontMatter>>(readContent(folder, file), file, PageFrontMatter),
      slug,
    };
  });
}

function markdownFiles(folder: string, part: string): string[] {
  if (!existsSync(join(folder, part))) return [];
  return readdirSync(join(folder, part))
    .filter((name) => name.endsWith(".md"))
    .sort()
    .map((name) => `${part}/${name}`);
}

function unknownTaxon(id: string, where: { file: string; row?: number; field?: string }): Mistake {
  return new Mistake(
    `taxonID “${id}”`,
    "is not in checklist.csv",
    "correct it, or add the taxon to the checklist",
    where,
  );
}
