import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { numberOfPages, pagesOfPlaces } from "../../../src/build/book/pdf-places.ts";
import { writeBook } from "../../../src/build/book/write-book.ts";
import { printingBrowser } from "../../support/browser.ts";
import { type RenderedFixture, renderFixture } from "../../support/rendered-fixture.ts";

let rendered: RenderedFixture;
let file: string;
let pages: number;
beforeAll(async () => {
  rendered = await renderFixture({ taxa: 4, languages: ["fr"] }, "/atlas/");
  file = join(rendered.folder, "..", "book.pdf");
  pages = await writeBook({ atlas: rendered.folder, base: "/atlas/", file, browser: await printingBrowser() });
}, 240_000);
afterAll(() => rendered?.remove());

describe("the printed book", () => {
  it("gives each account two pages, beside title, contents, texts, methods and index", () => {
    const places = pagesOfPlaces(readFileSync(file));
    const starts = [...places].filter(([name]) => /^chapter-\d+$/.test(name)).map(([, page]) => page);
    expect(numberOfPages(readFileSync(file))).toBe(pages);
    expect(starts).toEqual([...starts].sort((one, other) => one - other));
    expect(new Set(starts).size).toBe(starts.length);
    const accounts = starts.slice(1, 5);
    expect(accounts.slice(1).map((page, index) => page - (accounts[index] ?? 0))).toEqual([2, 2, 2]);
    expect(places.get("index-of-names")).toBe(pages);
  });
  it("is the same bytes when printed again", async () => {
    const first = readFileSync(file);
    const again = join(rendered.folder, "..", "again.pdf");
    await writeBook({ atlas: rendered.folder, base: "/atlas/", file: again, browser: await printingBrowser() });
    expect(readFileSync(again).equals(first)).toBe(true);
  }, 120_000);
  it("is printed in a further language, and refuses one that is not there", async () => {
    const french = join(rendered.folder, "..", "livre.pdf");
    const browser = await printingBrowser();
    await writeBook({ atlas: rendered.folder, base: "/atlas/", language: "fr", file: french, browser });
    expect(readFileSync(french, "latin1")).toContain("/Lang (fr)");
    await expect(
      writeBook({ atlas: rendered.folder, base: "/atlas/", language: "cy", file: french, browser }),
    ).rejects.toThrow(/--language.*cy/);
    await expect(writeBook({ atlas: "/nowhere", base: "/", file: french, browser })).rejects.toThrow(/holds no atlas/);
  }, 120_000);
});
