import { describe, expect, it } from "vitest";
import { delimiterOf, findHeader } from "../../src/records/header-row.ts";

const found = (text: string, settings: object = {}) => {
  const { delimiter, row, headers } = findHeader(text, { columns: {}, ...settings });
  return { delimiter, row, headers };
};

// What programs and people put before a table is common practice, without a source.
describe("a header", () => {
  it("is as in the docstring", () => {
    expect(findHeader("Walks 2021\n\neventDate;scientificName\n2021;Bombus\n", { columns: {} })).toMatchObject({
      delimiter: ";",
      row: 3,
      headers: ["eventDate", "scientificName"],
      before: [{ row: 1 }],
      below: [{ row: 4 }],
    });
  });

  it("is the first row of a table as it should be, whatever stands in its cells", () => {
    expect(found("scientificName,sex\nBombus pratorum,y\n").row).toBe(1);
    expect(found("Art,Jahr\nBombus,2020\nsex,year\n").row).toBe(3);
    expect(found("Art,Jahr,Ort\na,2020,\nb,,\n").row).toBe(1);
    expect(found("scientificName,year\na,b,c,d,e\na,b,c,d,e\n").row).toBe(1);
  });

  it("comes after titles, notes on the export and comments, known or not", () => {
    const title = "Walks of the county, 2021\nexported on 3 May, by nobody\n\n";
    expect(found(`${title}scientificName;eventDate\nBombus;2021\n`)).toMatchObject({ delimiter: ";", row: 4 });
    expect(found(`${title}Art;Datum;Raster\nBombus;2021;TQ38\n`)).toMatchObject({ delimiter: ";", row: 4 });
    expect(found("# one\n# two, three, four\nArt,Jahr\na,1\n").row).toBe(3);
    expect(found("Exported 2021;;;\n;;;\nArt;Jahr;Ort;Raster\na;1;b;c\n").row).toBe(3);
    expect(found('"A title\nof two lines"\nscientificName,year\na,1\n').row).toBe(2);
  });

  it("may begin with # itself", () => {
    expect(found("# of a program\n#scientificName\teventDate\nBombus\t2021\n")).toMatchObject({
      delimiter: "\t",
      row: 2,
    });
  });

  it("is where the settings say, blank rows counted", () => {
    expect(found("scientificName,year\n\nArt,Jahr\na,1\n", { header_row: 3 }).headers).toEqual(["Art", "Jahr"]);
    expect(found("a,1\nb,2\n", { header_row: 9 })).toMatchObject({ row: 9, headers: [] });
  });

  it("may be none, columns then being named by number", () => {
    expect(found("Bombus,2021\nBombus,2022,TQ38\n", { header_row: 0 })).toMatchObject({
      row: 0,
      headers: ["#1", "#2", "#3"],
    });
  });

  it("may be known by the settings alone", () => {
    const columns = { scientificName: "Art", eventDate: "Datum" };
    expect(found("Anna,Bert,Cleo\nArt,Datum,Ort\nBombus,2021,\n", { columns }).row).toBe(2);
  });

  it("stands in no empty text", () => {
    expect(found("")).toEqual({ delimiter: ",", row: 1, headers: [] });
  });
});

describe("a delimiter", () => {
  it("is the one that parts known headers, whatever the title holds", () => {
    expect(delimiterOf('"Site; place"\tDate\n')).toBe("\t");
    expect(delimiterOf("a, b, c, d, e\nscientificName;year\nx;1\n")).toBe(";");
    expect(delimiterOf("Art;Breite\nBombus;51,5\nBombus;51,6\n")).toBe(";");
    expect(delimiterOf("Breite;Länge\n51,5;0,1\n51,6;0,2\n")).toBe(";");
    expect(delimiterOf("one\n")).toBe(",");
  });

  it("is the one the first line states as spreadsheets write it", () => {
    expect(found("sep=|\r\nArt|Jahr\r\na|1\r\n")).toMatchObject({ delimiter: "|", row: 2, headers: ["Art", "Jahr"] });
  });
});
