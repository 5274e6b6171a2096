import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Serving, serve } from "../../src/build/serve.ts";
import { launchBrowser } from "../support/browser.ts";
import { FIXTURE_TAXA } from "../support/published/fixture-taxa.ts";
import { type RenderedFixture, renderFixture } from "../support/rendered-fixture.ts";

let site: RenderedFixture;
let served: Serving;
let browser: Awaited<ReturnType<typeof launchBrowser>>;

beforeAll(async () => {
  // As many taxa as a field card holds.
  const list = Array.from({ length: 28 }, (_, index) => {
    const taxon = FIXTURE_TAXA[index % FIXTURE_TAXA.length] as (typeof FIXTURE_TAXA)[number];
    return { ...taxon, slug: `${taxon.slug}-${index}` };
  });
  site = await renderFixture({ list }, "/");
  served = await serve({ folder: site.folder, port: 0 });
  browser = await launchBrowser();
}, 240_000);
afterAll(async () => {
  await browser.close();
  await served.close();
  site.remove();
});

describe("a square on paper", () => {
  it("is a page of A4, and its field card another", async () => {
    const page = await browser.newPage();
    await page.goto(`${served.address}squares/nz27/`);
    const pdf = (await page.pdf({ preferCSSPageSize: true, printBackground: true })).toString("latin1");
    expect(pdf.match(/\/Type\s*\/Page[^s]/g)?.length).toBe(2);
    await page.close();
  }, 60_000);

  it("has boxes to tick for every caste in words, and no sideways scroll at 320 px", async () => {
    const page = await browser.newPage({ viewport: { width: 320, height: 700 } });
    await page.goto(`${served.address}squares/nz27/`);
    await page.locator("#card summary").click();
    expect(await page.locator("#card thead .box").allTextContents()).toContain("Queen");
    expect(await page.evaluate("document.documentElement.scrollWidth")).toBe(320);
    await page.close();
  }, 60_000);
});
