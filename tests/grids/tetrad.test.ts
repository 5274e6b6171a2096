import { describe, expect, it } from "vitest";
import { tetradLetter, tetradOffset } from "../../src/grids/tetrad.ts";
import { REFERENCES } from "./grid-cases.ts";

describe("tetrad letters", () => {
  it.each(Object.entries(REFERENCES.dinty))("%s is at %s", (letter, offset) => {
    const [east, north] = offset;
    expect(tetradOffset(letter)).toEqual(offset);
    expect(tetradLetter(east, north)).toBe(letter);
    expect(tetradLetter(east + 1999.9, north + 1999.9)).toBe(letter);
  });

  it("spell DINTY along the fourth row", () => {
    expect([0, 2000, 4000, 6000, 8000].map((east) => tetradLetter(east, 6000)).join("")).toBe("DINTY");
  });

  it.each(["O", "a", "", "AA", "1"])("do not include “%s”", (letter) => expect(tetradOffset(letter)).toBeUndefined());

  it.each([
    [10_000, 0],
    [0, 10_000],
    [-1, 0],
    [Number.NaN, 0],
  ])("are not given outside a hectad, at %s %s", (east, north) => {
    expect(() => tetradLetter(east, north)).toThrow(RangeError);
  });
});
