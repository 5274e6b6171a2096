/**
 * Invented published tables that keep every contract of `src/publishing/contracts.ts`, for tests of the site.
 * Nothing in them is an expected value of a measure: the numbers only have to agree with each other.
 */
import { cpSync, mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import type { z } from "zod";
import {
  AccountingFile,
  AtlasFile,
  CoverageFile,
  DownloadsFile,
  FiguresFile,
  IdentifyTruthFile,
  KnownTruthFile,
  PageFile,
  RegionFile,
  RegionsFile,
  SquareFile,
  SquaresFile,
  TaxonFile,
  TranslationFile,
  WantedFile,
} from "../../src/publishing/contracts.ts";
import { ACCOUNTING, atlasFile, DOWNLOADS } from "./published/atlas.ts";
import { coverageFile } from "./published/coverage.ts";
import { figuresFile } from "./published/figures.ts";
import { FIXTURE_TAXA } from "./published/fixture-taxa.ts";
import { IDENTIFY_TRUTH } from "./published/identify-truth.ts";
import { KNOWN_TRUTH } from "./published/known-truth.ts";
import { writeNeighbourhoods } from "./published/neighbourhoods.ts";
import { stream } from "./published/numbers.ts";
import { regionFiles, regionsFile } from "./published/regions.ts";
import type { FixtureShape } from "./published/shape.ts";

export type { FixtureShape };

import { hectad, squareFile, wantedFile } from "./published/squares.ts";
import { inventTaxon } from "./published/taxa.ts";
import { FRENCH } from "./published/translation.ts";

const SIX = ["NZ16", "NZ17", "NZ26", "NZ27", "NZ36", "NZ37"];

/**
 * Writes invented published tables to a folder.
 *
 * @param folder made if missing
 * @param shape how large and how plain; three taxa, six squares, two periods by default
 * @returns the folder
 * @example writePublishedFixture("/tmp/p") // "/tmp/p", with atlas.json, taxa/red-tailed.json, …
 */
export function writePublishedFixture(folder: string, shape: FixtureShape = {}): string {
  const random = stream(7);
  const two = shape.periods !== 1;
  const write = <T>(name: string, contract: z.ZodType<T>, value: T): void => {
    mkdirSync(path.dirname(path.join(folder, name)), { recursive: true });
    writeFileSync(path.join(folder, name), JSON.stringify(contract.parse(value)));
  };
  const hectads = (shape.hectads ?? SIX).map((code) => hectad(code, random, two));
  const taxa = (shape.list ?? FIXTURE_TAXA.slice(0, shape.taxa ?? 3)).map((taxon, index) =>
    inventTaxon(taxon, hectads, shape, index),
  );
  write("atlas.json", AtlasFile, atlasFile(taxa, hectads, shape));
  const download = (name: string): void => {
    const file = path.join(folder, name);
    mkdirSync(path.dirname(file), { recursive: true });
    writeFileSync(file, "invented\n");
  };
  for (const [index, { file }] of taxa.entries()) {
    write(`taxa/${file.slug}.json`, TaxonFile, file);
    write(`figures/${file.slug}.json`, FiguresFile, figuresFile(file, two, index));
    for (const { path: name } of file.downloads) download(name);
  }
  write("coverage.json", CoverageFile, coverageFile(hectads, two));
  write("squares.json", SquaresFile, { squares: hectads });
  const files = taxa.map(({ file }) => file);
  write("wanted.json", WantedFile, wantedFile(hectads, files));
  for (const square of hectads)
    write(
      `squares/${square.slug}.json`,
      SquareFile,
      squareFile(
        square,
        taxa.map(({ file }) => file),
      ),
    );
  if (shape.regions === true) {
    const regions = regionFiles(hectads, files);
    write("regions.json", RegionsFile, regionsFile(regions));
    for (const region of regions) write(`regions/${region.slug}.json`, RegionFile, region);
  }
  write("identify-truth.json", IdentifyTruthFile, IDENTIFY_TRUTH);
  writeNeighbourhoods(write, taxa, hectads);
  write("known-truth.json", KnownTruthFile, KNOWN_TRUTH);
  write("accounting.json", AccountingFile, ACCOUNTING);
  write("downloads.json", DownloadsFile, DOWNLOADS);
  write("pages/about.json", PageFile, {
    slug: "about",
    title: "About",
    lead: "A page of the scheme.",
    html: '<p>See <a href="/methods/">the methods</a>.</p>',
    in_footer: true,
  });
  if (shape.languages?.includes("fr")) write("languages/fr.json", TranslationFile, FRENCH);
  for (const { path: name } of DOWNLOADS.files) download(`data/${DOWNLOADS.edition}/${name}`);
  if (shape.basemap !== undefined && !(shape.bare ?? false))
    cpSync(shape.basemap, path.join(folder, "basemap"), { recursive: true });
  return folder;
}
