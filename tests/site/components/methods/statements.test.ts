import { afterEach, describe, expect, it, vi } from "vitest";
import { blocksOf, sectionHeading, statementHtml } from "../../../../src/site/components/methods/statements.ts";

afterEach(() => vi.unstubAllEnvs());

describe("statementHtml", () => {
  it("says a statement with its values, and one within another with its link", () => {
    const claim = { key: "methods.claim-withdrawn", values: { reason: "9 % < 5 %" } };
    const html = statementHtml({ key: "methods.rate-tells", values: { claim } });
    expect(html).toBe(
      '<p><b>It tells</b> whether the species is named on more or fewer lists of the same kind. It does <b>not</b> claim to correct for recording: where the <a href="#known-truth">truth is known</a>, 9 % &#60; 5 %.</p>',
    );
    expect(statementHtml({ key: "methods.rate-tells", values: { claim: "" } })).toMatch(/of the same kind\. ?<\/p>$/);
  });
  it("begins a sentence with its number in words, and says it in the language of the page", () => {
    const groups = { key: "methods.names-groups", values: { n: 2 } };
    expect(statementHtml(groups)).toMatch(/^Two entries are groups/);
    vi.stubEnv("ATLAS_LANGUAGE", "fr");
    expect(statementHtml(groups)).toMatch(/^Deux entrées sont des groupes/);
    expect(sectionHeading("range")).toBe("Aire de répartition");
  });
  it("stops the build on a key without words", () => {
    expect(() => statementHtml({ key: "methods.of-tomorrow", values: {} })).toThrow("no words for methods.of-tomorrow");
  });
});

describe("blocksOf", () => {
  it("puts items that follow each other into one list", () => {
    expect(blocksOf(["One.", "<li>a</li>", "<li>b</li>", "Two.", "<li>c</li>"])).toEqual([
      "One.",
      "<ul><li>a</li><li>b</li></ul>",
      "Two.",
      "<ul><li>c</li></ul>",
    ]);
  });
});
