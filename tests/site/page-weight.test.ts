import { cpSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { gzipSync } from "node:zlib";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { serve } from "../../src/build/serve.ts";
import { launchBrowser } from "../support/browser.ts";
import { landRows } from "../support/map-fixture.ts";
import { type RenderedFixture, renderFixture } from "../support/rendered-fixture.ts";

/** The first view of a species page on the ground of the whole demonstration: every British hectad, coast, lakes, borders. */
let rendered: RenderedFixture;
let basemap: string;
const COAST = [
  ["land-overview.geojson", "land.geojson"],
  ["lakes-overview.geojson", "lakes.geojson"],
  ["borders.geojson", "borders.geojson"],
] as const;
beforeAll(async () => {
  basemap = mkdtempSync(path.join(tmpdir(), "atlaswright-coast-"));
  for (const [from, to] of COAST) cpSync(path.resolve("content/basemap", from), path.join(basemap, to));
  const hectads = landRows().flatMap(({ grid, hectad }) => (grid === "british" ? [hectad] : []));
  rendered = await renderFixture({ taxa: 5, hectads, basemap }, "/");
}, 240_000);
afterAll(() => {
  rendered?.remove();
  rmSync(basemap, { recursive: true, force: true });
});

const zipped = (name: string) => gzipSync(readFileSync(path.join(rendered.folder, name)), { level: 9 }).length;

describe("the first view of a species page", () => {
  it("weighs at most 60 kB: page, styles, script and the three fonts, compressed", () => {
    const page = "species/red-tailed/index.html";
    const html = readFileSync(path.join(rendered.folder, page), "utf8");
    const files = [...html.matchAll(/<(?:link rel="stylesheet"|script type="module") (?:href|src)="\/([^"]+)"/g)].map(
      ([, name = ""]) => name,
    );
    const fonts = ["display", "text", "display-italic"].map((name) => `fonts/${name}.woff2`);
    const bytes = [page, ...files]
      .map(zipped)
      .concat(fonts.map((name) => readFileSync(path.join(rendered.folder, name)).length));
    expect(files.length).toBeGreaterThan(2);
    expect(html.includes('id="atlas-land"')).toBe(true);
    expect(html.match(/<g id="species-map-/g)?.length).toBeGreaterThan(2);
    expect(bytes.reduce((sum, number) => sum + number, 0)).toBeLessThanOrEqual(60_000);
  });
});

describe("the large map", () => {
  it("weighs at most 150 kB with everything it needs, compressed", () => {
    const page = "species/red-tailed/map/index.html";
    const html = readFileSync(path.join(rendered.folder, page), "utf8");
    const files = [...html.matchAll(/<(?:link rel="stylesheet"|script type="module") (?:href|src)="\/([^"]+)"/g)];
    const bytes = [page, ...files.map(([, name = ""]) => name)].map(zipped);
    expect(bytes.reduce((sum, number) => sum + number, 30_500)).toBeLessThanOrEqual(150_000);
  });

  it("shows the region and the period that are chosen, by keyboard and without a script", async () => {
    const serving = await serve({ folder: rendered.folder, port: 0 });
    const browser = await launchBrowser();
    try {
      const page = await (await browser.newContext({ javaScriptEnabled: false })).newPage();
      await page.goto(`${serving.address}species/red-tailed/map/`);
      const shown = () => page.locator(".large .say:visible").allTextContents();
      const first = await shown();
      expect(first).toHaveLength(1);
      await page.locator("#place-0").focus();
      await page.keyboard.press("ArrowRight");
      expect(await shown()).toEqual([expect.stringMatching(/^Great Britain, north: /)]);
      await page.locator("#time-0").focus();
      await page.keyboard.press("ArrowRight");
      expect(await shown()).toEqual([expect.stringMatching(/^Great Britain, north, 1990–2005: recorded in/)]);
      expect(await page.locator(".large svg.map:visible").count()).toBe(1);
      await page.emulateMedia({ media: "print" });
      expect(await page.locator(".large svg.map:visible").count()).toBe(1);
    } finally {
      await browser.close();
      await serving.close();
    }
  });
});

/** 7 points in CSS pixels: 96 to the inch, 72 points to the inch. A hundredth less for rounding. */
const SMALLEST = (7 * 96) / 72 - 0.01;

describe("a printed species page", () => {
  it("takes two A4 pages, with no text under 7 points", async () => {
    const serving = await serve({ folder: rendered.folder, port: 0 });
    const browser = await launchBrowser();
    try {
      const page = await browser.newPage({ viewport: { width: 665, height: 1000 } });
      await page.goto(`${serving.address}species/red-tailed/`);
      const pdf = await page.pdf({ preferCSSPageSize: true });
      expect(pdf.toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g)?.length).toBe(2);
      await page.emulateMedia({ media: "print" });
      const small = await page.evaluate((least) => {
        const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
        const found: string[] = [];
        for (let node = texts.nextNode(); node; node = texts.nextNode()) {
          const element = node.parentElement;
          if (!element || !node.textContent?.trim() || element.closest(".unseen, script, noscript, title, desc"))
            continue;
          if (!element.checkVisibility()) continue;
          const scale = element instanceof SVGGraphicsElement ? (element.getScreenCTM()?.a ?? 1) : 1;
          const size = Number.parseFloat(getComputedStyle(element).fontSize) * scale;
          if (size < least) found.push(`${node.textContent.trim()}: ${size.toFixed(2)} px`);
        }
        return found;
      }, SMALLEST);
      expect(small).toEqual([]);
    } finally {
      await browser.close();
      await serving.close();
    }
  });
});
