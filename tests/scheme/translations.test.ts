import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { readScheme } from "../../src/scheme/scheme.ts";
import { languageOfFile } from "../../src/scheme/translations.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";
import { mistakeOf } from "./mistakes.ts";

const ATLAS = `title: Small
languages: [fr, cy]
edition: { id: "1", date: 2025-03-01 }
periods: [{ id: ever, from: null, to: 2024 }]
territories: [{ id: britain, name: Britain, grid: british }]
castes: [{ id: worker, label: Worker, words: [worker] }]
sources: [{ id: walks, files: records/walks.csv }]
`;
const FILES = {
  "atlas.yaml": ATLAS,
  "checklist.csv": "taxonID,scientificName\na,Bombus alpha\n",
  "species/a.md": "---\ntaxonID: a\nlead: Red.\n---\n## How to know it\nRed.\n## Where\nHere.\n",
  "pages/about.md": "---\ntitle: About\n---\nText\n",
};

function folderWith(changed: Readonly<Record<string, string>>): string {
  const folder = makeTemporaryFolder();
  for (const [file, content] of Object.entries({ ...FILES, ...changed })) {
    mkdirSync(join(folder, file, ".."), { recursive: true });
    writeFileSync(join(folder, file), content);
  }
  return folder;
}
const read = (changed: Readonly<Record<string, string>>) => readScheme(folderWith(changed));
const messageOf = (changed: Readonly<Record<string, string>>) => mistakeOf(() => read(changed));

describe("languageOfFile", () => {
  it("is the tag before the ending, and none of a name with a full stop of its own", () => {
    expect(["species/a.md", "species/a.fr.md", "a.pt-BR.md", "a.x.md", "a.2025.md"].map(languageOfFile)).toEqual([
      undefined,
      "fr",
      "pt-BR",
      undefined,
      undefined,
    ]);
  });
});

describe("a scheme in further languages", () => {
  it("has one translation a language, empty where it has no file", () => {
    const [fr, cy] = read({
      "languages/fr.yaml": "heading: Bourdons\ncastes: { worker: { label: Ouvrière, many: Ouvrières } }\n",
      "species/a.fr.md": "---\ntaxonID: a\nlead: Rouge.\n---\n## Comment le reconnaître\nRouge.\n## Où\nIci.\n",
      "pages/about.fr.md": "---\ntitle: À propos\n---\nTexte\n",
    }).translations;
    expect(fr?.words).toMatchObject({ heading: "Bourdons", summary: "", castes: { worker: { many: "Ouvrières" } } });
    expect(fr?.accounts.map(({ front }) => front.lead)).toEqual(["Rouge."]);
    expect(fr?.pages.map(({ slug, front }) => [slug, front.title])).toEqual([["about", "À propos"]]);
    expect(cy).toMatchObject({ language: "cy", accounts: [], pages: [], words: { heading: "" } });
  });

  it("keeps translations out of its own accounts and pages", () => {
    const { accounts, pages } = read({
      "species/a.fr.md": "---\ntaxonID: a\n---\n",
      "pages/about.fr.md": "---\ntitle: À propos\n---\n",
    });
    expect([...accounts.values()].map(({ file }) => file)).toEqual(["species/a.md"]);
    expect(pages.map(({ file }) => file)).toEqual(["pages/about.md"]);
  });

  it.each([
    [
      { "species/a.de.md": "---\ntaxonID: a\n---\n" },
      "species/a.de.md: “de” is no further language of atlas.yaml; add it to languages, or take the file away",
    ],
    [
      { "languages/de.yaml": "title: x\n" },
      "languages/de.yaml: “de” is no further language of atlas.yaml; add it to languages, or take the file away",
    ],
    [
      { "languages/fr.yaml": "castes: { queen: { label: Reine, many: Reines } }\n" },
      "languages/fr.yaml:1:18: castes.queen is no id of the scheme; write one of worker",
    ],
    [
      { "species/a.fr.md": "---\ntaxonID: b\n---\n" },
      "species/a.fr.md: taxonID “b” is not in checklist.csv; correct it, or add the taxon to the checklist",
    ],
    [
      { "species/a.fr.md": "---\ntaxonID: a\n---\n## Où\nIci.\n" },
      "species/a.fr.md: the account has 1 sections, and species/a.md has 2; give it the same sections in the same order: How to know it, Where",
    ],
    [
      { "pages/help.fr.md": "---\ntitle: Aide\n---\n" },
      "pages/help.fr.md: “pages/help.fr.md” translates no page; add pages/help.md in the first language",
    ],
  ])("refuses %j", (changed, message) => {
    expect(messageOf(changed as unknown as Record<string, string>)).toBe(message);
  });
});
