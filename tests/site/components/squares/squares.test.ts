import { describe, expect, it } from "vitest";
import { gridNamed } from "../../../../src/grids/index.ts";
import type { HectadSummary, SquareFile } from "../../../../src/publishing/contracts.ts";
import { blocksOf } from "../../../../src/site/components/squares/blocks.ts";
import { neighboursOf } from "../../../../src/site/components/squares/neighbours.ts";
import {
  countStates,
  degreesOf,
  tetradSentence,
  unvisitedTetrads,
} from "../../../../src/site/components/squares/square-words.ts";

const british = gridNamed("british");
/** A hectad placed by the grid itself, so that drawing and grid must agree. */
function hectad(code: string): HectadSummary {
  const square = british.parse(code);
  if ("refused" in square) throw new Error(square.refused);
  return {
    square: code,
    slug: code.toLowerCase(),
    grid: "british",
    easting: square.easting,
    northing: square.northing,
  } as HectadSummary;
}
const all = ["NZ27", "NZ28", "NZ37", "NZ26", "NZ17", "SE99", "TA09", "NZ00"].map(hectad);

describe("neighboursOf", () => {
  it("finds the four sides, across the letters too", () => {
    const beside = neighboursOf(all);
    expect(beside(hectad("NZ27")).map(({ side, square }) => [side, square])).toEqual([
      ["north", "NZ28"],
      ["east", "NZ37"],
      ["south", "NZ26"],
      ["west", "NZ17"],
    ]);
    expect(beside(hectad("SE99")).map(({ square }) => square)).toEqual(["TA09"]);
  });
  it("has none across grids", () => {
    const irish = { ...hectad("NZ28"), grid: "irish" };
    expect(neighboursOf([irish])(hectad("NZ27"))).toEqual([]);
  });
});

describe("blocksOf", () => {
  it("lays the squares of 100 km out as on a map", () => {
    expect(blocksOf(all).map(({ name, column, row }) => [name, column, row])).toEqual([
      ["NZ", 0, 0],
      ["SE", 0, 1],
      ["TA", 1, 1],
    ]);
  });
  it("names a hectad by its two figures, east before north", () => {
    const cells = blocksOf(all)[0]?.cells ?? [];
    expect(cells.every(({ hectad: { square }, figures }) => square.endsWith(figures))).toBe(true);
    expect(cells.find(({ figures }) => figures === "27")).toMatchObject({ column: 2, row: 2 });
  });
});

describe("words of a square", () => {
  it("says which tetrads have records", () => {
    const tetrads = [
      { letter: "F", visits: 3, taxa: 9 },
      { letter: "A", visits: 1, taxa: 1 },
      { letter: "Z", visits: 0, taxa: 0 },
    ] as SquareFile["tetrads"];
    expect(tetradSentence({ tetrads, land_tetrads: "AFMZ" })).toBe(
      "2 of 4 tetrads have records. **F** has the longest list, 9 species. No record to 2 km comes from M and Z.",
    );
    expect(tetradSentence({ tetrads: [], land_tetrads: null })).toBe("No record here is precise to 2 km.");
  });
  it("counts tetrads of the sea for nothing, and all 25 where nobody says what is land", () => {
    const tetrads = [{ letter: "A", visits: 1, taxa: 1 }] as SquareFile["tetrads"];
    expect(unvisitedTetrads({ tetrads, land_tetrads: "ABC" })).toEqual(["B", "C"]);
    expect(unvisitedTetrads({ tetrads, land_tetrads: null }).length).toBe(24);
  });
  it("counts states in the order of the key", () => {
    expect(countStates([{ state: "lost" }, { state: "retained" }, { state: "lost" }])).toEqual([
      { state: "retained", number: 1 },
      { state: "lost", number: 2 },
    ]);
  });
  it("gives degrees with their hemisphere", () => {
    expect([degreesOf(-1.613, "EW"), degreesOf(55.083, "NS"), degreesOf(-33.9, "NS")]).toEqual([
      "1.61° W",
      "55.08° N",
      "33.90° S",
    ]);
  });
});
