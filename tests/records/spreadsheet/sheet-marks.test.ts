import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { columnNumber, sheetMarks } from "../../../src/records/spreadsheet/sheet-marks.ts";
import { makeTemporaryFolder } from "../../support/temporary-folder.ts";

async function marksOf(xml: string) {
  const path = join(makeTemporaryFolder(), "sheet.xml");
  writeFileSync(path, xml);
  return await sheetMarks(path);
}

// Elements as ECMA-376 part 1 has them: c 18.3.1.4, f 18.3.1.40, mergeCell 18.3.1.55.
describe("a sheet", () => {
  it("tells which formulas have no value", async () => {
    const cells =
      '<c r="A1"><f>1+1</f><v>2</v></c><c r="B1"><f>1+1</f></c><c r="C1"><f>1+1</f><v></v></c><c r="D1"><f t="shared" si="0"/><v/></c><c r="E1"><v>1</v></c><c r="F1" t="str"><f>A1</f><v>x</v></c>';
    const { withoutValue } = await marksOf(`<worksheet><sheetData><row r="1">${cells}</row></sheetData></worksheet>`);
    expect(withoutValue).toEqual(["B1", "C1", "D1"]);
  });

  it("tells which cells are merged over rows; over columns only is no matter", async () => {
    const merged = '<x:mergeCell ref="A2:A5"/><x:mergeCell ref="B1:F1"/><x:mergeCell ref="AA7:AB8"/>';
    const { mergedDown } = await marksOf(
      `<x:worksheet><x:sheetData/><x:mergeCells>${merged}</x:mergeCells></x:worksheet>\n`,
    );
    expect(mergedDown).toEqual([
      { row: 2, lastRow: 5, column: 1 },
      { row: 7, lastRow: 8, column: 27 },
    ]);
  });

  it("without formulas or merged cells has none", async () => {
    expect(await marksOf("<worksheet><sheetData/></worksheet>")).toEqual({ withoutValue: [], mergedDown: [] });
  });

  it("that ends in the middle is refused", async () => {
    await expect(marksOf('<worksheet><sheetData><row r="1">')).rejects.toThrow("a sheet ends in the middle");
  });

  it("has columns after Z", () => {
    expect(["A", "Z", "AA", "AZ", "XFD"].map(columnNumber)).toEqual([1, 26, 27, 52, 16_384]);
  });
});
