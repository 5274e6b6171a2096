import { chromium } from "playwright-core";
import { describe, expect, it } from "vitest";
import { launchBrowser, packedBrowser } from "./browser.ts";

const DRAWS_WEBGL = 'document.createElement("canvas").getContext("webgl2") !== null';

describe("launchBrowser", () => {
  it("starts a browser that draws WebGL", async () => {
    const browser = await launchBrowser();
    const page = await browser.newPage();
    expect(await page.evaluate(DRAWS_WEBGL)).toBe(true);
    await browser.close();
  });
});

describe.runIf(process.platform === "linux" && process.arch === "x64")("packedBrowser", () => {
  it("starts, draws WebGL and has a font", async () => {
    const browser = await chromium.launch({
      args: ["--use-angle=swiftshader", "--enable-unsafe-swiftshader"],
      ...(await packedBrowser()),
    });
    const page = await browser.newPage();
    expect(await page.evaluate(DRAWS_WEBGL)).toBe(true);
    await page.setContent(
      '<span style="font: 40px sans-serif">iiiii</span><br><span style="font: 40px sans-serif">WWWWW</span>',
    );
    const widths = await page
      .locator("span")
      .evaluateAll((spans) => spans.map((span) => span.getBoundingClientRect().width));
    expect(widths[1]).toBeGreaterThan(2 * Number(widths[0]));
    await browser.close();
  });
});
