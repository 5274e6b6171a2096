import { cpSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { FeatureCollection } from "geojson";
import type { Browser } from "playwright-core";
import { gridNamed } from "../../../src/grids/index.ts";
import type { AtlasFile, TaxonFile, TaxonSquare } from "../../../src/publishing/contracts.ts";
import { type MapSettings, writeMapFolder } from "../../../src/publishing/map-folder.ts";
import type { MapSquare } from "../../../src/publishing/square-tiles.ts";
import { cornersInDegrees } from "../../../src/publishing/squares-geojson.ts";
import { servePacked } from "./packed-server.ts";

const TETRADS = 60_000;
const LETTERS = [..."ABCDEFGHIJKLMNPQRSTUVWXYZ"];
const CONTENT = new URL("../../../content/", import.meta.url);

/** Opens the map of 60,000 invented tetrads and changes the species; medians of five, in milliseconds. */
export async function measureMap(
  browser: Browser,
  atlas: string,
): Promise<{ squares: number; opened: number; switched: number }> {
  const folder = mkdtempSync(join(tmpdir(), "atlaswright-map-"));
  try {
    cpSync(atlas, folder, { recursive: true, filter: (path) => !/\/(data|squares|fr|ga)$/.test(path) });
    const squares = inventMap(folder);
    const serving = await servePacked(folder);
    const [opened, switched]: [number[], number[]] = [[], []];
    for (let run = 0; run < 5; run++) {
      const page = await browser.newPage({ viewport: { width: 1200, height: 800 }, reducedMotion: "reduce" });
      await page.goto(`${serving.address}about/`);
      const started = performance.now();
      await page.goto(`${serving.address}map/#at=7.6,-1.5,53.0`);
      await page.waitForSelector('[data-drawn="true"]');
      opened.push(performance.now() - started);
      switched.push(...(await switchSpecies(page)));
      await page.close();
    }
    await serving.close();
    return { squares, opened: middle(opened), switched: middle(switched) };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Times from a choice of species to the frame after its squares are painted, within the page. */
async function switchSpecies(page: Awaited<ReturnType<Browser["newPage"]>>): Promise<number[]> {
  return page.evaluate(async () => {
    const list = document.querySelector<HTMLSelectElement>("[data-taxon]");
    const told = document.querySelector("[data-view]");
    const times: number[] = [];
    if (list === null || told === null) return times;
    for (let index = 1; index < 4; index++) {
      const before = told.textContent;
      const started = performance.now();
      list.selectedIndex = index;
      list.dispatchEvent(new Event("change"));
      while (told.textContent === before) await new Promise((done) => requestAnimationFrame(done));
      times.push(performance.now() - started);
    }
    return times;
  });
}

function middle(times: readonly number[]): number {
  return times.toSorted((one, other) => one - other)[Math.floor(times.length / 2)] ?? 0;
}

/** Puts a map folder of British tetrads in the place of the atlas's own; each species is in about a third of them. */
function inventMap(folder: string): number {
  const settings = JSON.parse(readFileSync(join(folder, "map/map.json"), "utf8")) as MapSettings;
  const grid = gridNamed("british");
  const codes = readFileSync(new URL("land-squares.csv", CONTENT), "utf8")
    .split("\n")
    .flatMap((row) => row.match(/\b[A-Z]{2}\d{2}\b/)?.[0] ?? []);
  const hectads = [...new Set(codes)].slice(0, TETRADS / LETTERS.length);
  const tetrads = hectads.flatMap((code) => LETTERS.map((letter) => `${code}${letter}`));
  const squares = [...hectads, ...tetrads].flatMap((code, index): MapSquare[] => {
    const corners = cornersInDegrees(grid, code);
    return corners === undefined
      ? []
      : [{ id: index, code, resolution_m: index < hectads.length ? 10_000 : 2_000, corners }];
  });
  const numbered = squares.map((square, id) => ({ ...square, id }));
  const taxa = settings.taxa.map((taxon, index) => inventTaxon(taxon, index, hectads, tetrads));
  const land = JSON.parse(readFileSync(new URL("basemap/land-detail.geojson", CONTENT), "utf8")) as FeatureCollection;
  rmSync(join(folder, "map/taxa"), { recursive: true });
  writeMapFolder(join(folder, "map"), numbered, atlasOf(settings), taxa, { land });
  return tetrads.length;
}

function inventTaxon(
  { slug, name }: MapSettings["taxa"][number],
  index: number,
  hectads: readonly string[],
  tetrads: readonly string[],
): TaxonFile {
  const some = (codes: readonly string[]): TaxonSquare[] =>
    codes
      .filter((_, place) => (place * 7 + index * 5) % 3 === 0)
      .map((square, place) => ({
        square,
        state: (["retained", "gained", "lost"] as const)[(place + index) % 3] ?? "retained",
        covered: [true, true],
        records: [place % 4, 1],
        visits: [6, 9],
        first_year: 1991,
        last_year: 2020,
      }));
  return {
    slug,
    vernacular_name: name,
    generalised_to: "none",
    squares: { "10000": some(hectads), "2000": some(tetrads) },
    uncovered: { neither: [], later_only: [], earlier_only: [] },
    change: [{ resolution_m: 2_000, territory: "all", judged: true }],
  } as unknown as TaxonFile;
}

function atlasOf({ periods, taxa, group, coverage_minimum_visits }: MapSettings): AtlasFile {
  return {
    periods: periods.map(({ label }, index) => ({ id: String(index), label, from: 1990, to: 2024 })),
    compared: ["0", "1"],
    taxa: taxa.map(({ slug, name }) => ({ slug, vernacular_name: name, generalised_to: "none" })),
    invented: true,
    coverage_minimum_visits,
    group: { one: group, many: group },
  } as unknown as AtlasFile;
}
