import { readFileSync } from "node:fs";
import path from "node:path";
import { readXlsx } from "hucre/xlsx";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type BuiltPage, builtPages, deadLinks, visibleText } from "../support/built-pages.ts";
import type { FixtureShape } from "../support/published-fixture.ts";
import { type RenderedFixture, renderFixture } from "../support/rendered-fixture.ts";

interface Built extends RenderedFixture {
  readonly pages: readonly BuiltPage[];
}

async function build(shape: FixtureShape, base: string): Promise<Built> {
  const rendered = await renderFixture(shape, base);
  return { ...rendered, pages: builtPages(rendered.folder) };
}

const BASE = "/atlas/";
let two: Built;
let bare: Built;
beforeAll(async () => {
  two = await build({ taxa: 5 }, BASE);
  bare = await build({ taxa: 3, periods: 1, bare: true }, "/");
});
afterAll(() => {
  for (const built of [two, bare]) built?.remove();
});
const everyPage = () => [...two.pages, ...bare.pages];
const page = ({ folder, pages }: Built, name: string) =>
  pages.find(({ file }) => file === path.join(folder, name))?.html ?? "";

describe("a built site", () => {
  it("is built without a warning", () => {
    expect([...two.warnings, ...bare.warnings]).toEqual([]);
  });
  it("has the pages of every taxon, square and page of the scheme", () => {
    const names = two.pages.map(({ file }) => path.relative(two.folder, file));
    for (const name of [
      "index",
      "species/index",
      "species/by-name/index",
      "species/by-change/index",
      "species/red-tailed/index",
      "species/red-tailed/figures/index",
      "squares/index",
      "squares/nz27/index",
      "methods/index",
      "downloads/index",
      "about/index",
      "404",
    ]) {
      expect(names).toContain(`${name}.html`);
    }
  });
  it("warns where it sends people out: of nests, of land, and that not finding is no absence", () => {
    for (const name of ["in-season", "take-part", "take-part/start", "squares/wanted", "squares/nz27"]) {
      const cautions = page(two, `${name}/index.html`).match(/<p class="caution.*?<\/p>/gs) ?? [];
      const said = cautions.map(visibleText).join(" ");
      expect(said, name).toMatch(/nests/i);
      expect(said, name).toMatch(/ask /i);
    }
    for (const name of ["in-season", "take-part/start", "squares/wanted"])
      expect(visibleText(page(two, `${name}/index.html`)), name).toMatch(/no absence|not an absence/);
  });
  it("offers an entry sheet that a spreadsheet program can open", async () => {
    const [records] = (await readXlsx(readFileSync(path.join(two.folder, "entry-sheet.xlsx")))).sheets;
    expect(records?.rows[0]).toContain("scientificName");
  });
  it("has no dead link, under a sub-path and at the top", () => {
    expect(deadLinks(two.folder, BASE, two.published)).toEqual([]);
    expect(deadLinks(bare.folder, "/", bare.published)).toEqual([]);
  });
  it("keeps its own policy: nothing inline, nothing from another host", () => {
    for (const { file, html } of everyPage()) {
      expect(html, file).toContain("default-src 'none'; script-src 'self'; style-src 'self'");
      expect(html, file).not.toMatch(/<style|\sstyle="|\son\w+="/);
      expect(html.match(/<script(?![^>]*\s(?:src=|type="application\/json"))/g), file).toBeNull();
      expect(
        html.match(/<(?:script|link|img|iframe|source)[^>]+(?:src|href)="(?:https?:)?\/\/[^>]*>/g),
        file,
      ).toBeNull();
    }
  });
  it("says on every page that the records are invented, and keeps search engines out", () => {
    for (const { file, html } of everyPage()) {
      expect(visibleText(html), file).toContain("Invented records.");
      expect(html, file).toContain('<meta name="robots" content="noindex"');
    }
  });
  it("has one h1, no gap in its headings, no id twice, and a name for every drawing", () => {
    for (const { file, html } of everyPage()) {
      const levels = [...html.matchAll(/<h([1-6])/g)].map(([, level]) => Number(level));
      expect(
        levels.filter((level) => level === 1),
        file,
      ).toHaveLength(1);
      expect(
        levels.filter((level, index) => index > 0 && level > (levels[index - 1] ?? 0) + 1),
        file,
      ).toEqual([]);
      const ids = [...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
      expect(
        ids.filter((id, index) => ids.indexOf(id) !== index),
        file,
      ).toEqual([]);
      const drawings = html
        .match(/<svg[^>]*>/g)
        ?.filter((svg) => !/aria-hidden="true"|aria-label(?:ledby)?="[^"]+"/.test(svg));
      expect(drawings ?? [], file).toEqual([]);
    }
  });
  it("shows the words of the atlas, and none that read as a verdict", () => {
    for (const { file, html } of everyPage())
      expect(visibleText(html), file).not.toMatch(
        /\b(?:lost|gained|retained|rejected|extinct)\b|undefined|NaN|\[object/i,
      );
    expect(visibleText(page(two, "squares/nz27/index.html"))).toMatch(/found in both|newly found|not refound/);
  });
  it("has no word of change in an atlas of one period", () => {
    for (const { file, html } of bare.pages) {
      // These tell of every mark and method there is.
      if (/methods|about|design/.test(file)) continue;
      expect(visibleText(html), file).not.toMatch(
        /found in both|newly found|not refound|comparable|compared|no direction|net change|\bspine\b|earlier period/i,
      );
    }
  });
  it("speaks of land only where the scheme has a list of it", () => {
    expect(visibleText(page(two, "coverage/index.html"))).toMatch(/land squares/i);
    expect(visibleText(page(bare, "coverage/index.html"))).not.toMatch(/land squares|of the land/i);
  });
  it("escapes what comes from the data", () => {
    expect(page(two, "species/red-tailed/index.html")).toContain("<p>Queens and workers have a short even coat");
    expect(
      everyPage()
        .filter(({ html }) => html.includes("&lt;p&gt;"))
        .map(({ file }) => file),
    ).toEqual([]);
  });
});
