/** Comparisons and practice as a browser shows them: by keyboard, without scripts, and within their weight. */
import { readdirSync, readFileSync, statSync } from "node:fs";
import path from "node:path";
import { brotliCompressSync, gzipSync } from "node:zlib";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Serving, serve } from "../../src/build/serve.ts";
import { launchBrowser } from "../support/browser.ts";
import { type RenderedFixture, renderFixture } from "../support/rendered-fixture.ts";

const PAIR = "tell-apart/red-tailed+red-tailed-cuckoo/";

let rendered: RenderedFixture;
let serving: Serving;
let browser: Browser;

beforeAll(async () => {
  rendered = await renderFixture({ taxa: 6, languages: ["fr"] }, "/");
  serving = await serve({ folder: rendered.folder, port: 0 });
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser?.close();
  await serving?.close();
  rendered?.remove();
});

async function open(address: string, options: Parameters<Browser["newContext"]>[0] = {}): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 1024, height: 900 }, ...options });
  const page = await context.newPage();
  await page.goto(new URL(address, serving.address).href);
  return page;
}
const tableText = (page: Page) => page.locator(".view").first().locator("table.compare").innerHTML();

describe("comparisons", () => {
  it("chosen freely by keyboard are drawn as on their own pages, and keep their address", async () => {
    const page = await open("tell-apart/");
    await page.locator("#choose-first").focus();
    await page.keyboard.type("Red-tailed b");
    await page.keyboard.press("Tab");
    await page.keyboard.type("Red-tailed c");
    for (const key of ["Tab", "Tab", "Tab", "Enter"]) await page.keyboard.press(key);
    await page.locator("#chosen table.compare").first().waitFor();
    expect(new URL(page.url()).search).toBe("?taxa=red-tailed,red-tailed-cuckoo");
    expect(await page.locator(".choose [role=status]").textContent()).toContain("Red-tailed cuckoo");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("chosen");
    const prepared = await open(PAIR);
    expect(await tableText(page)).toBe(await tableText(prepared));
    await page.reload();
    await page.locator("#chosen table.compare").first().waitFor();
    await Promise.all([page.context().close(), prepared.context().close()]);
  });
  it("ask for two different ones", async () => {
    const page = await open("tell-apart/");
    await page.locator(".choose button").click();
    expect(await page.locator(".choose [role=status]").textContent()).not.toBe("");
    await page.context().close();
  });
  it("show one view at a time and the other by its link, without scripts", async () => {
    const page = await open(PAIR, { javaScriptEnabled: false });
    const shown = () => page.locator(".view:visible").evaluateAll((views) => views.map(({ id }) => id));
    expect(await shown()).toEqual(["queen-worker-female"]);
    await page.locator(".view:visible .showing a").click();
    expect(await shown()).toEqual(["male"]);
    expect(await page.locator("#male .say").textContent()).not.toBe("");
    const index = await open("tell-apart/", { javaScriptEnabled: false });
    expect(await index.locator("noscript").count()).toBe(1);
    expect(await index.locator(".choose form").isVisible()).toBe(false);
    await Promise.all([page.context().close(), index.context().close()]);
  });
  it("print on one A4 page", async () => {
    const page = await open("tell-apart/red-tailed/");
    const pdf = await page.pdf({ format: "A4" });
    expect(pdf.toString("latin1").match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    await page.context().close();
  });
});

describe("practice", () => {
  it("is answered, explained and brought back by keyboard alone", async () => {
    const page = await open("practice/");
    await page.locator("#practice:not([hidden])").waitFor();
    const figure = () => page.locator("[data-part=figure] svg").getAttribute("aria-label");
    const first = await figure();
    for (let question = 0; question < 4; question += 1) {
      await page.locator("input[name=answer]").first().focus();
      await page.keyboard.press("Space");
      await page.keyboard.press("Enter");
      expect(await page.locator("[data-part=said]").textContent()).not.toBe("");
      expect(await page.evaluate(() => document.activeElement?.getAttribute("data-part"))).toBe("next");
      if (question < 3) await page.keyboard.press("Enter");
    }
    expect(first).toContain("seen from above");
    const kept = await page.evaluate(() => localStorage.getItem("practice-course"));
    expect(JSON.parse(kept ?? "{}")).toMatchObject({ answered: 4 });
    await page.locator("[data-part=clear]").focus();
    await page.keyboard.press("Enter");
    expect(await page.evaluate(() => localStorage.getItem("practice-course"))).toBeNull();
    await page.context().close();
  });
  it("says without scripts what needs none", async () => {
    const page = await open("practice/", { javaScriptEnabled: false });
    expect(await page.locator("#practice").isVisible()).toBe(false);
    expect(await page.locator("noscript").first().textContent()).toContain("scripts");
    await page.context().close();
    const sheet = await open("practice/sheet/", { javaScriptEnabled: false });
    expect(await sheet.locator(".blanks > li").count()).toBe(await sheet.locator(".answers li").count());
    await sheet.context().close();
  });
});

describe("a page of comparison", () => {
  it("keeps within 60 kB at first view", () => {
    const html = readFileSync(path.join(rendered.folder, "tell-apart/red-tailed/index.html"), "utf8");
    const styles = [...html.matchAll(/href="([^"]+\.css)"/g)].map(([, href = ""]) => path.join(rendered.folder, href));
    const fonts = ["display.woff2", "text.woff2", "display-italic.woff2"].map((name) =>
      path.join(rendered.folder, "fonts", name),
    );
    const weight =
      gzipSync(html).length +
      styles.reduce((sum, file) => sum + gzipSync(readFileSync(file)).length, 0) +
      fonts.reduce((sum, file) => sum + statSync(file).size, 0);
    expect(weight).toBeLessThan(60_000);
    expect(html).not.toMatch(/ style="/);
    expect(brotliCompressSync(html).length).toBeLessThan(12_000);
    expect(readdirSync(path.join(rendered.folder, "fr/tell-apart")).length).toBeGreaterThan(10);
  });
});
