import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Serving, serve } from "../../src/build/serve.ts";
import { launchBrowser } from "../support/browser.ts";
import { type RenderedFixture, renderFixture } from "../support/rendered-fixture.ts";

let rendered: RenderedFixture;
let serving: Serving;
let browser: Browser;

beforeAll(async () => {
  rendered = await renderFixture({ taxa: 6 }, "/");
  serving = await serve({ folder: rendered.folder, port: 0 });
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser?.close();
  await serving?.close();
  rendered?.remove();
});

async function open(path: string, options: Parameters<Browser["newContext"]>[0] = {}): Promise<Page> {
  const page = await (await browser.newContext({ viewport: { width: 360, height: 800 }, ...options })).newPage();
  await page.goto(new URL(path, serving.address).href);
  return page;
}

const field = (page: Page) => page.getByRole("combobox");
const options = (page: Page) => page.getByRole("option");

describe("the field that finds", () => {
  it("offers what a misspelt, half-typed name may mean, says how many, and why each", async () => {
    const page = await open("/");
    await field(page).focus();
    await page.keyboard.type("bourdn des p");
    await options(page).first().waitFor();
    expect(await options(page).allTextContents()).toEqual(
      expect.arrayContaining([expect.stringContaining("also called bourdon des pierres")]),
    );
    expect(await page.locator("[role=option] [lang=fr]").first().textContent()).toBe("bourdon des pierres");
    expect(await field(page).getAttribute("aria-expanded")).toBe("true");
    expect(await page.getByRole("status").first().textContent()).toMatch(/found/);
    await page.context().close();
  });

  it("is worked by keyboard alone: down and up, enter, escape", async () => {
    const page = await open("/");
    await field(page).focus();
    await page.keyboard.type("red");
    await options(page).nth(1).waitFor();
    const active = () => field(page).getAttribute("aria-activedescendant");
    expect(await active()).toBeNull();
    await page.keyboard.press("ArrowDown");
    expect(await active()).toBe("find-list-0");
    expect(await options(page).first().getAttribute("aria-selected")).toBe("true");
    await page.keyboard.press("ArrowUp");
    expect(await active()).toBeNull();
    await page.keyboard.press("ArrowUp");
    expect(await active()).toBe(`find-list-${(await options(page).count()) - 1}`);
    await page.keyboard.press("Escape");
    expect(await options(page).count()).toBe(0);
    expect(await field(page).inputValue()).toBe("red");
    await page.keyboard.press("ArrowDown");
    const first = await options(page).first().locator("b").textContent();
    await Promise.all([page.waitForURL("**/species/*/"), page.keyboard.press("Enter")]);
    expect(await page.locator("h1").textContent()).toContain(first);
    await page.context().close();
  });

  it("goes to what is clearly meant, and lists what may be, without telling the server what was typed", async () => {
    const page = await open("/");
    const asked: string[] = [];
    page.on("request", (request) => asked.push(decodeURIComponent(request.url())));
    await field(page).fill("red");
    await Promise.all([page.waitForURL("**/find/#red"), page.keyboard.press("Enter")]);
    await page.locator("#find-results a").nth(1).waitFor();
    expect(await field(page).inputValue()).toBe("red");
    expect(asked.filter((address) => /[?&]|\/red\b/.test(address.split("#")[0] ?? ""))).toEqual([]);
    await field(page).fill("54.97, -1.62");
    await Promise.all([page.waitForURL("**/squares/nz26/"), page.keyboard.press("Enter")]);
    await page.context().close();
  });

  it("goes from a reference to its square, and from part of a name to its species", async () => {
    const page = await open("/squares/");
    for (const [text, place] of [
      ["nz 2574 7412", "/squares/nz27/"],
      ["NZ27", "/squares/nz27/"],
      ["red tailed bumblebee", "/species/red-tailed/"],
    ] as const) {
      await page.goto(`${serving.address}squares/`);
      await page.fill("#find", text);
      await Promise.all([page.waitForURL(`**${place}`), page.click(".find button")]);
    }
    await page.goto(`${serving.address}squares/`);
    await page.fill("#find", "TQ38");
    await page.click(".find button");
    const said = page.locator(".found");
    await said.filter({ hasText: "No page for TQ38" }).waitFor();
    expect(await said.textContent()).toContain("no land and no record");
    await page.context().close();
  });

  it("says without scripts that it needs them, and where to look", async () => {
    const page = await open("/find/", { javaScriptEnabled: false });
    expect(await field(page).isVisible()).toBe(false);
    expect(
      await page.locator("search a").evaluateAll((links) => links.map((link) => link.getAttribute("href"))),
    ).toEqual(expect.arrayContaining(["/species/", "/squares/", "/methods/"]));
    await page.context().close();
  });
});

describe("what is in season", () => {
  it("is that of today on the home page, which keeps its list where little is", async () => {
    const context = await browser.newContext({ viewport: { width: 1440, height: 800 } });
    const page = await context.newPage();
    for (const [day, heading] of [
      ["2025-07-15T12:00:00", "In season, 11–20 July"],
      ["2025-12-31T12:00:00", "Seasons of the most recorded"],
    ] as const) {
      await page.clock.setFixedTime(new Date(day));
      await page.goto(serving.address);
      const list = page.locator(".in-season");
      await list.locator("h2", { hasText: heading }).waitFor();
      expect(await list.locator("tbody tr:visible").count(), day).toBeGreaterThan(0);
      expect((await list.locator("path.today").count()) > 0, day).toBe(heading.startsWith("In season"));
    }
    await context.close();
  });

  it("stands there without scripts, in twelve months", async () => {
    const page = await open("/in-season/", { javaScriptEnabled: false });
    expect(await page.locator("section.month").count()).toBe(12);
    expect(await page.locator(".in-season tbody tr").count()).toBeGreaterThan(2);
    expect(await page.locator(".season-form").isVisible()).toBe(false);
    await page.context().close();
  });

  it("follows the date that is chosen, by keyboard", async () => {
    const page = await open("/in-season/");
    await page.locator("#season-third").selectOption("19");
    await page.locator(".in-season h2", { hasText: "11–20 July" }).waitFor();
    const summer = await page.locator(".in-season tbody").textContent();
    await page.locator("#season-third").selectOption("10");
    await page.locator(".in-season h2", { hasText: "11–20 April" }).waitFor();
    expect(await page.locator(".in-season tbody").textContent()).not.toBe(summer);
    await page.context().close();
  });
});
