import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { AccountFrontMatter, PageFrontMatter, parseTextFile } from "../../src/scheme/account.ts";
import { CharacterRow, ChecklistRow } from "../../src/scheme/content-tables.ts";
import { Settings } from "../../src/scheme/settings.ts";
import { checkSettings } from "../../src/scheme/settings-agree.ts";
import { parseTable } from "../../src/scheme/table-file.ts";
import { languageOfFile } from "../../src/scheme/translations.ts";
import { parseYaml } from "../../src/scheme/yaml-file.ts";

const folders = {
  "the demonstration": fileURLToPath(new URL("../../content/", import.meta.url)),
  "the template of a new scheme": fileURLToPath(new URL("../../src/build/template/", import.meta.url)),
};
const read = (folder: string, file: string) => readFileSync(`${folder}/${file}`, "utf8");

describe.each(Object.entries(folders))("%s", (_name, folder) => {
  it("has settings that the contract takes and that agree with each other", () => {
    const settings = parseYaml(read(folder, "atlas.yaml"), "atlas.yaml", Settings);
    expect(() => checkSettings(settings)).not.toThrow();
    expect(settings.invented).toBe(true);
    expect(settings.periods).toHaveLength(2);
  });

  it("has tables, accounts and pages that their contracts take", () => {
    const taxa = parseTable(read(folder, "checklist.csv"), "checklist.csv", ChecklistRow);
    const ids = taxa.map((taxon) => taxon.taxonID);
    expect(taxa.flatMap((taxon) => taxon.within).filter((id) => !ids.includes(id))).toEqual([]);
    expect(
      taxa.flatMap((taxon) => taxon.vernacularNames).filter(({ language, name }) => language === "" || name === ""),
    ).toEqual([]);
    for (const row of parseTable(read(folder, "characters.csv"), "characters.csv", CharacterRow))
      expect(row.taxonID === "*" || row.taxonID.startsWith("outside-") || ids.includes(row.taxonID), row.taxonID).toBe(
        true,
      );
    for (const name of readdirSync(`${folder}/species`)) {
      if (languageOfFile(name) !== undefined) continue;
      const { front, sections } = parseTextFile(read(folder, `species/${name}`), name, AccountFrontMatter);
      expect(ids).toContain(front.taxonID);
      expect(sections.length).toBeGreaterThan(1);
    }
    for (const name of readdirSync(`${folder}/pages`))
      expect(parseTextFile(read(folder, `pages/${name}`), name, PageFrontMatter).front.title).not.toBe("");
  });
});

describe("the template's records", () => {
  it("are ten, invented, on the British grid, of names in its checklist", () => {
    const template = folders["the template of a new scheme"];
    const [header, ...rows] = read(template, "records/example.csv")
      .trim()
      .split("\n")
      .map((line) => line.split(","));
    const names = parseTable(read(template, "checklist.csv"), "checklist.csv", ChecklistRow).flatMap((taxon) => [
      taxon.scientificName,
      ...taxon.synonyms,
    ]);
    const cell = (row: string[], name: string) => row[header?.indexOf(name) ?? -1];
    expect(rows).toHaveLength(10);
    for (const row of rows) {
      expect(cell(row, "occurrenceID")).toMatch(/^invented-\d+$/);
      expect(names).toContain(cell(row, "scientificName"));
      expect(cell(row, "gridReference")).toMatch(/^SK(\d\d[A-NP-Z]?|\d{4}|\d{6})$/);
    }
  });
});
