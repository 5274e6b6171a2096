import { describe, expect, it } from "vitest";
import { AccountFrontMatter, PageFrontMatter, parseTextFile } from "../../src/scheme/account.ts";
import { mistakeOf } from "./mistakes.ts";

const account = (text: string) => mistakeOf(() => parseTextFile(text, "species/a.md", AccountFrontMatter));

describe("an account", () => {
  it("is front matter and sections", () => {
    const { front, sections } = parseTextFile(
      "\uFEFF---\r\ntaxonID: a\r\n---\r\nBefore.\r\n\r\n## Where\r\nHere.\r\n### Finer\r\nThere.\r\n## When\r\n",
      "species/a.md",
      AccountFrontMatter,
    );
    expect(front).toMatchObject({ taxonID: "a", lead: "", sizes: [], look_alikes: [] });
    expect(sections).toEqual([
      { title: "", body: "Before." },
      { title: "Where", body: "Here.\n### Finer\nThere." },
      { title: "When", body: "" },
    ]);
  });

  it.each([
    ["Just prose.", "species/a.md:1:1: the front matter is missing; begin the file with a block between two lines ---"],
    ["---\nlead: x\n---\n", "species/a.md:2:1: taxonID is missing; write text: id of the taxon in checklist.csv"],
    [
      "---\ntaxonID: a\nsizes:\n  - { caste: queen, mm: 17 }\n---\n",
      "species/a.md:4:25: sizes[0].mm is 17; write a list, as in [a, b]",
    ],
    [
      "---\ntaxonID: a\nlook_alikes:\n  - difference: bigger\n---\n",
      "species/a.md:4:5: look_alikes[0] is a group of settings; give either taxonID or outside",
    ],
    [
      "---\ntaxonID: a\nlook_alike: []\n---\n",
      "species/a.md:3:1: the file has “look_alike”; there is no such setting; did you mean look_alikes?",
    ],
  ])("%j is refused at its line in the file", (text, message) => {
    expect(account(text)).toBe(message);
  });
});

describe("a page", () => {
  it("needs a title and may leave the footer", () => {
    expect(parseTextFile("---\ntitle: About\nfooter: false\n---\nText", "pages/about.md", PageFrontMatter)).toEqual({
      file: "pages/about.md",
      front: { title: "About", lead: "", footer: false },
      sections: [{ title: "", body: "Text" }],
    });
  });
});
