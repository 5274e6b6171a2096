import { describe, expect, it } from "vitest";
import { CharacterRow, ChecklistRow } from "../../src/scheme/content-tables.ts";
import { parseTable } from "../../src/scheme/table-file.ts";
import { mistakeOf } from "./mistakes.ts";

const checklist = (text: string) => mistakeOf(() => parseTable(text, "checklist.csv", ChecklistRow));
const characters = (text: string) => mistakeOf(() => parseTable(text, "characters.csv", CharacterRow));

describe("a table of the scheme", () => {
  it("gives its rows with their row in the file, blank rows counted", () => {
    const rows = parseTable(
      '\uFEFFtaxonID,scientificName,synonyms,notes\r\na,"Bombus a", x | y ,"line\r\nbreak"\r\n\r\n,,,\r\nb,Bombus b,,\r\n',
      "checklist.csv",
      ChecklistRow,
    );
    expect(rows.map(({ row, taxonID, synonyms }) => [row, taxonID, synonyms])).toEqual([
      [2, "a", ["x", "y"]],
      [5, "b", []],
    ]);
  });

  it("keeps several vernacular names of one language", () => {
    const [row] = parseTable(
      "taxonID,scientificName,vernacularNames\na,Bombus a,en:Red bee | en:Scarlet bee | cy:gwenynen\n",
      "checklist.csv",
      ChecklistRow,
    );
    expect(row?.vernacularNames).toEqual([
      { language: "en", name: "Red bee" },
      { language: "en", name: "Scarlet bee" },
      { language: "cy", name: "gwenynen" },
    ]);
  });

  it.each([
    ["taxonID\na\n", "checklist.csv: row 1: column scientificName is missing; add it; the header is taxonID"],
    [
      "taxonID,scientificName,Synonym\na,b,c\n",
      "checklist.csv: row 1, field Synonym: column “Synonym” is not known; write synonyms",
    ],
    [
      "taxonID,scientificName,castes,castes\na,b,c,d\n",
      "checklist.csv: row 1, field castes: column castes is there twice; take one of the two out",
    ],
    [
      "taxonID,scientificName\na,Bombus a\n,Bombus b\n",
      "checklist.csv: row 3, field taxonID: taxonID is empty; give the taxon an id of your own, never used for another",
    ],
    [
      "taxonID,scientificName\na,Bombus a, Linnaeus\n",
      "checklist.csv: row 2: the row has 3 cells, where the header has 2; put cells that hold a comma between quotation marks",
    ],
    [
      'taxonID,scientificName\na,"Bombus a\nb,Bombus b\n',
      "checklist.csv: row 2: a quotation mark is not closed, or something follows it; close it, and double those that are text",
    ],
    ["", "checklist.csv: row 1: column taxonID is missing; add it; the header is "],
  ])("%j is refused with row and field", (text, message) => {
    expect(checklist(text)).toBe(message);
  });

  it("takes bars between values of a cell for no delimiter", () => {
    const rows = Array.from({ length: 12 }, (_, index) => `t${index},Bombus t${index},queen | worker | male\n`);
    const text = `taxonID,scientificName,castes\n${rows.join("")}`;
    expect(parseTable(text, "checklist.csv", ChecklistRow)[0]?.castes).toEqual(["queen", "worker", "male"]);
  });

  it("of characters says how they can be relied on", () => {
    expect(characters("taxonID,part,state,reliability\na,tail,red,supports\na,tail,red,always\n")).toBe(
      "characters.csv: row 3, field reliability: reliability is “always”; write settles, supports or misleads",
    );
    expect(characters("taxonID,part,state,reliability\na,tail,,supports\n")).toMatch(
      /^characters.csv: row 2, field state: state is empty; give a colour or mark/,
    );
  });
});
