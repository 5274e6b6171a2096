/** Narrow it down in a browser: by keyboard, from an address, with a place refused, and without scripts. */

import { cpSync } from "node:fs";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Serving, serve } from "../../src/build/serve.ts";
import { launchBrowser } from "../support/browser.ts";
import { type RenderedFixture, renderFixture } from "../support/rendered-fixture.ts";

let site: RenderedFixture;
let serving: Serving;
let browser: Browser;
const problems: string[] = [];
const asked: string[] = [];

beforeAll(async () => {
  site = await renderFixture({ taxa: 6, languages: ["fr"] }, "/");
  cpSync(join(site.published, "identify"), join(site.folder, "identify"), { recursive: true });
  serving = await serve({ folder: site.folder, port: 0 });
  browser = await launchBrowser();
}, 240_000);
afterAll(async () => {
  await browser?.close();
  await serving?.close();
  site?.remove();
});

async function open(
  hash = "",
  { path = "narrow/", ...options } = {} as { path?: string; javaScriptEnabled?: boolean; width?: number },
): Promise<Page> {
  const { width = 900, ...context } = options;
  const page = await browser.newPage({ ...context, viewport: { width, height: 900 } });
  page.on("console", (message) => message.type() === "error" && problems.push(message.text()));
  page.on("pageerror", (error) => problems.push(String(error)));
  page.on("request", (request) => asked.push(request.url()));
  await page.goto(`${serving.address}${path}${hash}`);
  if (context.javaScriptEnabled !== false) await page.waitForSelector("#narrow-list > li");
  return page;
}
const listed = (page: Page) => page.locator("#narrow-list > li h3 a").allTextContents();
const said = (page: Page) => page.locator("#narrow-say").textContent();

describe("Narrow it down", () => {
  it("takes an address for what is known, and gives reasons from the tables", async () => {
    const page = await open("#where=NZ16&when=2026-06-12&tail=red");
    expect((await listed(page))[0]).toBe("Red-tailed");
    expect(await said(page)).toMatch(/of 6 remains? likely/);
    const reasons = await page.locator("#narrow-list > li").first().locator("ul li").allInnerTexts();
    expect(reasons.some((text) => text.includes("tail red agrees"))).toBe(true);
    expect(reasons.some((text) => text.includes("recorded in this 10 km square in 2021"))).toBe(true);
    expect(await page.locator("#where").inputValue()).toBe("NZ16");
    await page.close();
  }, 60_000);

  it("folds on a phone to a line a question with what was told, and keeps its sentence in view", async () => {
    const page = await open("#where=NZ16&when=2026-06-12&tail=red", { width: 360 });
    const told = (name: string) => page.locator(`[data-told="${name}"]`).textContent();
    expect([await told("where"), await told("when"), await told("state-tail"), await told("caste")]).toEqual([
      "NZ16",
      "12 June 2026",
      "red",
      "not told",
    ]);
    expect(await page.locator('input[name="when"]').isVisible()).toBe(false);
    await page.locator("details.asked > summary").nth(1).click();
    expect(await page.locator('input[name="when"]').isVisible()).toBe(true);
    const box = await page.locator("#narrow-say").boundingBox();
    expect(box === null ? Number.POSITIVE_INFINITY : box.y + box.height).toBeLessThanOrEqual(900);
    await page.close();
  }, 60_000);

  it("is worked by keyboard alone, writes the address, and hides no candidate", async () => {
    const page = await open("#when=2026-06-12");
    await page.focus("#where");
    await page.keyboard.type("nz 27 45");
    await page.keyboard.press("Enter");
    await page.waitForFunction(
      () =>
        location.hash.includes("where=NZ24") || document.querySelector("#where-status")?.textContent?.includes("NZ24"),
    );
    await page.fill("#where", "NZ 2712 7634");
    await page.keyboard.press("Enter");
    await page.waitForFunction(() => location.hash.includes("where=NZ27"));
    await page.locator('input[name="state-tail"]').first().focus();
    await page.keyboard.press("Space");
    await page.keyboard.press("ArrowRight");
    await page.waitForFunction(() => location.hash.includes("tail="));
    const others = await page.locator("#narrow-others-list > li").count();
    expect((await listed(page)).length + others).toBe(6);
    expect(await page.locator("#narrow-list, #narrow-others").first().textContent()).not.toMatch(
      /implausible|wrong id|correct/i,
    );
    const before = page.url();
    await page.locator("#narrow-next button").first().press("Enter");
    await page.waitForFunction((url) => location.href !== url, before);
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe("narrow-say");
    await page.close();
  }, 60_000);

  it("says in words when the device gives no position, and asks only on pressing the button", async () => {
    const page = await open();
    expect(await page.locator("#where-status").textContent()).toBe("No place: the whole atlas is used.");
    await page.click("#where-position");
    await page.waitForFunction(() =>
      /did not give|could not tell/.test(document.querySelector("#where-status")?.textContent ?? ""),
    );
    await page.close();
  }, 60_000);

  it("turns a position into a square on the device, and sends it nowhere", async () => {
    const context = await browser.newContext({
      permissions: ["geolocation"],
      geolocation: { latitude: 54.978, longitude: -1.617 },
    });
    const page = await context.newPage();
    const sent: string[] = [];
    page.on("request", (request) => sent.push(request.url()));
    await page.goto(`${serving.address}narrow/`);
    await page.waitForSelector("#narrow-list > li");
    await page.click("#where-position");
    await page.waitForFunction(() => location.hash.includes("where=NZ26"));
    expect(sent.filter((url) => /54\.9|NZ26|-1\.6/.test(url))).toEqual([]);
    expect(sent.every((url) => url.startsWith(serving.address))).toBe(true);
    await context.close();
  }, 60_000);

  it("takes a click on the map for a square of it", async () => {
    const page = await open();
    await page.click(".place summary");
    await page.evaluate(() => document.querySelector("#where-map")?.scrollIntoView());
    await page.fill("#where", "NZ27");
    await page.press("#where", "Enter");
    await page.waitForFunction(() => (document.querySelector("#where-mark")?.getAttribute("d") ?? "") !== "");
    const on = async (id: string) => (await page.locator(id).boundingBox()) ?? { x: 0, y: 0, width: 0, height: 0 };
    const [mark, map] = [await on("#where-mark"), await on("#where-map")];
    await page.click("#where-clear");
    await page.waitForFunction(() => !location.hash.includes("where="));
    const moved = await on("#where-map");
    await page.mouse.click(moved.x - map.x + mark.x + mark.width / 2, moved.y - map.y + mark.y + mark.height / 2);
    await page.waitForFunction(() => location.hash.includes("where=NZ27"));
    await page.close();
  }, 60_000);

  it("is in the language of its site", async () => {
    const page = await open("#where=NZ16&tail=red", { path: "fr/narrow/" });
    expect(await said(page)).toMatch(/sur 6 reste/);
    await page.close();
  }, 60_000);

  it("says without scripts that it needs them, and where to go instead", async () => {
    const page = await open("", { javaScriptEnabled: false });
    expect(await page.locator("noscript").textContent()).toMatch(/needs scripts/);
    expect(await page.locator(".narrowing").isVisible()).toBe(false);
    await page.close();
  }, 60_000);

  it("asks its own host alone, and nothing of what was told", () => {
    expect(asked.filter((url) => !url.startsWith(serving.address))).toEqual([]);
    expect(asked.filter((url) => /tail|where|2026/.test(url.split("#")[0] ?? ""))).toEqual([]);
    expect(problems).toEqual([]);
  });
});
