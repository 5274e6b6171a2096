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
  IdentifyTruthFile,
  KnownTruthFile,
  MediaFile,
  PageFile,
  RegionFile,
  RegionsFile,
  SquareFile,
  SquaresFile,
  TaxonFile,
  TranslationFile,
  WantedFile,
} from "../publishing/contracts.ts";

import { atlasIn } from "./in-language/atlas-in-language.ts";
import { type PageLanguage, wordsIn } from "./in-language/page-language.ts";
import {
  accountingIn,
  atlasReasonsIn,
  downloadsIn,
  figureReasonsIn,
  knownTruthIn,
  taxonReasonsIn,
} from "./in-language/reasons-in-language.ts";
import { figuresIn, pageIn, taxonIn } from "./in-language/taxon-in-language.ts";
import { language } from "./words/say.ts";

/** A page asks for its tables hundreds of times: the disk is asked once. */
let foundFolder: string | undefined;

/**
 * The folder of published tables the site is built from.
 *
 * @throws Mistake when ATLAS_PUBLISHED is not set or names no folder
 * @example publishedFolder() // "/home/me/atlas/.build/published"
 */
export function publishedFolder(): string {
  const folder = process.env["ATLAS_PUBLISHED"] ?? "";
  if (folder === foundFolder) return folder;
  if (folder === "" || !existsSync(folder)) {
    throw new Mistake(
      "ATLAS_PUBLISHED",
      folder === "" ? "is not set" : `names no folder: ${folder}`,
      "give it the folder of published tables",
    );
  }
  foundFolder = folder;
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

function once<T>(name: string, contract: z.ZodType<T>): () => T {
  return kept(() => read(name, contract));
}

/** Keeps the answer for the folder and the language it was made for: one build has one of each, a test several. */
function kept<T>(make: () => T): () => T {
  let last: { key: string; value: T } | undefined;
  return () => {
    const key = `${language()} ${publishedFolder()}`;
    if (last?.key !== key) last = { key, value: make() };
    return last.value;
  };
}

const publishedAtlas = once("atlas.json", AtlasFile);

/** The language of the pages, that of the scheme, and what it has in that of the pages. */
const pageLanguage = kept((): PageLanguage => {
  const [first, tag] = [publishedAtlas().language, language()];
  const file = `languages/${tag}.json`;
  const isThere = tag !== first && existsSync(path.join(publishedFolder(), file));
  return { first, tag, words: isThere ? read(file, TranslationFile) : undefined };
});

/**
 * Title, periods, settings in force and the list of taxa, in the language of the pages: what the scheme has in its first
 * language alone is marked with it (`words/fallback.ts`). Read once a build. @example atlas().title // "The Carder Atlas"
 */
export const atlas = kept(() => {
  const [page, published] = [pageLanguage(), publishedAtlas()];
  return atlasReasonsIn(page, atlasIn(page, published), published);
});

/**
 * A text of the scheme's first language, marked where the pages are in another. For what has no translation of its own.
 *
 * @example firstLanguage("yellow or black") // "yellow or black", and between marks on French pages
 */
export function firstLanguage(text: string): string {
  return wordsIn(pageLanguage(), "", text);
}

/** Every hectad that is on land or was visited. Read once a build. @example squares().squares.length // 3717 */
export const squares = once("squares.json", SquaresFile);

/** Squares by what further visits could add. Read once a build. @example wanted().squares[0]?.rank // 1 */
export const wanted = once("wanted.json", WantedFile);

/** Squares covered under two rules, and how complete their lists are. Read once a build. @example coverage().rules[0]?.minimum_visits // 3 */
export const coverage = once("coverage.json", CoverageFile);

/** What became of each record. Read once a build. @example accounting().read // 118402 */
export const accounting = kept(() => accountingIn(read("accounting.json", AccountingFile)));

/** How the identification helper does where the truth is known. Read once a build. @example identifyTruth().made.sightings // 2000 */
export const identifyTruth = kept(() => read("identify-truth.json", IdentifyTruthFile));

/** What each method says where the truth is known, and may claim. Read once a build. @example knownTruth().claims.length // 4 */
export const knownTruth = kept(() => knownTruthIn(read("known-truth.json", KnownTruthFile)));

const pictures = once("media.json", MediaFile);

/** Every picture and clip; none where the scheme has none. @example media().media.length // 7 */
export function media(): MediaFile {
  return existsSync(path.join(publishedFolder(), "media.json")) ? pictures() : { media: [] };
}

/** The files for researchers. Read once a build. @example downloads().edition // "2025.1" */
export const downloads = kept(() => downloadsIn(read("downloads.json", DownloadsFile)));

/** One taxon, read anew each time. @throws when the file is missing @example taxon("red-tailed").hectads // 1379 */
export function taxon(slug: string): TaxonFile {
  const file = read(`taxa/${slug}.json`, TaxonFile);
  return taxonReasonsIn(taxonIn(pageLanguage(), file, { shown: atlas(), published: publishedAtlas() }));
}

/** Every statistic of one taxon, read anew each time. @example figures("red-tailed").trends.length // 28 */
export function figures(slug: string): FiguresFile {
  return figureReasonsIn(figuresIn(pageLanguage(), read(`figures/${slug}.json`, FiguresFile)));
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

const listOfRegions = kept(() => {
  const file = read("regions.json", RegionsFile);
  return { ...file, layers: file.layers.map((layer) => ({ ...layer, regions: layer.regions.map(named) })) };
});

/** A region by the name it has in the language of the pages. */
function named<Region extends { region_id: string; name: string }>(region: Region): Region {
  const name = pageLanguage().words?.regions[region.region_id];
  return name === undefined ? region : { ...region, name };
}

/** One region, read anew each time. @example region("trent-valley").taxa // 17 */
export function region(slug: string): RegionFile {
  return named(read(`regions/${slug}.json`, RegionFile));
}

/** One of the scheme's own pages. @example page("about").title // "About the atlas" */
export function page(slug: string): PageFile {
  return pageIn(pageLanguage(), read(`pages/${slug}.json`, PageFile));
}

/** Text of one base map file, or undefined where the scheme has none. @example basemap("land") // '{"type":"FeatureCollection",…' */
export function basemap(name: string): string | undefined {
  const file = path.join(publishedFolder(), "basemap", `${name}.geojson`);
  return existsSync(file) ? readFileSync(file, "utf8") : undefined;
}
