import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { type CarefulRead, LONGEST_CELL, plainRow, readCarefully } from "../../src/records/read-carefully.ts";
import type { TextRow } from "../../src/records/row-splitter.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

const row = (number: number, ...cells: string[]): TextRow => ({ row: number, cells, broken: false });

async function read(
  rows: TextRow[],
  { headerRow = 1, headers = 2, columns = [0, 1] } = {},
): Promise<CarefulRead & { text: string }> {
  const target = join(makeTemporaryFolder(), "rows.csv");
  const some = async function* () {
    for (const one of rows) yield [one];
  };
  const result = await readCarefully({
    rows: some(),
    name: "a.csv",
    delimiter: ",",
    headerRow,
    headers,
    columns,
    target,
  });
  return { ...result, text: readFileSync(target, "utf8") };
}

describe("a table read row by row", () => {
  it("gives the columns wanted, in their order, after the row's number", async () => {
    const { text, ...result } = await read([row(1, "a", "b", "c"), row(2, "1", "2", "3"), row(5, "4", "", "6")], {
      headers: 3,
      columns: [2, 0],
    });
    expect(text).toBe('2,"3","1"\n5,"6","4"\n');
    expect(result).toEqual({ read: 2, rescued: [], unreadable: 0, lastRow: 5, findings: [] });
  });

  it("has no records up to its header, and none but records where it has no header", async () => {
    const rows = [row(1, "Walks of", "2021"), row(3, "a", "b"), row(4, "1", "2")];
    expect((await read(rows, { headerRow: 3 })).text).toBe('4,"1","2"\n');
    expect((await read(rows, { headerRow: 0 })).read).toBe(3);
  });

  it("counts rows as read, rescued or unreadable", async () => {
    const { text, ...result } = await read([
      row(1, "a", "b"),
      row(2, "1"),
      row(3, "1", "2", "3"),
      row(4, "1", "2", "", " "),
      { row: 5, cells: ["1", '2"'], broken: true },
      { row: 6, cells: ["1"], broken: true },
      { row: 7, cells: ["x"], broken: true, cut: true },
    ]);
    expect(text).toBe('2,"1",\n4,"1","2"\n5,"1","2"""\n');
    expect(result).toMatchObject({ read: 1, rescued: [2, 5], unreadable: 3, lastRow: 7 });
    expect(result.findings.map(({ row: number, check }) => [number, check])).toEqual([
      [2, "ragged_row_filled"],
      [3, "unreadable_row"],
      [5, "stray_quotation_mark"],
      [6, "unreadable_row"],
      [7, "unreadable_row"],
    ]);
  });

  it("without a column that is wanted has unreadable rows only, and says nothing of each", async () => {
    expect(await read([row(1, "a", "b"), row(2, "1")], { columns: [] })).toMatchObject({
      unreadable: 1,
      findings: [],
      text: "",
    });
  });

  it("has cells cut that are longer than any field, which is told once a cell", async () => {
    const long = "x".repeat(LONGEST_CELL + 1);
    const { text, findings } = await read([row(1, "a", "b"), row(2, long, "2")]);
    expect(text).toBe(`2,"${"x".repeat(LONGEST_CELL)}","2"\n`);
    expect(findings).toMatchObject([{ row: 2, check: "cell_cut" }]);
  });

  it("is written so that any reader takes it the same", () => {
    expect(plainRow(7, ['say "hi"', "a\nb", "c\0d", ""], [0, 1, 2, 3, 4])).toBe('7,"say ""hi""","a\nb","c\uFFFDd",,\n');
  });

  it("fails where its copy cannot be written", async () => {
    const target = join(makeTemporaryFolder(), "nowhere", "rows.csv");
    const none = async function* (): AsyncGenerator<TextRow[]> {
      yield [row(1, "a", "b")];
    };
    const reading = readCarefully({
      rows: none(),
      name: "a.csv",
      delimiter: ",",
      headerRow: 1,
      headers: 2,
      columns: [0],
      target,
    });
    await expect(reading).rejects.toThrow(/ENOENT/);
  });
});
