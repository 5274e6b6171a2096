import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it, onTestFinished } from "vitest";
import { type DecisionRow, readDecisions } from "../../../src/scheme/decisions-file.ts";
import { launchBrowser } from "../../support/browser.ts";
import { makeTemporaryFolder } from "../../support/temporary-folder.ts";
import { ALIKE, type OpenedDesk, openTestDesk, UNKNOWN } from "./desk-scheme.ts";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const AGREED = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

let browser: Browser;
beforeAll(async () => {
  browser = await launchBrowser();
});
afterAll(() => browser?.close());

interface OpenedPage extends OpenedDesk {
  page: Page;
  /** Addresses outside the desk that were asked for, and what went wrong in the page. */
  strays: string[];
}

async function openPage({ width = 1440, dark = false }: { width?: number; dark?: boolean } = {}): Promise<OpenedPage> {
  const desk = await openTestDesk(makeTemporaryFolder());
  const page = await browser.newPage({ viewport: { width, height: 900 }, colorScheme: dark ? "dark" : "light" });
  onTestFinished(() => page.close());
  const strays: string[] = [];
  page.on("request", (request) => {
    if (!request.url().startsWith(desk.serving.address) && !request.url().startsWith("data:"))
      strays.push(request.url());
  });
  page.on("pageerror", (error) => strays.push(error.message));
  page.on("console", (said) => {
    if (said.type() === "error") strays.push(said.text());
  });
  await page.goto(desk.serving.address);
  await shown(page);
  return { ...desk, page, strays };
}

/** Waits until the record that is chosen stands there with all its parts. */
async function shown(page: Page): Promise<void> {
  await page.waitForSelector("#map figure", { state: "attached" });
  await page.waitForSelector("#around:not([aria-busy])", { state: "attached" });
}

/** Waits until the file holds so many rows, and gives them. */
async function rowsOf(folder: string, count: number): Promise<DecisionRow[]> {
  await expect.poll(() => readDecisions(folder).length, { timeout: 20_000 }).toBe(count);
  return readDecisions(folder);
}

async function violations(page: Page): Promise<string[]> {
  await page.evaluate(AXE);
  const { violations: found } = await page.evaluate(async (tags) => {
    const { axe } = window as unknown as {
      axe: {
        run(
          options: object,
        ): Promise<{ violations: { id: string; nodes: { html: string; failureSummary: string }[] }[] }>;
      };
    };
    return axe.run({ runOnly: { type: "tag", values: tags } });
  }, AGREED);
  return found.map(
    ({ id, nodes }) => `${id}: ${nodes.map(({ html, failureSummary }) => `${html} ${failureSummary}`).join(" | ")}`,
  );
}

/** Says how to rule on record after record: keys, and what the row then says. */
const WAYS: readonly (readonly [keys: readonly string[], row: Partial<DecisionRow>])[] = [
  [["u"], { ruling: "use" }],
  [["h"], { ruling: "hold" }],
  [["l"], { ruling: "leave out" }],
  [["i", "2", "u"], { ruling: "use", identification: "confirmed on photograph" }],
  [
    ["p", "wing-case", "Enter", "w", "blurred picture, two", "Enter", "h"],
    { ruling: "hold", partSeen: "wing-case", why: "blurred picture, two" },
  ],
  [["r", "second ex", "Enter"], { ruling: "re-identify", value: "Exemplum secundum" }],
];

async function press(page: Page, keys: readonly string[]): Promise<void> {
  for (const key of keys) {
    if (key.length === 1 || key === "Enter") await page.keyboard.press(key);
    else await page.keyboard.type(key);
  }
}

describe("the page of the desk", () => {
  it("takes thirty rulings by keyboard, and takes the last one back", async () => {
    const { page, folder, strays } = await openPage();
    await page.keyboard.press("j");
    for (let done = 0; done < 30; done += 1) {
      await page.waitForSelector("#record:not([aria-busy])");
      await press(page, WAYS[done % WAYS.length]?.[0] ?? []);
    }
    const rows = await rowsOf(folder, 30);
    // The first line is the look of several records; the single ones follow in the order of their file.
    expect(rows.map(({ saidName }) => saidName)).toEqual(UNKNOWN.slice(0, 30));
    rows.forEach((row, index) => expect(row).toMatchObject(WAYS[index % WAYS.length]?.[1] ?? {}));
    expect(rows.every(({ check, recordKey }) => check === "name_unknown" && recordKey.startsWith("example:q"))).toBe(
      true,
    );
    await page.keyboard.press("z");
    const [last] = (await rowsOf(folder, 31)).slice(-1);
    expect(last).toMatchObject({ ruling: "withdraw", value: rows.at(-1)?.decisionID });
    await expect.poll(() => page.textContent("#told")).toContain("Taken back");
    expect(strays).toEqual([]);
  });

  it("rules on a look after saying its filter and count, and takes the batch back", async () => {
    const { page, folder } = await openPage();
    await page.keyboard.press("b");
    await page.waitForSelector("dialog[open]");
    expect(await page.textContent("dialog h2")).toBe(`Rule on ${ALIKE} records at once`);
    expect(await page.textContent("dialog")).toContain("Commune multum");
    await page.keyboard.press("l");
    await page.keyboard.press("Enter");
    const rows = await rowsOf(folder, ALIKE);
    expect(new Set(rows.map(({ ruling, batch, count }) => `${ruling} ${batch} ${count}`))).toEqual(
      new Set([`leave out ${rows[0]?.batch} ${ALIKE}`]),
    );
    await expect.poll(() => page.textContent("#told")).toContain("z takes it back");
    await page.keyboard.press("z");
    expect((await rowsOf(folder, ALIKE + 1)).at(-1)).toMatchObject({ ruling: "withdraw", value: rows[0]?.batch });
  });

  it("unfolds a look to rule on one of its records, corrects, and finds by text", async () => {
    const { page, folder } = await openPage();
    await page.keyboard.press("u");
    expect((await rowsOf(folder, 1))[0]).toMatchObject({ recordKey: "example:g0", batch: "" });
    await page.keyboard.press("/");
    await page.keyboard.type(UNKNOWN[5] ?? "");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.textContent("#record-name")).toBe(UNKNOWN[5]);
    // Neither typed nor chosen: nothing is taken.
    await press(page, ["r", "Enter"]);
    await expect.poll(() => page.textContent("#told")).toContain("nothing was ruled");
    await press(page, ["c", "Exemplum primum", "Enter"]);
    expect((await rowsOf(folder, 2))[1]).toMatchObject({
      ruling: "correct",
      value: "scientificName=Exemplum primum",
      saidName: UNKNOWN[5],
    });
  });

  it("rules on nothing that is not shown yet", async () => {
    const { page, folder } = await openPage();
    await page.keyboard.press("j");
    await page.waitForSelector("#record:not([aria-busy])");
    await page.route("**/api/record/**", async (route) => {
      await new Promise((later) => setTimeout(later, 600));
      await route.continue();
    });
    for (const _ of [1, 2, 3]) await page.keyboard.press("j");
    await page.keyboard.press("u");
    await expect.poll(() => page.textContent("#told")).toContain("nothing was ruled");
    await page.waitForSelector("#record:not([aria-busy])");
    await page.keyboard.press("u");
    expect((await rowsOf(folder, 1))[0]?.saidName).toBe(UNKNOWN[3]);
  });

  it("says what was not written, and leaves the record open", async () => {
    const { page, folder, serving } = await openPage();
    await page.keyboard.press("j");
    await serving.close();
    await page.keyboard.press("u");
    await expect.poll(() => page.textContent("#told"), { timeout: 20_000 }).toContain("Not written");
    expect(readDecisions(folder)).toEqual([]);
    expect(await page.locator(".lines .ruled").count()).toBe(0);
  });

  it("rules by no single letter where that is turned off, and while a field has the focus", async () => {
    const { page, folder } = await openPage();
    await page.keyboard.press("/");
    await page.keyboard.type("u");
    await page.keyboard.press("Escape");
    await page.locator("#who").focus();
    await page.keyboard.type("hul");
    await page.locator(".lines button").first().focus();
    await page.keyboard.press("?");
    await page.getByLabel("single letters rule").uncheck();
    await page.keyboard.press("Enter");
    await page.keyboard.press("u");
    await page.locator(".rulings button", { hasText: "Hold" }).click();
    const rows = await rowsOf(folder, 1);
    expect(rows[0]).toMatchObject({ ruling: "hold", who: "hul" });
  });

  it.each([
    { width: 1440, dark: false },
    { width: 1440, dark: true },
    { width: 360, dark: false },
    { width: 360, dark: true },
  ])("keeps to WCAG 2.2 AA, and needs no sideways scrolling: %o", async (size) => {
    const { page, strays, serving } = await openPage(size);
    const sideways = () => page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(await violations(page)).toEqual([]);
    await page.keyboard.press("j");
    await page.keyboard.press("Enter");
    await shown(page);
    expect(await violations(page)).toEqual([]);
    expect(await sideways()).toBeLessThanOrEqual(0);
    for (const key of ["c", "r", "i", "p", "w", "?"]) {
      await page.keyboard.press(key);
      await page.waitForSelector("dialog[open]");
      expect(await violations(page), key).toEqual([]);
      await page.keyboard.press("Escape");
      await page.waitForSelector("dialog[open]", { state: "detached" });
    }
    await page.goto(`${serving.address}square/british/SK14`);
    await page.waitForSelector("h1");
    expect(await violations(page)).toEqual([]);
    expect(await page.textContent("main")).toContain("example:invented-1");
    expect(await sideways()).toBeLessThanOrEqual(0);
    expect(strays).toEqual([]);
  });
});
