import { describe, expect, it } from "vitest";
import { isRefusal } from "../../src/grids/grid.ts";
import { irishGrid } from "../../src/grids/irish.ts";
import { parseGood, REFERENCES, SIZE_OF_LABEL } from "./grid-cases.ts";

const grid = irishGrid();
const CRS = "EPSG:29903";

describe("Irish references of tests/reference/grid-references.json", () => {
  it.each(REFERENCES.irish)(
    "$ref is the square of $size m at $easting $northing",
    ({ ref, easting, northing, size }) => {
      expect(grid.parse(ref)).toEqual({ grid: "irish", crs: CRS, easting, northing, size });
      expect(grid.format(parseGood(grid, ref))).toBe(ref);
    },
  );

  it("letters all 25 squares of 100 km, and no others", () => {
    const accepted = [..."ABCDEFGHIJKLMNOPQRSTUVWXYZ"].filter((letter) => !isRefusal(grid.parse(letter)));
    expect(accepted).toEqual(Object.keys(REFERENCES.irish_100km).sort());
    for (const [letter, [easting, northing]] of Object.entries(REFERENCES.irish_100km)) {
      expect(grid.parse(letter)).toMatchObject({ easting, northing, size: 100_000 });
    }
  });

  const forward = REFERENCES.forward.filter(({ system }) => system === "irish");
  it.each(forward)("$id is named at every size", ({ easting, northing, refs }) => {
    for (const [label, ref] of Object.entries(refs)) {
      const square = grid.squareAt({ crs: CRS, easting, northing }, SIZE_OF_LABEL[label] ?? 1);
      expect(square && grid.format(square)).toBe(ref);
    }
  });

  it("reads H10, which is a hectad here whatever else it may be elsewhere", () => {
    expect(grid.parse("H10")).toEqual({ grid: "irish", crs: CRS, easting: 210_000, northing: 300_000, size: 10_000 });
  });
});

describe("refusals", () => {
  const elsewhere = REFERENCES.invalid.filter((text) => text !== "TQ38 7 7");
  it.each(elsewhere)("“%s” is no Irish reference", (text) => expect(isRefusal(grid.parse(text))).toBe(true));

  it.each([
    ["I1234", "the Irish Grid has no square I", "check the letter (J, L or 1) against the source"],
    ["O123", "3 figures (123) cannot be halved", "give as many figures for the easting as for the northing"],
    [
      "H1O",
      "1 figure (1) cannot be halved",
      "if a letter stands for a figure, write H10; otherwise give as many figures for the easting as for the northing",
    ],
    [
      "TQ38",
      "“TQ38” begins with two letters, and an Irish reference with one",
      "begin with one letter, as in O1534, or read it with the grid its letters belong to",
    ],
    ["T0123456", "7 figures (0123456) cannot be halved", "give as many figures for the easting as for the northing"],
    [
      "12",
      "“12” has no letter for its 100 km square",
      "begin with one letter, as in O1534; figures alone name a place in every 100 km square",
    ],
    ["", "the reference is empty", "give a letter and figures, as in O1534"],
  ])("“%s”: %s", (text, refused, wayOut) => expect(grid.parse(text)).toEqual({ refused, wayOut }));
});

describe("the Spire of Dublin", () => {
  it("truncates to O 15904 34670 where the published reference, O 15904 34671, is rounded", () => {
    // ITM 715830 734697 by the official polynomial, computed in Python and PROJ: 315904.37 234670.85.
    const square = grid.squareAt({ crs: CRS, easting: 315904.37, northing: 234670.85 }, 1);
    expect(square && grid.format(square)).toBe("O1590434670");
  });
});

describe("examples", () => {
  it("irishGrid", () => {
    expect(grid.parse("O 1534")).toEqual({ grid: "irish", crs: CRS, easting: 315000, northing: 234000, size: 1000 });
  });
});
