import { describe, expect, it } from "vitest";
import { useDatabase } from "../reading.ts";
import { type Files, metaXml, readFiles } from "./archives.ts";

const database = useDatabase();
const read = (files: Files, settings?: object) => readFiles(database(), files, settings);

const TABLE = "occurrenceID,scientificName,eventDate\no1,Bombus,2021\n";
const ONE = [{ part: "walks.zip", row: 2, occurrenceID: "o1", scientificName: "Bombus", eventDate: "2021" }];

// What publishers pack without meta.xml is common practice, without a source.
describe("an archive without a description", () => {
  it("is read by the header of its one file", async () => {
    const { rows, told, parts } = await read({ "walks/records.csv": TABLE, "walks/readme.txt": "Walks of 2021\n" });
    expect(rows).toEqual(ONE);
    expect(told).toEqual(["walks.zip:1 archive_without_description"]);
    expect(parts[0]?.result.how).toBe("archive without meta.xml, UTF-8, comma, LF, header in row 1");
  });

  it("is read by its occurrences where there are other tables", async () => {
    const { rows } = await read({ "event.txt": TABLE, "verbatim.txt": TABLE, "occurrence.txt": TABLE });
    expect(rows).toEqual(ONE);
  });

  it("is read by every file with names where none is called occurrences", async () => {
    const { rows, parts } = await read({ "2021.csv": TABLE, "2022.csv": TABLE, "sites.csv": "site,county\nA,B\n" });
    expect(parts.map(({ name }) => name)).toEqual(["walks.zip/2021.csv", "walks.zip/2022.csv"]);
    expect(rows).toHaveLength(2);
  });

  it("is read by the source's own columns", async () => {
    const { rows } = await read(
      { "a.csv": "Art;Datum\nBombus;2021\n" },
      { columns: { scientificName: "Art", eventDate: "Datum" } },
    );
    expect(rows.map(({ scientificName, eventDate }) => [scientificName, eventDate])).toEqual([["Bombus", "2021"]]);
  });

  it("says so where nothing in it holds names", async () => {
    const { rows, told, parts } = await read({ "photograph.jpg": "x", "sites.csv": "site,county\nA,B\n" });
    expect(rows).toEqual([]);
    expect(parts[0]?.result.records).toBe(0);
    expect(told).toEqual(["walks.zip:1 archive_without_description", "walks.zip:1 archive_unreadable"]);
  });

  it.each([
    ["is not well-formed", metaXml({ rowType: "Occurrence", file: "a.csv", columns: [] }).replace("</core>", "")],
    ["is empty", ""],
    ["is another XML document", '<dataset xmlns="eml://ecoinformatics.org/eml-2.1.1"/>'],
    [
      "holds a document type",
      '<!DOCTYPE archive [<!ENTITY a "occurrence.txt">]><archive xmlns="http://rs.tdwg.org/dwc/text/"><core rowType="&a;"/></archive>',
    ],
  ])("is an archive whose description %s", async (_, meta) => {
    const { rows, told } = await read({ "meta.xml": meta, "occurrence.txt": TABLE });
    expect(rows).toEqual(ONE);
    expect(told).toEqual(["walks.zip:1 archive_description"]);
  });

  it("is not one whose description has faults that leave a sense", async () => {
    const occurrence = {
      rowType: "Occurrence",
      file: "occurrence.txt",
      columns: ["occurrenceID", "scientificName", "eventDate"],
    };
    const { rows, findings } = await read({ "meta.xml": metaXml(undefined, occurrence), "occurrence.txt": TABLE });
    expect(rows).toEqual(ONE);
    expect(findings).toMatchObject([{ check: "archive_description", message: "meta.xml: there is no core" }]);
  });
});
