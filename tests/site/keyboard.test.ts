/**
 * The parts that answer a reader, worked by keys alone: what has the focus is seen, and what came of a key is announced.
 * What each part does with each key is held by its own tests; here is the way through them.
 */
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type ServedFixture, serveFixture } from "../support/served-fixture.ts";

const SLOW = 240_000;
/** More presses of Tab than any of these pages asks for. */
const MOST_TABS = 120;
const THINNEST_PX = 2;

let site: ServedFixture;
beforeAll(async () => {
  site = await serveFixture([]);
}, SLOW);
afterAll(() => site?.end());

async function open(address: string): Promise<Page> {
  const context = await site.browser.newContext({
    viewport: { width: 1024, height: 800 },
    reducedMotion: "reduce",
    serviceWorkers: "block",
  });
  const page = await context.newPage();
  await page.goto(site.address + address);
  return page;
}

/** Whether what has the focus can be seen to have it: on the screen, not covered, within an outline of its own. */
function focusFault(page: Page): Promise<string> {
  return page.evaluate((thinnest) => {
    const element = document.activeElement as HTMLElement;
    const { left, top, width, height } = element.getBoundingClientRect();
    const name = element.outerHTML.slice(0, 100);
    // The button within a field for a date is the browser's own, with a ring of its own.
    if (element.matches("input[type=date]:not(:focus-visible)")) return "";
    const outlined = [element, element.closest("label"), element.parentElement].some((one) => {
      if (one === null) return false;
      const { outlineStyle, outlineWidth } = getComputedStyle(one);
      return outlineStyle !== "none" && Number.parseFloat(outlineWidth) >= thinnest;
    });
    if (!outlined) return `no outline: ${name}`;
    if (width * height === 0 || top + height <= 0 || top >= innerHeight) return `not on the screen: ${name}`;
    const at = document.elementFromPoint(
      Math.min(Math.max(left + width / 2, 0), innerWidth - 1),
      Math.min(Math.max(top + Math.min(height, 20) / 2, 0), innerHeight - 1),
    );
    const seen = at === null || element.contains(at) || at.contains(element) || at.closest("label")?.contains(element);
    return seen === false || seen === undefined ? `covered: ${name}` : "";
  }, THINNEST_PX);
}

/** Presses Tab until what is looked for has the focus; everything on the way is to be seen focused too. */
async function tabTo(page: Page, selector: string): Promise<void> {
  const faults: string[] = [];
  for (let press = 0; press < MOST_TABS; press += 1) {
    await page.keyboard.press("Tab");
    const fault = await focusFault(page);
    if (fault !== "") faults.push(fault);
    if (await page.evaluate((wanted) => document.activeElement?.matches(wanted) ?? false, selector)) {
      expect(faults).toEqual([]);
      return;
    }
  }
  throw new Error(`${selector} is not reached by Tab`);
}

const announced = (page: Page, selector: string) => page.locator(`${selector}:is([role=status], [role=status] *)`);
const focused = (page: Page, selector: string) =>
  page.evaluate((wanted) => document.activeElement?.matches(wanted) ?? false, selector);

describe("by keys alone", () => {
  it("the first Tab of a page leads past its head", async () => {
    const page = await open("species/red-tailed/");
    await page.keyboard.press("Tab");
    expect(await focusFault(page)).toBe("");
    await page.keyboard.press("Enter");
    await page.keyboard.press("Tab");
    expect(await page.evaluate(() => document.activeElement?.closest("main") !== null)).toBe(true);
    await page.context().close();
  });

  it(
    "a name is searched for, chosen and opened",
    async () => {
      const page = await open("find/");
      await tabTo(page, "#find");
      await page.keyboard.type("gardn");
      await page.locator("[role=option]").first().waitFor();
      await expect.poll(() => announced(page, ".found").textContent()).toBe("One found.");
      await page.keyboard.press("ArrowDown");
      expect(await page.locator("[role=option][aria-selected=true]").count()).toBe(1);
      await Promise.all([page.waitForURL("**/species/garden/"), page.keyboard.press("Enter")]);
      await page.context().close();
    },
    SLOW,
  );

  it(
    "what is known of an insect is told, and the list answers",
    async () => {
      const page = await open("narrow/");
      await page.locator("#narrow-list > li").first().waitFor();
      const before = await announced(page, "#narrow-say").textContent();
      await tabTo(page, "#where");
      await page.keyboard.type("NZ27");
      await page.keyboard.press("Enter");
      await page.waitForFunction(() => location.hash.includes("where=NZ27"));
      await tabTo(page, "[name='state-tail']");
      await page.keyboard.press("ArrowDown");
      await page.waitForFunction(() => location.hash.includes("tail="));
      await expect.poll(() => announced(page, "#narrow-say").textContent()).not.toBe(before);
      await tabTo(page, "#narrow-next button");
      await page.keyboard.press("Enter");
      await expect.poll(() => focused(page, "#narrow-say")).toBe(true);
      await tabTo(page, "#narrow-list a");
      await Promise.all([page.waitForURL("**/species/*/"), page.keyboard.press("Enter")]);
      await page.context().close();
    },
    SLOW,
  );

  it(
    "two are chosen and set side by side",
    async () => {
      const page = await open("tell-apart/");
      await tabTo(page, "#choose-first");
      await page.keyboard.type("Garden");
      await page.keyboard.press("Tab");
      await page.keyboard.type("Red-tailed b");
      await tabTo(page, ".choose button");
      await page.keyboard.press("Enter");
      await page.locator("#chosen table.compare").first().waitFor();
      expect(await focused(page, "#chosen")).toBe(true);
      expect(await announced(page, ".choose [role=status]").textContent()).toContain("Garden");
      await tabTo(page, "#chosen a");
      await page.context().close();
    },
    SLOW,
  );

  it(
    "a question of the practice is answered, and the next one asked",
    async () => {
      const page = await open("practice/");
      await page.locator("#practice:not([hidden])").waitFor();
      await tabTo(page, "input[name=answer]");
      await page.keyboard.press("ArrowDown");
      await tabTo(page, "[data-part=answer]");
      await page.keyboard.press("Enter");
      await expect.poll(() => announced(page, "[data-part=said]").textContent()).not.toBe("");
      expect(await focused(page, "[data-part=next]")).toBe(true);
      expect(await focusFault(page)).toBe("");
      await page.keyboard.press("Enter");
      await expect.poll(() => page.locator("[data-part=next]").isVisible()).toBe(false);
      await tabTo(page, "[data-part=clear]");
      await page.context().close();
    },
    SLOW,
  );

  it(
    "the map is opened, moved, asked of a square and closed",
    async () => {
      const page = await open("species/red-tailed/");
      await tabTo(page, "[data-open]");
      await page.keyboard.press("Enter");
      await page.locator('[data-drawn="true"]').waitFor({ timeout: 60_000 });
      const told = announced(page, "[data-square]");
      await tabTo(page, "[data-taxon]");
      await page.keyboard.press("ArrowDown");
      await expect.poll(() => announced(page, "[data-view]").textContent()).not.toBe("");
      await tabTo(page, ".zoom-canvas canvas");
      await page.keyboard.press("ArrowRight");
      await page.keyboard.press("Enter");
      await expect.poll(() => told.textContent()).not.toBe("");
      await tabTo(page, "[data-do=in]");
      await page.keyboard.press("Enter");
      await tabTo(page, "[data-code]");
      await page.keyboard.type("nz 27");
      await page.keyboard.press("Enter");
      await expect.poll(() => told.textContent()).toMatch(/^NZ27/);
      await tabTo(page, "[data-close]");
      await page.keyboard.press("Enter");
      expect(await page.locator(".zoom-panel").count()).toBe(0);
      expect(await focused(page, "[data-open]")).toBe(true);
      await page.context().close();
    },
    SLOW,
  );
});
