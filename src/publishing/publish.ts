import { copyFileSync, cpSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { FeatureCollection } from "geojson";
import type { z } from "zod";
import type { Database } from "../engine/database.ts";
import { placingTerritories } from "../records/record-stage.ts";
import type { Scheme } from "../scheme/scheme.ts";
import { comparedPeriods } from "../scheme/settings-agree.ts";
import { accountingFile } from "./accounting-file.ts";
import { atlasFile } from "./atlas-file.ts";
import {
  AccountingFile,
  AtlasFile,
  CoverageFile,
  DownloadsFile,
  FiguresFile,
  HectadSummary,
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
} from "./contracts.ts";
import { coverageFile } from "./coverage-file.ts";
import { writeDownloads } from "./downloads.ts";
import { type Expected, gatherExpected } from "./expected.ts";
import { figuresOf, gatherFigures } from "./figures/gather-figures.ts";
import { judgingRules } from "./fill-change-figures.ts";
import { identifyTruthFile } from "./identify-truth-file.ts";
import { knownTruthFile } from "./known-truth-file.ts";
import { writeMapFolder } from "./map-folder.ts";
import { gatherMeasured } from "./measured.ts";
import { mediaFile, mediaOf, type ReadyMedia } from "./media/media-list.ts";
import { writeNeighbourhoods } from "./neighbourhoods-files.ts";
import { regionFiles } from "./regions-file.ts";
import { squareFiles } from "./square-files.ts";
import type { MapSquare } from "./square-tiles.ts";
import { cornersInDegrees } from "./squares-geojson.ts";
import { taxonFile, taxonSummary } from "./taxon-files.ts";
import { namesOfTaxa } from "./taxon-names.ts";
import { pageHtml, translationFiles } from "./translation-files.ts";
import { uncoveredSquares } from "./uncovered.ts";
import type { DownloadEntry } from "./write-tables.ts";

/**
 * Writes the published folder: everything the site shows and everything that can be downloaded. After this line nothing
 * of a record is left but its counts: no recorder, no locality, no remark.
 *
 * @param read records each source's files hold
 * @param media pictures that are made ready; their files are laid beside by the caller
 */
export async function publish(
  database: Database,
  scheme: Scheme,
  { folder, read, media = [] }: { folder: string; read: ReadonlyMap<string, number>; media?: readonly ReadyMedia[] },
): Promise<void> {
  const { settings } = scheme;
  const compared = comparedPeriods(settings);
  const ids = scheme.taxa.map(({ taxonID }) => taxonID);
  const names = namesOfTaxa(scheme);
  const measured = await gatherMeasured(database, ids, settings.periods.length);
  const judging = judgingRules(scheme);
  const sources = { scheme, names, measured, judging };
  const accounting = await accountingFile(database, scheme, read);
  const used = accounting.sources.reduce((sum, source) => sum + source.used, 0);
  const atlas = await atlasFile(database, scheme, {
    taxa: ids.map((id) => taxonSummary(id, sources)),
    names,
    read: accounting.read,
    used,
  });
  const files = await writeDownloads(database, scheme, names, join(folder, "data", settings.edition.id));
  const uncovered = await uncoveredSquares(database, ids, compared === null);
  const taxa = ids.map(
    (id): TaxonFile => ({
      ...taxonFile(id, sources),
      media: media.filter(({ row }) => row.taxonID === id).map(mediaOf),
      uncovered: uncovered.get(id) ?? { neither: [], later_only: [], earlier_only: [] },
      downloads: ownDownloads(files, names.get(id)?.slug ?? "", settings.edition.id),
    }),
  );
  const expected = await gatherExpected(database, names, measured);
  const squares = await squareFiles(database, scheme, names, measured, expected);
  for (const part of ["taxa", "figures", "squares", "pages"]) mkdirSync(join(folder, part), { recursive: true });
  write(folder, "atlas.json", AtlasFile, atlas);
  write(folder, "known-truth.json", KnownTruthFile, knownTruthFile());
  write(folder, "identify-truth.json", IdentifyTruthFile, identifyTruthFile());
  write(folder, "media.json", MediaFile, mediaFile(media, scheme, names));
  write(folder, "accounting.json", AccountingFile, accounting);
  write(folder, "downloads.json", DownloadsFile, { edition: settings.edition.id, files });
  write(folder, "coverage.json", CoverageFile, await coverageFile(database, scheme));
  write(folder, "squares.json", SquaresFile, {
    squares: squares.map((square) => HectadSummary.strip().parse(square)),
  });
  write(folder, "wanted.json", WantedFile, expected.wanted);
  for (const taxon of taxa) write(folder, `taxa/${taxon.slug}.json`, TaxonFile, taxon);
  const figures = await gatherFigures(database, scheme);
  for (const { slug, taxon_id } of taxa)
    write(folder, `figures/${slug}.json`, FiguresFile, { taxon_id, slug, ...figuresOf(figures, taxon_id) });
  for (const square of squares) write(folder, `squares/${square.slug}.json`, SquareFile, square);
  await writeRegions(database, scheme, names, { folder, expected });
  for (const page of scheme.pages) write(folder, `pages/${page.slug}.json`, PageFile, pageFile(page));
  if (scheme.translations.length > 0) mkdirSync(join(folder, "languages"), { recursive: true });
  for (const file of translationFiles(scheme, names))
    write(folder, `languages/${file.language}.json`, TranslationFile, file);
  copyBasemap(scheme, folder);
  const visits = new Map(
    squares.flatMap(({ square, visits: ofPeriods, tetrads }): [string, number[]][] => [
      [square, ofPeriods],
      ...tetrads.map((tetrad): [string, number[]] => [tetrad.square, [tetrad.visits]]),
    ]),
  );
  writeMapFolder(join(folder, "map"), await mapSquares(database, scheme), atlas, taxa, ground(scheme), visits);
  await writeNeighbourhoods(database, names, {
    folder: join(folder, "identify"),
    latest: settings.periods.length - 1,
    invented: settings.invented,
  });
}

async function writeRegions(
  database: Database,
  scheme: Scheme,
  names: Parameters<typeof regionFiles>[2],
  { folder, expected }: { folder: string; expected: Expected },
): Promise<void> {
  if (scheme.regions.length === 0) return;
  mkdirSync(join(folder, "regions"), { recursive: true });
  const { list, regions } = await regionFiles(database, scheme, names, expected);
  write(folder, "regions.json", RegionsFile, list);
  for (const region of regions) write(folder, `regions/${region.slug}.json`, RegionFile, region);
}

function pageFile(page: Scheme["pages"][number]): PageFile {
  const { slug, front } = page;
  return { slug, title: front.title, lead: front.lead, html: pageHtml(page), in_footer: front.footer };
}

function ownDownloads(files: readonly DownloadEntry[], slug: string, edition: string): TaxonFile["downloads"] {
  return files
    .filter(({ path }) => path === `species/${slug}.csv`)
    .map(({ path, title, rows, bytes }) => ({ path: `data/${edition}/${path}`, title, rows: rows ?? 0, bytes }));
}

/** Writes one file of the contract; what does not keep it is our bug and stops the build here. */
function write<T>(folder: string, name: string, contract: z.ZodType<T>, value: T): void {
  writeFileSync(join(folder, name), `${JSON.stringify(contract.parse(value))}\n`);
}

function copyBasemap({ folder: from, settings: { basemap } }: Scheme, folder: string): void {
  if (basemap === undefined) return;
  mkdirSync(join(folder, "basemap"), { recursive: true });
  for (const [name, file] of [
    ["land", basemap.land],
    ["lakes", basemap.lakes],
    ["borders", basemap.borders],
    ["land-detail", basemap.detail],
  ] as const)
    if (file !== undefined) copyFileSync(join(from, file), join(folder, "basemap", `${name}.geojson`));
  if (basemap.licence_file !== undefined)
    cpSync(join(from, basemap.licence_file), join(folder, "data", "basemap-licence.txt"));
}

function ground({ folder, settings: { basemap } }: Scheme): { land?: FeatureCollection; lakes?: FeatureCollection } {
  const readFeatures = (file: string) => JSON.parse(readFileSync(join(folder, file), "utf8")) as FeatureCollection;
  if (basemap === undefined) return {};
  return {
    land: readFeatures(basemap.detail ?? basemap.land),
    ...(basemap.lakes === undefined ? {} : { lakes: readFeatures(basemap.lakes) }),
  };
}

/** Squares of the interactive map: hectads first, then tetrads, each sorted, numbered without a gap. */
async function mapSquares(database: Database, scheme: Scheme): Promise<MapSquare[]> {
  const gridOf = new Map(placingTerritories(scheme).map(({ grid }) => [grid.id as string, grid]));
  const rows = await database.rows<{ grid: string; square: string; resolution_m: 10_000 | 2_000 }>(
    "SELECT grid, square, resolution_m FROM square_places ORDER BY resolution_m DESC, grid, square",
  );
  return rows
    .flatMap(({ grid, square, resolution_m }) => {
      const system = gridOf.get(grid);
      const corners = system === undefined ? undefined : cornersInDegrees(system, square);
      return corners === undefined ? [] : [{ code: square, resolution_m, corners }];
    })
    .map((square, id) => ({ id, ...square }));
}
