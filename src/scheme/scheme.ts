import { existsSync, readdirSync } from "node:fs";
import { basename, join } from "node:path";
import type { z } from "zod";
import { Mistake } from "../mistake.ts";
import type { Checklist } from "../names/checklist.ts";
import { type Account, AccountFrontMatter, PageFrontMatter, parseTextFile, type SchemePage } from "./account.ts";
import { readCharacters } from "./characters-file.ts";
import { readChecklist, unknownTaxon } from "./checklist-file.ts";
import type { ContentFinding } from "./content-findings/finding.ts";
import { contentPath } from "./content-path.ts";
import type { CharacterRow, ChecklistRow, MediaRow, OutsideRow } from "./content-tables.ts";
import { readDecisions } from "./decisions-file.ts";
import { decisionsInForce, type RecordDecision } from "./decisions-in-force.ts";
import { type LandSquares, readLandSquares } from "./land-squares.ts";
import { readMedia } from "./media-file.ts";
import { outsideNamed, readOutside } from "./outside-file.ts";
import { readContent } from "./read-content.ts";
import { type Region, readRegions } from "./regions-file.ts";
import { readSensitive, type SensitiveRow } from "./sensitive-list.ts";
import { Settings } from "./settings.ts";
import { checkSettings } from "./settings-agree.ts";
import { readSites, type SiteRow } from "./sites-file.ts";
import { readStatuses, type StatusRow } from "./statuses-file.ts";
import { readSuppressedNames, type SuppressedNames } from "./suppressed-names.ts";
import { checkTaxaOfChecks } from "./taxa-of-checks.ts";
import { readTerritories, type TerritoryArea } from "./territory-areas.ts";
import { languageOfFile, readTranslations, type Translation } from "./translations.ts";
import { readYaml } from "./yaml-file.ts";

/** A scheme's folder, read and checked: everything but the records. */
export interface Scheme {
  folder: string;
  settings: Settings;
  taxa: ChecklistRow[];
  checklist: Checklist;
  /** Each with its row in the file. */
  characters: (CharacterRow & { row: number })[];
  /** Pictures and clips that can be shown. */
  media: MediaRow[];
  /** What keeps others from being shown. */
  mediaFindings: ContentFinding[];
  /** What is taken for the group and is not of it. */
  outside: OutsideRow[];
  accounts: Map<string, Account>;
  pages: SchemePage[];
  /** Its words and texts in further languages, in the order of the settings. */
  translations: Translation[];
  territories: TerritoryArea[];
  landSquares: LandSquares | null;
  /** Which records are shown coarser than they are known. */
  sensitive: SensitiveRow[];
  /** Regions that records may state. */
  regions: Region[];
  /** Named sites whose label points stand for all of them. */
  sites: SiteRow[];
  /** What others have assessed, in the order it is shown. */
  statuses: StatusRow[];
  /** People who are named nowhere. */
  suppressed: SuppressedNames;
  /** Rulings in force, by record key. */
  decisions: Map<string, RecordDecision>;
}

/**
 * Reads a scheme's folder: settings, checklist, characters, accounts, pages, territories, land squares, sensitive taxa and
 * suppressed names.
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
  const { value: settings, at } = readYaml(readContent(folder, "atlas.yaml"), "atlas.yaml", Settings);
  checkSettings(settings, at);
  checkMapFiles(folder, settings, at);
  const { taxa, checklist } = readChecklist(folder, settings);
  checkTaxaOfChecks(settings, taxa, at);
  const outside = readOutside(folder, settings, taxa);
  const [accounts, pages, regions] = [accountsOf(folder, taxa, outside), pagesOf(folder), readRegions(folder)];
  const known = new Set(taxa.map(({ taxonID }) => taxonID));
  return {
    folder,
    settings,
    taxa,
    checklist,
    characters: readCharacters(folder, settings, taxa, outside),
    ...readMedia(folder, settings, taxa, outside),
    outside,
    accounts,
    pages,
    translations: readTranslations(folder, { settings, accounts, pages, known, outside, regions }),
    territories: readTerritories(folder, settings),
    landSquares: readLandSquares(folder, settings),
    sensitive: readSensitive(folder, settings, taxa),
    regions,
    sites: readSites(folder),
    statuses: readStatuses(folder, taxa),
    suppressed: readSuppressedNames(folder),
    decisions: decisionsInForce(readDecisions(folder)),
  };
}

/** Files that are read later, when the map is drawn: what is wrong with them is better said now. */
function checkMapFiles(folder: string, { basemap }: Settings, at: ReturnType<typeof readYaml>["at"]): void {
  for (const name of ["land", "lakes", "borders", "detail", "licence_file"] as const) {
    const file = basemap?.[name];
    if (file !== undefined && contentPath(folder, file) === undefined)
      throw new Mistake(
        `basemap.${name}`,
        `names ${file}, which is not in ${folder}`,
        "add it, or correct its name",
        at(["basemap", name]),
      );
  }
}

function accountsOf(folder: string, taxa: ChecklistRow[], outside: OutsideRow[]): Map<string, Account> {
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
    for (const look of account.front.look_alikes) outsideNamed(look.outside ?? "", outside, file);
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
    .filter((name) => name.endsWith(".md") && languageOfFile(name) === undefined)
    .sort()
    .map((name) => `${part}/${name}`);
}
