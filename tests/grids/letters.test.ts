import { describe, expect, it } from "vitest";
import { columnAndRowOf, letterAt } from "../../src/grids/letters.ts";

/** The block as drawn by Ordnance Survey, "The National Grid", north at the top. */
const BLOCK = ["ABCDE", "FGHJK", "LMNOP", "QRSTU", "VWXYZ"];

describe("the block of 25 letters", () => {
  it.each(BLOCK.flatMap((line, down) => [...line].map((letter, column) => ({ letter, column, row: 4 - down }))))(
    "has $letter in column $column, row $row from the south-west",
    ({ letter, column, row }) => {
      expect(columnAndRowOf(letter)).toEqual([column, row]);
      expect(letterAt(column, row)).toBe(letter);
    },
  );

  it.each(["I", "a", "", "AB", "1"])("does not hold “%s”", (letter) => expect(columnAndRowOf(letter)).toBeUndefined());

  it.each([
    [5, 0],
    [0, 5],
    [-1, 0],
    [0, Number.NaN],
  ])("ends before column %s, row %s", (column, row) => expect(letterAt(column, row)).toBeUndefined());
});
