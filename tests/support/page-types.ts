import type { Page } from "playwright-core";

/** One type of page of the whole fixture, in the state a reader brings it to. */
export interface PageType {
  /** Address within the language. */
  readonly path: string;
  /** Which state, where it is another than at first sight. */
  readonly state?: string;
  /** Brings the page to it, or waits until its script has. */
  readonly reach?: (page: Page) => Promise<void>;
  /** What of it needs scripts, and says so without them. */
  readonly needsScripts?: boolean;
}

const seen = (selector: string) => (page: Page) => page.locator(selector).first().waitFor();

async function answerOne(page: Page): Promise<void> {
  await page.locator("input[name=answer]").first().check();
  await page.locator("[data-part=answer]").click();
  await page.locator("[data-part=next]").waitFor();
}

async function find(page: Page): Promise<void> {
  await page.locator("#find").fill("red");
  await page.locator("[role=option]").nth(1).waitFor();
}

async function drawMap(page: Page): Promise<void> {
  await page.locator('[data-drawn="true"]').waitFor({ timeout: 60_000 });
  await page.locator(".zoom-panel details summary").click();
}

/** Every type of page, and the states of those that scripts change. */
export const PAGE_TYPES: readonly PageType[] = [
  { path: "" },
  { path: "species/" },
  { path: "species/by-season/" },
  { path: "species/red-tailed/" },
  { path: "species/terrestris-group/" },
  { path: "species/red-tailed/figures/" },
  { path: "species/garden/figures/" },
  { path: "species/red-tailed/map/" },
  { path: "squares/" },
  { path: "squares/nz27/" },
  { path: "squares/wanted/" },
  { path: "regions/" },
  { path: "regions/north-hills/" },
  { path: "coverage/" },
  { path: "methods/" },
  { path: "downloads/" },
  { path: "about/" },
  { path: "credits/" },
  { path: "design/" },
  {
    path: "narrow/#where=NZ16&when=2026-06-12&tail=red",
    state: "with what is known",
    reach: seen("#narrow-list > li li"),
    needsScripts: true,
  },
  { path: "tell-apart/" },
  { path: "tell-apart/red-tailed+red-tailed-cuckoo/" },
  { path: "tell-apart/red-tailed/" },
  { path: "tell-apart/outside/" },
  { path: "tell-apart/?taxa=red-tailed,garden", state: "chosen freely", reach: seen("#chosen table.compare") },
  { path: "practice/", reach: seen("#practice:not([hidden])"), needsScripts: true },
  { path: "practice/", state: "answered", reach: answerOne },
  { path: "practice/sheet/" },
  { path: "find/", state: "with results", reach: find, needsScripts: true },
  { path: "find/#red", state: "with a list", reach: seen("#find-results a") },
  { path: "in-season/" },
  { path: "take-part/" },
  { path: "take-part/start/" },
  { path: "take-part/start/north-hills/" },
  { path: "map/", state: "open", reach: drawMap, needsScripts: true },
  { path: "offline/" },
  { path: "nowhere/", state: "not found" },
];
