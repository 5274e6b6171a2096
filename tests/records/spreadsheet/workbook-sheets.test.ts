import { describe, expect, it } from "vitest";
import { workbookSheets } from "../../../src/records/spreadsheet/workbook-sheets.ts";

const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const relationship = (id: string, kind: string, target: string) =>
  `<Relationship Id="${id}" Type="${OFFICE}/${kind}" Target="${target}"/>`;

// Elements as ECMA-376 part 1 has them: sheet 18.2.19, with its state 18.18.68.
describe("sheets of a workbook", () => {
  it("are in its order, with the file of each, and are hidden or not; charts are none", () => {
    const relationships = `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${relationship("a", "worksheet", "worksheets/sheet7.xml")}${relationship("b", "worksheet", "/xl/worksheets/sheet2.xml")}${relationship("c", "chartsheet", "chartsheets/sheet1.xml")}${relationship("d", "worksheet", "./worksheets/sheet3.xml")}</Relationships>`;
    const workbook = `<workbook xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="${OFFICE}"><sheets><sheet name="Walks &amp; more" sheetId="1" r:id="b"/><sheet name="Old" sheetId="2" state="hidden" r:id="a"/><sheet name="Chart" sheetId="3" r:id="c"/><sheet name="Older" sheetId="4" state="veryHidden" r:id="d"/></sheets></workbook>`;
    expect(workbookSheets(workbook, relationships)).toEqual([
      { name: "Walks & more", hidden: false, file: "xl/worksheets/sheet2.xml" },
      { name: "Old", hidden: true, file: "xl/worksheets/sheet7.xml" },
      { name: "Older", hidden: true, file: "xl/worksheets/sheet3.xml" },
    ]);
  });

  it("are none in what is no XML", () => {
    expect(() => workbookSheets("<workbook", "")).toThrow();
  });
});
