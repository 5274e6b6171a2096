import { readFileSync } from "node:fs";
import { createServer, type Server } from "node:http";
import { createRequire } from "node:module";
import path from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { launchBrowser } from "../support/browser.ts";
import { type RenderedFixture, renderFixture } from "../support/rendered-fixture.ts";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const TYPES: Record<string, string> = {
  ".html": "text/html",
  ".css": "text/css",
  ".js": "text/javascript",
  ".json": "application/json",
  ".svg": "image/svg+xml",
  ".woff2": "font/woff2",
};
const PAGES = [
  "/",
  "/species/",
  "/species/red-tailed/",
  "/species/common-carder/",
  "/species/red-tailed/figures/",
  "/species/garden/figures/",
  "/squares/",
  "/squares/nz27/",
  "/methods/",
  "/downloads/",
  "/about/",
  "/find/",
  "/in-season/",
  "/take-part/",
  "/take-part/start/",
];

let rendered: RenderedFixture;
let server: Server;
let browser: Browser;
let origin = "";

beforeAll(async () => {
  rendered = await renderFixture({ taxa: 6 }, "/");
  const { folder } = rendered;
  server = createServer((request, answer) => {
    const asked = path.join(folder, path.normalize(new URL(request.url ?? "/", "http://here").pathname));
    const file = asked.endsWith(path.sep) ? path.join(asked, "index.html") : asked;
    try {
      const body = readFileSync(file);
      answer.setHeader("Content-Type", TYPES[path.extname(file)] ?? "application/octet-stream");
      answer.end(body);
    } catch {
      answer.statusCode = 404;
      answer.end();
    }
  });
  await new Promise<void>((done) => server.listen(0, "127.0.0.1", done));
  const place = server.address();
  origin = `http://127.0.0.1:${place !== null && typeof place === "object" ? place.port : 0}`;
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser?.close();
  server?.close();
  rendered?.remove();
});

/** Opens a page and gives what the browser complained of. */
async function open(address: string, width: number, colorScheme: "light" | "dark") {
  const context = await browser.newContext({ viewport: { width, height: 800 }, colorScheme });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on("console", (message) => void (message.type() === "error" && complaints.push(message.text())));
  page.on(
    "request",
    (request) => void (!request.url().startsWith(origin) && complaints.push(`asked ${request.url()}`)),
  );
  await page.goto(origin + address);
  return { context, page, complaints };
}

describe("pages in a browser", () => {
  it.each([
    [360, "light"],
    [1440, "dark"],
  ] as const)(
    "break no rule of WCAG 2.2 A and AA, as far as axe-core can tell, at %i px, %s",
    async (width, scheme) => {
      for (const address of PAGES) {
        const { context, page, complaints } = await open(address, width, scheme);
        // The page's own policy forbids injected scripts; the debugger's channel is not bound by it.
        await page.evaluate(AXE);
        const found = (await page.evaluate(
          "axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] }).then(({ violations }) => violations.map(({ id, nodes }) => id + ': ' + nodes.slice(0, 3).map(({ html }) => html.slice(0, 160)).join(' | ')))",
        )) as string[];
        expect(found, `${address} ${width} ${scheme}`).toEqual([]);
        expect(complaints, address).toEqual([]);
        await context.close();
      }
    },
  );
  it("scroll sideways at no width", async () => {
    for (const address of PAGES) {
      const { context, page } = await open(address, 320, "light");
      for (const width of [320, 360, 768]) {
        await page.setViewportSize({ width, height: 800 });
        const wide = await page.evaluate(() => document.documentElement.scrollWidth);
        expect(wide, `${address} at ${width}`).toBeLessThanOrEqual(width);
      }
      await context.close();
    }
  });
  it("go from a reference to its square, and from part of a name to its species", async () => {
    const { context, page } = await open("/squares/", 1440, "light");
    for (const [text, place] of [
      ["nz 2574 7412", "/squares/nz27/"],
      ["NZ27", "/squares/nz27/"],
      ["red tailed bumblebee", "/species/red-tailed/"],
    ] as const) {
      await page.goto(`${origin}/squares/`);
      await page.fill("#find", text);
      await Promise.all([page.waitForURL(`**${place}`), page.click(".find button")]);
    }
    await page.goto(`${origin}/squares/`);
    await page.fill("#find", "TQ38");
    await page.click(".find button");
    const said = page.locator(".found");
    await said.filter({ hasText: "No page for TQ38" }).waitFor();
    expect(await said.textContent()).toContain("no land and no record");
    await context.close();
  });
  it("show what is in season today, and keep the list where little is", async () => {
    const context = await browser.newContext({ viewport: { width: 1440, height: 800 } });
    const page = await context.newPage();
    for (const [day, heading] of [
      ["2025-07-15T12:00:00", "In season, 11–20 July"],
      ["2025-12-31T12:00:00", "Seasons of the most recorded"],
    ] as const) {
      await page.clock.setFixedTime(new Date(day));
      await page.goto(origin);
      const list = page.locator(".in-season");
      await list.locator("h2", { hasText: heading }).waitFor();
      expect(await list.locator("tbody tr:visible").count(), day).toBeGreaterThan(0);
      expect((await list.locator("path.today").count()) > 0, day).toBe(heading.startsWith("In season"));
    }
    await context.close();
  });
});
