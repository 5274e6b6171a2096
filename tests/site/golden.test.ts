/**
 * Drawings of the pages as they were looked at and found right, each in `golden/`, from invented tables. One that is
 * missing is written, but not on a build server, where it fails; what differs is kept in `golden/changed`, to be looked
 * at as a picture on its page and, if right, moved to `golden/expected`.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, expect, it } from "vitest";
import { elementOf, normalSvg } from "../support/normal-svg.ts";
import { type RenderedFixture, renderFixture } from "../support/rendered-fixture.ts";

const FOLDER = fileURLToPath(new URL("golden/", import.meta.url));
const [EXPECTED, CHANGED] = [path.join(FOLDER, "expected"), path.join(FOLDER, "changed")];
/** A block of squares, in which a taxon is found in both periods, in one and in none. */
const HECTADS = Array.from({ length: 25 }, (_, index) => `NY${Math.floor(index / 5) + 2}${(index % 5) + 2}`);

/** A drawing: on which page of which atlas, which element, and what its tag holds. */
type Drawing = readonly [name: string, periods: 1 | 2, page: string, tag: string, opening: string];
const DRAWINGS: readonly Drawing[] = [
  ["species-map-two-periods", 2, "species/common-carder", "svg", 'class="map"'],
  ["species-map-one-period", 1, "species/red-tailed", "svg", 'class="map"'],
  ["thumbnail", 2, "species/common-carder", "svg", 'class="map-thumbnail'],
  ["number-map", 2, "coverage", "svg", 'class="map"'],
  ["flight-period", 2, "species/red-tailed", "svg", 'class="bars"'],
  ["years", 2, "species/red-tailed", "svg", 'class="bars years"'],
  ["years-brackets", 2, "species/red-tailed", "svg", 'class="brackets"'],
  ["change-axis", 2, "species/buff-tailed", "svg", 'class="change-axis"'],
  ["change-interval", 2, "species/buff-tailed", "svg", 'class="interval"'],
  ["change-unjudged", 2, "species/common-carder", "svg", 'class="interval"'],
  ["season-strip", 2, "species/red-tailed", "svg", 'class="strip"'],
  ["body", 2, "species/red-tailed", "svg", 'class="figure'],
  ["ribbon", 2, "species/red-tailed", "table", 'class="ribbon'],
];

const rendered = new Map<number, RenderedFixture>();
beforeAll(async () => {
  rmSync(CHANGED, { recursive: true, force: true });
  rendered.set(2, await renderFixture({ taxa: 6, hectads: HECTADS }, "/"));
  rendered.set(1, await renderFixture({ taxa: 3, hectads: HECTADS, periods: 1 }, "/"));
});
afterAll(() => {
  for (const each of rendered.values()) each.remove();
});

it.each(DRAWINGS)("%s is drawn as it was found right", (name, periods, page, tag, opening) => {
  const html = readFileSync(path.join(rendered.get(periods)?.folder ?? "", page, "index.html"), "utf8");
  const drawn = normalSvg(elementOf(html, tag, opening));
  const expected = path.join(EXPECTED, `${name}.txt`);
  if (!existsSync(expected) && process.env["CI"] === undefined) {
    mkdirSync(EXPECTED, { recursive: true });
    writeFileSync(expected, drawn);
  }
  const right = existsSync(expected) ? readFileSync(expected, "utf8") : "";
  if (drawn !== right) {
    mkdirSync(CHANGED, { recursive: true });
    writeFileSync(path.join(CHANGED, `${name}.txt`), drawn);
  }
  expect(drawn).toBe(right);
});

it("has no drawing that nothing draws", () => {
  expect(readdirSync(EXPECTED).sort()).toEqual(DRAWINGS.map(([name]) => `${name}.txt`).sort());
});
