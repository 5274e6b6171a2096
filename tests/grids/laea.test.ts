import { describe, expect, it } from "vitest";
import type { SquareSize } from "../../src/grids/grid.ts";
import { laeaGrid } from "../../src/grids/laea.ts";
import { parseGood, REFERENCES } from "./grid-cases.ts";

const grid = laeaGrid();
const CRS = "EPSG:3035";

describe("European cells of tests/reference/grid-references.json", () => {
  it.each(REFERENCES.european)("$eea, northing first $inspire", ({ size, sw, eea, inspire, E, N }) => {
    const square = { grid: "laea", crs: CRS, easting: sw[0], northing: sw[1], size };
    expect(grid.parse(eea)).toEqual(square);
    expect(grid.parse(inspire)).toEqual(square);
    expect(grid.format(parseGood(grid, inspire))).toBe(eea);
    expect(grid.squareAt({ crs: CRS, easting: E, northing: N }, size as SquareSize)).toEqual(square);
  });

  it.each([
    ["1KME4695N2599", "1kmE4695N2599"],
    ["10km E 324 N 348", "10kmE324N348"],
  ])("reads “%s” as %s", (text, canonical) => expect(grid.format(parseGood(grid, text))).toBe(canonical));
});

describe("refusals", () => {
  it.each([
    ["TQ3877", "“TQ3877” is not a cell code of the European grid"],
    ["1kmE4695E2599", "“1kmE4695E2599” is not a cell code of the European grid"],
    ["3kmE4695N2599", "the European grid has no cell size 3km"],
    ["10kmE3240000N3480000", "32400000000 m east or 34800000000 m north is off the grid"],
    ["2kmE3249N3480", "no 2km cell begins at 3249000 3480000"],
    ["", "“” is not a cell code of the European grid"],
  ])("“%s”: %s", (text, refused) => expect(grid.parse(text)).toMatchObject({ refused }));

  it("squares off the grid and points of another system", () => {
    expect(grid.squareAt({ crs: CRS, easting: -1, northing: 1 }, 1_000)).toBeUndefined();
    expect(() => grid.squareAt({ crs: "EPSG:27700", easting: 1, northing: 1 }, 1_000)).toThrow("is in EPSG:27700");
  });
});
