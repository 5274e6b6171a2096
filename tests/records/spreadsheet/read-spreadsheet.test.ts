import { writeXlsx } from "hucre/xlsx";
import { describe, expect, it } from "vitest";
import { workbookAround } from "../mutated-files.ts";
import { type PartsRead, readBytes, told, useDatabase } from "../reading.ts";

const database = useDatabase();
type Cell = string | number | boolean | Date | null;
type Sheet = { name: string; rows: Cell[][]; hidden?: boolean };

async function read(sheets: Sheet[], settings: object = {}, more: { dateSystem?: "1904" } = {}): Promise<PartsRead> {
  return await readBytes(database(), "walks.xlsx", await writeXlsx({ sheets, ...more }), settings);
}
const readSheetXml = async (xml: string, parts: Record<string, string> = {}) =>
  await readBytes(database(), "walks.xlsx", await workbookAround(xml, parts));
const toldOf = ({ parts }: PartsRead) => parts.flatMap(({ result }) => told(result));

const HEADER = ["scientificName", "eventDate", "gridReference"];
const day = (date: string) => new Date(`${date}T00:00:00Z`);

describe("a spreadsheet", () => {
  it("gives its cells as a person sees them, and numbers its rows as the program does", async () => {
    const { parts, rows } = await read([
      {
        name: "Walks",
        rows: [
          [...HEADER, "individualCount", "decimalLatitude", "locality"],
          ["Bombus pratorum", day("2021-05-03"), "TQ38", 0.1 + 0.2, 51.4778, true],
          [],
          ["Bombus lucorum", "3/5/2021", "TQ37", 12],
        ],
      },
    ]);
    expect(parts).toMatchObject([
      { name: "records/walks.xlsx", result: { records: 2, read: 2, lastRow: 4, how: "sheet Walks, header in row 1" } },
    ]);
    expect(rows).toEqual([
      {
        file: 0,
        row: 2,
        scientificName: "Bombus pratorum",
        eventDate: "2021-05-03",
        gridReference: "TQ38",
        individualCount: "0.3",
        decimalLatitude: "51.4778",
        locality: "true",
      },
      {
        file: 0,
        row: 4,
        scientificName: "Bombus lucorum",
        eventDate: "3/5/2021",
        gridReference: "TQ37",
        individualCount: "12",
      },
    ]);
  });

  // The same day in both systems of dates: ECMA-376 part 1, 18.17.4.1.
  it("may count its days from 1904", async () => {
    const { rows } = await read(
      [{ name: "Walks", rows: [HEADER, ["a", day("2021-05-03"), "TQ38"]] }],
      {},
      { dateSystem: "1904" },
    );
    expect(rows[0]?.eventDate).toBe("2021-05-03");
  });

  it("is read from its header on, and cells beside the table are no records", async () => {
    const reading = await read([
      {
        name: "Walks",
        rows: [["Walks of 2021"], [], HEADER, ["a", "2021", "TQ38", "see letter"], [null, null, null, "and this"]],
      },
    ]);
    expect(reading.rows.map(({ row }) => row)).toEqual([4]);
    expect(toldOf(reading)).toEqual(["row 3: rows_before_header", "row 4: cells_beside_table"]);
  });

  it("gives a part for each sheet with records; others are told", async () => {
    const { parts, rows } = await read([
      { name: "Read me", rows: [["What this is"], ["by", "nobody"]] },
      { name: "2020", rows: [HEADER, ["a", "2020", "TQ38"]] },
      { name: "2021", rows: [HEADER, ["b", "2021", "TQ37"], ["c", "2021", "TQ36"]] },
      { name: "Old", hidden: true, rows: [HEADER, ["d", "1990", "TQ35"]] },
      { name: "Nothing", rows: [] },
    ]);
    expect(parts.map(({ name, result }) => [name, result.records])).toEqual([
      ["records/walks.xlsx: 2020", 1],
      ["records/walks.xlsx: 2021", 2],
    ]);
    expect(rows.map(({ file, row, scientificName }) => [file, row, scientificName])).toEqual([
      [0, 2, "a"],
      [1, 2, "b"],
      [1, 3, "c"],
    ]);
    expect(parts[0]?.result.findings.map(({ check, severity, value }) => [check, severity, value])).toEqual([
      ["sheet_not_read", "note", "Read me"],
      ["sheet_not_read", "ask", "Old"],
    ]);
  });

  it("gives the sheets the settings name, hidden ones too, and says which are not there", async () => {
    const sheets = [
      { name: "New", rows: [HEADER, ["a", "2020", "TQ38"]] },
      { name: "Old", hidden: true, rows: [HEADER, ["d", "1990", "TQ35"]] },
    ];
    const reading = await read(sheets, { sheet: ["Old", "Gone"] });
    expect(reading.rows.map(({ scientificName }) => scientificName)).toEqual(["d"]);
    expect(reading.parts[0]?.result.findings).toMatchObject([
      { check: "sheet_not_read", value: "Gone", wayOut: "name one of: New, Old" },
    ]);
  });

  it("without a known header is counted and blocks", async () => {
    const reading = await read([
      {
        name: "Walks",
        rows: [
          ["Art", "Jahr"],
          ["a", 2020],
          ["b", 2021],
        ],
      },
    ]);
    expect(reading.parts).toMatchObject([
      {
        result: {
          records: 2,
          unreadable: 2,
          unmapped: [
            { header: "Art", values: ["a", "b"] },
            { header: "Jahr", values: ["2020", "2021"] },
          ],
        },
      },
    ]);
    expect(toldOf(reading)).toContain("row 1: no_known_column");
  });

  it("may be empty", async () => {
    const reading = await read([{ name: "Walks", rows: [] }]);
    expect(reading.rows).toEqual([]);
    expect(toldOf(reading)).toEqual(["row 1: no_rows"]);
  });

  it("takes the value of cells merged over rows for each of them, and says so", async () => {
    const cell = (name: string, text: string) => `<c r="${name}" t="inlineStr"><is><t>${text}</t></is></c>`;
    const header = HEADER.map((text, column) => cell(`${"ABC"[column]}1`, text)).join("");
    const reading = await readSheetXml(
      `<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData><row r="1">${header}</row><row r="2">${cell("A2", "a")}${cell("B2", "2020")}${cell("C2", "TQ38")}</row><row r="3">${cell("A3", "b")}</row><row r="4"><c r="A4"/></row><row r="5">${cell("A5", "c")}${cell("B5", "2021")}</row></sheetData><mergeCells count="2"><mergeCell ref="B2:B4"/><mergeCell ref="C2:C3"/></mergeCells></worksheet>`,
    );
    expect(reading.rows).toEqual([
      { file: 0, row: 2, scientificName: "a", eventDate: "2020", gridReference: "TQ38" },
      { file: 0, row: 3, scientificName: "b", eventDate: "2020", gridReference: "TQ38" },
      { file: 0, row: 5, scientificName: "c", eventDate: "2021" },
    ]);
    expect(toldOf(reading)).toEqual(["row 2: merged_cells"]);
  });

  it("takes the values formulas had, and says which have none", async () => {
    const reading = await readSheetXml(
      '<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData><row r="1"><c r="A1" t="str"><v>scientificName</v></c><c r="B1" t="str"><v>eventDate</v></c><c r="C1" t="str"><v>gridReference</v></c></row><row r="2"><c r="A2" t="str"><f>D1</f><v>Bombus pratorum</v></c><c r="B2"><f>1+2020</f><v>2021</v></c><c r="C2"><f>D2</f></c></row></sheetData></worksheet>',
    );
    expect(reading.rows).toEqual([{ file: 0, row: 2, scientificName: "Bombus pratorum", eventDate: "2021" }]);
    expect(reading.parts[0]?.result.findings).toMatchObject([{ row: 2, check: "formula_without_value", value: "C2" }]);
  });

  it("that numbers a row as no sheet has it, or holds more text than memory does, is refused and stops nothing else", async () => {
    const far = `<row r="4294967295"><c r="A4294967295" t="inlineStr"><is><t>a</t></is></c></row>`;
    const reading = await readSheetXml(`<worksheet><sheetData>${far}</sheetData></worksheet>`);
    expect(reading.parts[0]?.result.findings[0]?.message).toMatch(/row 4294967295 is beyond the 1048576 a sheet has/);
    const texts = Array.from({ length: 140_000 }, (_, index) => `<si><t>${"a".repeat(980)}${index * 7919}</t></si>`);
    const long = await readSheetXml("<worksheet><sheetData/></worksheet>", {
      "xl/sharedStrings.xml": `<sst>${texts.join("")}</sst>`,
    });
    expect(long.parts[0]?.result.findings[0]?.message).toMatch(/sharedStrings.xml would unpack to more than 128 MB/);
  });

  it("that would unpack to more than any workbook has is refused before it is unpacked", async () => {
    const bomb = await workbookAround(" ".repeat(150 * 2 ** 20));
    expect(bomb.length).toBeLessThan(2 ** 20);
    const reading = await readBytes(database(), "walks.xlsx", bomb);
    expect(reading.rows).toEqual([]);
    expect(reading.parts[0]?.result.findings).toMatchObject([{ check: "file_damaged", severity: "blocks" }]);
    expect(reading.parts[0]?.result.findings[0]?.message).toMatch(/would grow to \d+ times its size/);
  });

  it("with a document type that defines entities is refused", async () => {
    const workbook = '<!DOCTYPE x [<!ENTITY a "aaaa">]><workbook><sheets/></workbook>';
    const reading = await readSheetXml("<worksheet></worksheet>", { "xl/workbook.xml": workbook });
    expect(toldOf(reading)).toEqual(["row 1: file_damaged"]);
  });
});
