import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import type { z } from "zod";
import { Mistake } from "../mistake.ts";
import {
  AccountingFile,
  AtlasFile,
  CoverageFile,
  DownloadsFile,
  FiguresFile,
  KnownTruthFile,
  PageFile,
  RegionFile,
  RegionsFile,
  SquareFile,
  SquaresFile,
  TaxonFile,
} from "../publishing/contracts.ts";

/**
 * The folder of published tables the site is built from.
 *
 * @throws Mistake when ATLAS_PUBLISHED is not set or names no folder
 * @example publishedFolder() // "/home/me/atlas/.build/published"
 */
export function publishedFolder(): string {
  const folder = process.env["ATLAS_PUBLISHED"] ?? "";
  if (folder === "" || !existsSync(folder)) {
    throw new Mistake(
      "ATLAS_PUBLISHED",
      folder === "" ? "is not set" : `names no folder: ${folder}`,
      "give it the folder of published tables",
    );
  }
  return folder;
}

function read<T>(name: string, contract: z.ZodType<T>): T {
  const file = path.join(publishedFolder(), name);
  const parsed = contract.safeParse(JSON.parse(readFileSync(file, "utf8")));
  if (parsed.success) return parsed.data;
  const issue = parsed.error.issues[0];
  throw new Mistake(
    issue?.path.join(".") ?? "the file",
    `does not keep its contract (${issue?.message ?? "unknown"})`,
    "publish the atlas again",
    { file },
  );
}

/** Keeps the answer for the folder it was read from: one build reads one folder, a test several. */
function once<T>(name: string, contract: z.ZodType<T>): () => T {
  let kept: { folder: string; value: T } | undefined;
  return () => {
    const folder = publishedFolder();
    if (kept?.folder !== folder) kept = { folder, value: read(name, contract) };
    return kept.value;
  };
}

/** Title, periods, settings in force and the list of taxa. Read once a build. @example atlas().title // "The Carder Atlas" */
export const atlas = once("atlas.json", AtlasFile);

/** Every hectad that is on land or was visited. Read once a build. @example squares().squares.length // 3717 */
export const squares = once("squares.json", SquaresFile);

/** Squares covered under two rules, and how complete their lists are. Read once a build. @example coverage().rules[0]?.minimum_visits // 3 */
export const coverage = once("coverage.json", CoverageFile);

/** What became of each record. Read once a build. @example accounting().read // 118402 */
export const accounting = once("accounting.json", AccountingFile);

/** What each method says where the truth is known, and may claim. Read once a build. @example knownTruth().claims.length // 4 */
export const knownTruth = once("known-truth.json", KnownTruthFile);

/** The files for researchers. Read once a build. @example downloads().edition // "2025.1" */
export const downloads = once("downloads.json", DownloadsFile);

/** One taxon, read anew each time. @throws when the file is missing @example taxon("red-tailed").hectads // 1379 */
export function taxon(slug: string): TaxonFile {
  return read(`taxa/${slug}.json`, TaxonFile);
}

/** Every statistic of one taxon, read anew each time. @example figures("red-tailed").trends.length // 28 */
export function figures(slug: string): FiguresFile {
  return read(`figures/${slug}.json`, FiguresFile);
}

/** One hectad, read anew each time: thousands of them must not stay in memory. @example square("nz27").taxa_all // 10 */
export function square(slug: string): SquareFile {
  return read(`squares/${slug}.json`, SquareFile);
}

/** Regions by layer; none where the scheme has no regions, and then no file either. @example regions().layers.length // 1 */
export function regions(): RegionsFile {
  const isThere = existsSync(path.join(publishedFolder(), "regions.json"));
  return isThere ? listOfRegions() : { land_known: false, layers: [] };
}

const listOfRegions = once("regions.json", RegionsFile);

/** One region, read anew each time. @example region("trent-valley").taxa // 17 */
export function region(slug: string): RegionFile {
  return read(`regions/${slug}.json`, RegionFile);
}

/** One of the scheme's own pages. @example page("about").title // "About the atlas" */
export function page(slug: string): PageFile {
  return read(`pages/${slug}.json`, PageFile);
}

/** Text of one base map file, or undefined where the scheme has none. @example basemap("land") // '{"type":"FeatureCollection",…' */
export function basemap(name: string): string | undefined {
  const file = path.join(publishedFolder(), "basemap", `${name}.geojson`);
  return existsSync(file) ? readFileSync(file, "utf8") : undefined;
}
