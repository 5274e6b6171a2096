import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { prepareDrawing } from "../../../src/publishing/media/drawings.ts";

const SVG = 'xmlns="http://www.w3.org/2000/svg" viewBox="0 0 48 36"';
function drawn(inside: string, attributes = ""): string {
  const prepared = prepareDrawing(
    Buffer.from(`<?xml version="1.0"?><!-- made with SECRET --><svg ${SVG} ${attributes}>${inside}</svg>`),
  );
  return "found" in prepared ? `refused: ${prepared.found}` : (prepared.files[0]?.bytes.toString() ?? "");
}

describe("prepareDrawing", () => {
  it("keeps shapes, words, gradients and colours for the dark", () => {
    const inside =
      '<style>.a{fill:#000}@media (prefers-color-scheme:dark){.a{fill:#fff}}</style><defs><path id="p" d="M0 0h9"/></defs><g class="a" clip-path="url(#c)"><use href="#p"/><text x="1">a &amp; b</text></g>';
    expect(drawn(inside)).toBe(
      `<svg ${SVG}>${inside}</svg>\n`.replace("/></defs>", "></path></defs>").replace("/><text", "></use><text"),
    );
  });
  it("keeps a style sheet in a section of characters, as drawing programs write it", () => {
    expect(drawn("<style><![CDATA[.a{fill:#000}]]></style>")).toContain("<style>.a{fill:#000}</style>");
  });
  // The ways a drawing can run or fetch something (OWASP, SVG and XSS): none may be left.
  it.each([
    ["<script>alert(1)</script>"],
    ['<g onload="alert(1)" onclick="a()"/>'],
    ['<image href="https://example.org/a.png"/>'],
    ['<use href="https://example.org/a.svg#b"/>'],
    ['<use xlink:href="data:image/svg+xml;base64,AA"/>'],
    ['<a href="javascript:alert(1)"><path d="M0 0"/></a>'],
    ['<foreignObject><iframe src="https://example.org"/></foreignObject>'],
    ['<path fill="url(https://example.org/a)" d="M0 0"/>'],
    ['<path style="background:url(https://example.org/a)" d="M0 0"/>'],
    ["<style>@import 'https://example.org/a.css';</style>"],
    ["<style>.a{fill:u\\72l(https://example.org)}</style>"],
    // Harmless piece by piece.
    ["<style>@imp<!-- -->ort 'https://example.org/a.css';</style>"],
    ["<style>.a{fill:u<g/>rl(https://example.org)}</style>"],
    ["<style>.a{fill:u<![CDATA[rl(https://example.org)}]]></style>"],
    // CSS is read in attributes too, with its escapes (CSS Syntax 3, 4.3.7) and its other functions that fetch.
    ['<path fill="u\\72l(https://example.org/a)" d="M0 0"/>'],
    [`<path mask="image-set('https://example.org/a' 1x)" d="M0 0"/>`],
    ['<animate attributeName="href" to="javascript:alert(1)"/><set attributeName="onload" to="x"/>'],
    ["<metadata>SECRET</metadata><sodipodi:namedview>SECRET</sodipodi:namedview>"],
  ])("leaves out %s", (inside) => {
    expect(drawn(inside)).not.toMatch(
      /script|alert|example|javascript|data:|onload|SECRET|@import|72l|animate|metadata/i,
    );
    expect(drawn(inside)).toMatch(/^<svg /);
  });
  it("refuses what is no drawing", () => {
    expect(drawn("<g>")).toMatch(/^refused: is no well-formed SVG/);
    expect(drawn("&unknown;")).toMatch(/^refused/);
    expect(prepareDrawing(Buffer.from("<svg/>"))).toMatchObject({ found: "has no viewBox" });
    const bomb =
      '<!DOCTYPE svg [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;">]><svg viewBox="0 0 1 1"><text>&b;</text></svg>';
    const exploded = prepareDrawing(Buffer.from(bomb));
    expect("found" in exploded || !exploded.files[0]?.bytes.includes("aaaaaaaaaa")).toBe(true);
    expect(prepareDrawing(Buffer.alloc(500_000, 32))).toMatchObject({ found: "is too large for a drawing" });
  });
  it("never throws and never lets a script through, whatever it is given", () => {
    const piece = fc.oneof(
      fc.string(),
      fc.constantFrom(
        "<script>",
        "</script>",
        "<svg viewBox='0 0 1 1'>",
        "<g onclick='x'>",
        "]]>",
        "<![CDATA[<script>",
        "&#60;script>",
      ),
    );
    fc.assert(
      fc.property(fc.array(piece), (pieces) => {
        const prepared = prepareDrawing(Buffer.from(pieces.join("")));
        const text = "found" in prepared ? "" : (prepared.files[0]?.bytes.toString() ?? "");
        expect(text).not.toMatch(/<script|<[^>]*onclick/i);
      }),
    );
  });
});
