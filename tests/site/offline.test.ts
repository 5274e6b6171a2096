import { readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { writeOffline } from "../../src/build/offline/write-offline.ts";
import { type Serving, serve } from "../../src/build/serve.ts";
import { launchBrowser } from "../support/browser.ts";
import { type RenderedFixture, renderFixture } from "../support/rendered-fixture.ts";

let rendered: RenderedFixture;
let serving: Serving;
let browser: Browser;
beforeAll(async () => {
  rendered = await renderFixture({ taxa: 3, languages: ["fr"] }, "/atlas/");
  writeOffline(rendered.folder, ["fr"], "1");
  serving = await serve({ folder: rendered.folder, port: 0, base: "/atlas/" });
  browser = await launchBrowser();
}, 240_000);
afterAll(async () => {
  await browser?.close();
  await serving?.close();
  rendered?.remove();
});

/** Opens a page, and waits until everything of its language is kept. */
async function visited(context: BrowserContext, path: string): Promise<Page> {
  const page = await context.newPage();
  await page.goto(serving.address + path);
  const folder = path.startsWith("fr/") ? "fr/" : "";
  await expect
    .poll(
      () =>
        page.evaluate(
          async (url) => (await caches.match(url)) !== undefined,
          `${serving.address}${folder}offline.json`,
        ),
      {
        timeout: 20_000,
      },
    )
    .toBe(true);
  return page;
}

const heading = (page: Page) => page.locator("h1").first().textContent();

describe("without a network", () => {
  it("visited pages, accounts and the pages of the field open, and others say that they are not kept", async () => {
    const context = await browser.newContext();
    const complaints: string[] = [];
    context.on("console", (message) => void (message.type() === "error" && complaints.push(message.text())));
    const page = await visited(context, "squares/nz27/");
    expect(complaints).toEqual([]);
    await context.setOffline(true);
    for (const [path, words] of [
      ["squares/nz27/", "NZ27"],
      ["species/red-tailed/", "Red-tailed"],
      ["squares/nz28/", "Without a network"],
    ] as const) {
      await page.goto(serving.address + path);
      expect(await heading(page), path).toContain(words);
    }
    await context.close();
  }, 60_000);
  it("a further language has its own", async () => {
    const context = await browser.newContext();
    const page = await visited(context, "fr/squares/nz27/");
    await context.setOffline(true);
    await page.goto(`${serving.address}fr/squares/nz28/`);
    expect(await heading(page)).toBe("Sans réseau");
    await context.close();
  }, 60_000);
});

describe("a newer edition", () => {
  it("is announced and not forced, and its pages take the place of the kept ones", async () => {
    const context = await browser.newContext();
    const style = join(rendered.folder, "_astro/earlier.css");
    writeFileSync(style, "p{color:inherit}");
    writeOffline(rendered.folder, ["fr"], "1");
    const page = await visited(context, "species/red-tailed/");
    expect(await page.locator("#newer").isVisible()).toBe(false);
    const file = join(rendered.folder, "species/buff-tailed/index.html");
    const before = readFileSync(file, "utf8");
    try {
      writeFileSync(file, before.replace(/<h1>[^<]*/, "<h1>Changed account"));
      rmSync(style);
      writeOffline(rendered.folder, ["fr"], "2");
      await page.goto(`${serving.address}species/red-tailed/`);
      await page.locator("#newer").waitFor({ state: "visible", timeout: 20_000 });
      await context.setOffline(true);
      await page.goto(`${serving.address}species/buff-tailed/`);
      expect(await heading(page)).toBe("Changed account");
      // A page that was visited in the earlier edition still has its style.
      expect(
        await page.evaluate(async (url) => (await fetch(url)).text(), `${serving.address}_astro/earlier.css`),
      ).toBe("p{color:inherit}");
    } finally {
      writeFileSync(file, before);
      writeOffline(rendered.folder, ["fr"], "1");
      await context.close();
    }
  }, 60_000);
});

describe("clearing the device", () => {
  it("removes what this atlas keeps, and leaves what other sites of the host keep", async () => {
    const context = await browser.newContext();
    const page = await visited(context, "offline/");
    await page.evaluate(async () => void (await caches.open("core-1 /another/")));
    await page.locator("#visited button").click();
    await page.locator("#visited .cleared").filter({ hasText: /./ }).waitFor();
    expect(await page.evaluate(() => caches.keys())).toEqual(["core-1 /another/"]);
    await context.close();
  }, 60_000);
});
