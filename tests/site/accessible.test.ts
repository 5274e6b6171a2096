/** Every type of page in a browser: for everybody, at every width, with and without scripts. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { PAGE_TYPES, type PageType } from "../support/page-types.ts";
import { type ServedFixture, serveFixture } from "../support/served-fixture.ts";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22a", "wcag22aa", "best-practice"];
/** In French a sample: words of other lengths, and of two languages on a page. */
const FRENCH =
  /^(?:$|species\/(?:red-tailed\/)?$|squares\/nz27|regions\/|methods|downloads|narrow|tell-apart\/red|map)/;
/** Fewer words than the shortest page of a scheme's own has. */
const LEAST_WORDS = 8;
const SLOW = 400_000;

let site: ServedFixture;
beforeAll(async () => {
  site = await serveFixture(["fr"]);
}, SLOW);
afterAll(() => site?.end());

const nameOf = ({ path, state = "" }: PageType, tag = "") => `${tag}${path} ${state}`.trim();
const inEnglish = PAGE_TYPES.map((type) => ({ type, tag: "" }));
const inFrench = PAGE_TYPES.filter(({ path }) => FRENCH.test(path)).map((type) => ({ type, tag: "fr/" }));
/** Pages as they are sent: without scripts no state is another. */
const sent = [...new Map(inEnglish.map((one) => [one.type.path.replace(/[?#].*/, ""), one])).values()];

/** What the browser complained of, and what it asked another host for. */
function complaintsOf(page: Page, { path }: PageType): string[] {
  const complaints: string[] = [];
  const missing = path === "nowhere/";
  page.on("console", (message) => {
    if (message.type() === "error" && !(missing && message.text().includes("404"))) complaints.push(message.text());
  });
  page.on("pageerror", (error) => complaints.push(String(error)));
  page.on("request", (request) => {
    if (![site.address, "data:", "blob:"].some((own) => request.url().startsWith(own)))
      complaints.push(`asked ${request.url()}`);
  });
  return complaints;
}

/** Violations of WCAG 2.2 A and AA and of what is good practice, as far as axe-core can tell. */
async function violations(page: Page): Promise<string[]> {
  // The page's own policy forbids injected scripts; the debugger's channel is not bound by it.
  await page.evaluate(AXE);
  const found = await page.evaluate(
    `axe.run(document, { runOnly: ${JSON.stringify(RULES)}, resultTypes: ["violations"], preload: false, iframes: false }).then(({ violations }) => violations.map(({ id, nodes }) => id + ": " + nodes.slice(0, 3).map(({ html }) => html.slice(0, 160)).join(" | ")))`,
  );
  return found as string[];
}

describe("every type of page", () => {
  it.each([
    [360, "light"],
    [1440, "dark"],
  ] as const)(
    "breaks no rule, complains of nothing, asks nobody else and never scrolls sideways, at %i px, %s",
    async (width, colorScheme) => {
      const viewport = { width, height: 800 };
      const context = await site.browser.newContext({ viewport, colorScheme, serviceWorkers: "block" });
      const faults: Record<string, string[]> = {};
      for (const { type, tag } of width === 360 ? [...inEnglish, ...inFrench] : inEnglish) {
        const page = await context.newPage();
        const complaints = complaintsOf(page, type);
        await page.goto(site.address + tag + type.path);
        await type.reach?.(page);
        const found = [...(await violations(page)), ...complaints];
        for (const narrow of width === 360 ? [360, 320] : [width]) {
          await page.setViewportSize({ width: narrow, height: 800 });
          const wide = await page.evaluate(() => document.documentElement.scrollWidth);
          if (wide > narrow) found.push(`${wide} px wide at ${narrow}`);
        }
        if (found.length > 0) faults[nameOf(type, tag)] = found;
        await page.close();
      }
      await context.close();
      expect(faults).toEqual({});
    },
    SLOW,
  );
});

describe("without scripts", () => {
  it(
    "every page has its contents, and what needs scripts says so and leads on",
    async () => {
      const context = await site.browser.newContext({ javaScriptEnabled: false });
      const faults: Record<string, string[]> = {};
      for (const { type } of sent) {
        const page = await context.newPage();
        await page.goto(site.address + type.path);
        const found = await missingIn(page);
        if (type.needsScripts === true) found.push(...(await silentIn(page)));
        if (found.length > 0) faults[nameOf(type)] = found;
        await page.close();
      }
      await context.close();
      expect(faults).toEqual({});
    },
    SLOW,
  );
});

/** What stands empty to the eye: a page of next to nothing, a section, list or table without anything. */
function missingIn(page: Page): Promise<string[]> {
  return page.evaluate((least) => {
    const main = document.querySelector("main");
    // biome-ignore lint/performance/useDomNodeTextContent: only what is seen counts.
    const words = (main?.innerText ?? "").trim().split(/\s+/).length;
    const parts = [...(main?.querySelectorAll<HTMLElement>("section, table, ol, ul, figure") ?? [])];
    const empty = parts.filter(
      (part) =>
        part.offsetHeight > 0 && (part.textContent ?? "").trim() === "" && part.querySelector("svg, img") === null,
    );
    return [
      ...(words < least ? [`${words} words`] : []),
      ...empty.map((part) => `empty: ${part.outerHTML.slice(0, 90)}`),
    ];
  }, LEAST_WORDS);
}

/** Says that it needs scripts, and has a link to another page of the atlas. */
function silentIn(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const main = document.querySelector("main");
    const said = [...(main?.querySelectorAll<HTMLElement>("noscript, .zoom-map") ?? [])];
    const links = [...(main?.querySelectorAll("a[href^='/']") ?? [])].filter((link) => link.checkVisibility());
    return [
      ...(said.some((part) => /scripts/.test(part.textContent ?? "")) ? [] : ["does not say that it needs scripts"]),
      ...(links.length > 0 ? [] : ["leads nowhere"]),
    ];
  });
}
