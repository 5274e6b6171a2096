import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Serving, serve } from "../../../src/build/serve.ts";
import { launchBrowser } from "../../support/browser.ts";
import { addMap } from "../../support/map-folder-fixture.ts";
import { type RenderedFixture, renderFixture } from "../../support/rendered-fixture.ts";

let rendered: RenderedFixture;
let serving: Serving;
let browser: Browser;
const asked: string[] = [];
const complaints: string[] = [];

async function openPage(options: { javaScriptEnabled?: boolean } = {}, address = "species/red-tailed/"): Promise<Page> {
  const page = await browser.newPage({ reducedMotion: "reduce", ...options });
  page.on("request", (request) => asked.push(request.url()));
  page.on("console", (message) => {
    if (["error", "warning"].includes(message.type())) complaints.push(message.text());
  });
  page.on("pageerror", (error) => complaints.push(error.message));
  await page.goto(serving.address + address);
  return page;
}

beforeAll(async () => {
  rendered = await renderFixture({ taxa: 3, languages: ["fr"] }, "/");
  addMap(rendered);
  serving = await serve({ folder: rendered.folder, port: 0 });
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser?.close();
  await serving?.close();
  rendered?.remove();
});

const status = (page: Page) => page.locator("[data-square]").textContent();

describe("the map that zooms", () => {
  it("is not fetched before it is asked for, and then from this host alone, within the page's policy", async () => {
    const page = await openPage();
    expect(asked.filter((url) => url.includes("/map/") || url.includes("open-map"))).toEqual([]);
    await page.click("[data-open]");
    await page.waitForSelector('[data-drawn="true"]');
    expect(asked.filter((url) => url.endsWith("/map/squares.pmtiles")).length).toBeGreaterThan(0);
    expect(asked.filter((url) => !url.startsWith(serving.address))).toEqual([]);
    expect(complaints).toEqual([]);
    await page.close();
  });

  it("tells of a square by its code, by keyboard, for another species and another period, and closes", async () => {
    const page = await openPage();
    await page.focus("[data-open]");
    await page.keyboard.press("Enter");
    await page.waitForSelector('[data-drawn="true"]');
    await page.fill("[data-code]", "nz 27");
    await page.keyboard.press("Enter");
    await expect.poll(() => status(page)).toMatch(/^NZ27: /);
    await page.fill("[data-code]", "XX99");
    await page.keyboard.press("Enter");
    await expect.poll(() => status(page)).toContain("XX99 is no square of this atlas");
    await page.fill("[data-code]", "NZ27");
    await page.keyboard.press("Enter");
    await expect.poll(() => status(page)).toMatch(/^NZ27: /);
    await page.selectOption("[data-taxon]", "buff-tailed");
    await expect.poll(() => status(page)).toContain("Buff-tailed bumblebee");
    await page.check('input[name="zoom-view"][value="1"]');
    await expect.poll(() => page.locator("[data-view]").textContent()).toContain("2006–2024");
    await page.locator(".zoom-canvas canvas").focus();
    await page.keyboard.press("Enter");
    await expect.poll(() => status(page)).toMatch(/^NZ27/);
    await page.click("[data-close]");
    expect(await page.locator(".zoom-panel").count()).toBe(0);
    expect(await page.evaluate(() => document.activeElement?.hasAttribute("data-open"))).toBe(true);
    await page.close();
  });

  it("has a page of its own, whose address follows what is seen and leads back to it", async () => {
    const page = await openPage({}, "map/#taxon=buff-tailed&view=visits&at=7.0,-1.610,55.070&square=NZ27");
    await page.waitForSelector('[data-drawn="true"]');
    await expect.poll(() => status(page)).toMatch(/^NZ27: \d+ visits? \(1990–2005 \d+; 2006–2024 \d+\)\.$/);
    expect(await page.locator("[data-taxon]").inputValue()).toBe("buff-tailed");
    expect(await page.locator('input[name="zoom-view"][value="visits"]').isChecked()).toBe(true);
    expect(await page.locator("[data-page]").getAttribute("href")).toBe("/squares/nz27/");
    await page.check('input[name="zoom-view"][value="both"]');
    await expect.poll(() => status(page)).toContain("Buff-tailed bumblebee");
    expect(new URL(page.url()).hash).toBe("#taxon=buff-tailed&view=both&at=7,-1.610,55.070&square=NZ27");
    expect(complaints).toEqual([]);
    await page.close();
  });

  it("speaks the language of the page", async () => {
    const page = await openPage({}, "fr/map/");
    await page.waitForSelector('[data-drawn="true"]');
    expect(await page.locator("[data-view]").textContent()).toMatch(/1990–2005 et 2006–2024\s: noté dans\s\d+\scarré/);
    expect(await page.locator("[data-close]").textContent()).toBe("Fermer cette carte");
    await page.close();
  });

  it("lets the wheel scroll the page, and says how to zoom", async () => {
    const page = await openPage();
    await page.click("[data-open]");
    await page.waitForSelector('[data-drawn="true"]');
    const stage = page.locator(".zoom-canvas");
    await stage.scrollIntoViewIfNeeded();
    const box = await stage.boundingBox();
    await page.mouse.move((box?.x ?? 0) + 60, (box?.y ?? 0) + 60);
    const before = await page.evaluate(() => scrollY);
    await page.mouse.wheel(0, -90);
    await expect.poll(() => page.evaluate(() => scrollY)).toBeLessThan(before);
    expect(await page.locator(".maplibregl-desktop-message").textContent()).toMatch(/^Hold (?:Ctrl|⌘) while you/);
    await page.close();
  });

  it("leaves the printed map and a sentence without scripts, and where a file is missing", async () => {
    const plain = await openPage({ javaScriptEnabled: false });
    expect(await plain.locator("[data-open]").isVisible()).toBe(false);
    expect(await plain.locator(".zoom-map").textContent()).toContain("needs scripts");
    expect(await plain.locator("svg.map").first().isVisible()).toBe(true);
    await plain.close();
    const broken = await browser.newPage();
    await broken.route("**/map/map.json", (route) => route.fulfill({ status: 404 }));
    await broken.goto(`${serving.address}species/red-tailed/`);
    await broken.click("[data-open]");
    await expect.poll(() => broken.locator("[data-trouble]").textContent()).toContain("could not be opened here");
    expect(await broken.locator("[data-open]").isEnabled()).toBe(true);
    await broken.close();
  });
});
