/**
 * The budgets of the site, measured in a browser on a slow network and a slow machine, and printed beside what they
 * must reach. Pages are those of a built atlas; the map is of 60,000 invented squares of 2 km.
 *
 *   npm run bench -- site [--atlas atlas] [--runs 5]
 */
import { existsSync } from "node:fs";
import { join, resolve } from "node:path";
import { parseArgs } from "node:util";
import { launchBrowser } from "../../tests/support/browser.ts";
import { measureMap } from "./site/map-speed.ts";
import { servePacked } from "./site/packed-server.ts";
import { median, type PageSpeed, pageSpeed } from "./site/page-speed.ts";

const { values } = parseArgs({
  options: { atlas: { type: "string", default: "atlas" }, runs: { type: "string", default: "5" } },
});
const atlas = resolve(values.atlas);
if (!existsSync(join(atlas, "index.html"))) {
  console.error(`${atlas} holds no atlas: build it first (npm run build), or name its folder with --atlas`);
  process.exit(2);
}

/** Kilobytes of 1,000 bytes, milliseconds, and a shift of layout. */
const BUDGETS = { bytes: 60_000, paint: 1_200, shift: 0 };
const PAGES = [
  ["species page", "species/bombus-terrestris/"],
  ["home", ""],
  ["list of species", "species/"],
  ["comparison", "tell-apart/"],
  ["narrow it down", "narrow/"],
  ["square", "squares/nz27/"],
  ["find", "find/"],
  ["take part", "take-part/"],
] as const;

function line(name: string, ...cells: string[]): void {
  console.log(name.padEnd(22) + cells.map((cell) => cell.padStart(20)).join(""));
}

function against(value: number, most: number, unit: string): string {
  return `${Math.round(value).toLocaleString("en-GB")} ${unit} (${(value / most).toFixed(2)})`;
}

function report(name: string, { bytes, paint, shift }: PageSpeed): void {
  line(name, against(bytes / 1000, BUDGETS.bytes / 1000, "kB"), against(paint, BUDGETS.paint, "ms"), shift.toFixed(4));
}

const browser = await launchBrowser();
try {
  const serving = await servePacked(atlas);
  console.log("First view on slow 4G (150 ms, 1.6 Mbit/s) and a processor slowed to a quarter, at 360 px;");
  console.log(`median of ${values.runs} visits with an empty cache. In brackets the share of the budget.`);
  line("", "compressed", "largest paint", "shift of layout");
  for (const [name, path] of PAGES) {
    if (!existsSync(join(atlas, path, "index.html"))) continue;
    const runs: PageSpeed[] = [];
    for (let run = 0; run < Number(values.runs); run++) runs.push(await pageSpeed(browser, serving.address + path));
    report(name, median(runs));
  }
  await serving.close();
  const { squares, opened, switched } = await measureMap(browser, atlas);
  console.log(`\nThe map of ${squares.toLocaleString("en-GB")} squares of 2 km, whole network and processor:`);
  line("", "opened and drawn", "species switched");
  line("map", against(opened, 1_000, "ms"), against(switched, 100, "ms"));
} finally {
  await browser.close();
}
