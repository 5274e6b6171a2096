import { describe, expect, it } from "vitest";
import { chapterOf, placedStyles, shapesOf, stylesOf } from "../../../src/build/book/chapter.ts";

const page = (main: string) => `<html><body><main id="main">${main}</main><footer>foot</footer></body></html>`;
const chapters = new Map([["/species/garden/", "chapter-2"]]);
const made = (main: string) => chapterOf(page(main), "c1", chapters, "/species/red-tailed/").html;

describe("a chapter", () => {
  it("has ids of its own, and everything that points at them follows", () => {
    expect(
      made(
        '<svg aria-labelledby="a b"><title id="a">A</title><desc id="b">B</desc><use href="#a"/><path fill="url(#a)"/></svg>',
      ),
    ).toBe(
      '<svg aria-labelledby="c1-a c1-b"><title id="c1-a" data-place="a">A</title><desc id="c1-b" data-place="b">B</desc><use href="#c1-a"/><path fill="url(#c1-a)"/></svg>',
    );
  });
  it("leaves what points at shapes of the whole page", () => {
    expect(made('<use href="#bee-T1"/>')).toBe('<use href="#bee-T1"/>');
  });
  it("leads to other chapters, and nowhere else on the site", () => {
    expect(made('<a href="/species/garden/">Garden</a>')).toBe('<a href="#chapter-2">Garden</a>');
    expect(made('<a class="x" href="/squares/">Squares</a>')).toBe('<a class="x">Squares</a>');
    expect(made('<a href="https://example.org/">out</a>')).toBe('<a href="https://example.org/">out</a>');
    expect(made('<a href="../garden/#when">Garden</a>')).toBe('<a href="#chapter-2">Garden</a>');
  });
  it("has no script, and nothing outside the main part", () => {
    expect(made('<p>a</p><script type="module">x</script><noscript>n</noscript>')).toBe("<p>a</p>");
    expect(() => chapterOf("<body></body>", "c1", chapters, "/")).toThrow("chapter c1");
  });
});

describe("the styles of a chapter", () => {
  it("know an element by its place, and keep colours", () => {
    expect(placedStyles("@media print{#where .map,a#use{color:#fff}}@page{margin:0}")).toBe(
      '@media print{[data-place="where"] .map,a[data-place="use"]{color:#fff}}@page{margin:0}',
    );
  });
  it("and its shared shapes are found", () => {
    expect(stylesOf('<link rel="stylesheet" href="/a.css"><link rel="preload" href="/b.woff2">')).toEqual(["/a.css"]);
    expect(
      shapesOf('<body><a class="skip">s</a><svg class="shapes"><defs/></svg><div class="wrap"><svg/></div>'),
    ).toEqual(['<svg class="shapes"><defs/></svg>']);
  });
});
