import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { GridId } from "../../src/grids/grid.ts";
import { gridNamed } from "../../src/grids/index.ts";

const [header, ...lines] = readFileSync(new URL("../../content/land-squares.csv", import.meta.url), "utf8")
  .trim()
  .split("\n");
const rows = lines.map((line) => {
  const [grid, territory, hectad, tetrads] = line.split(",") as [GridId, string, string, string];
  return { grid, territory, hectad, tetrads };
});
const letters = new Map(rows.map(({ grid, hectad, tetrads }) => [`${grid} ${hectad}`, tetrads]));

/** Whether the list has the 2 km square at a point, in degrees. */
function hasLand(grid: GridId, longitude: number, latitude: number): boolean {
  const system = gridNamed(grid);
  const point = system.project(longitude, latitude);
  const hectad = system.squareAt(point, 10_000);
  const tetrad = system.squareAt(point, 2000);
  return hectad && tetrad
    ? (letters.get(`${grid} ${system.format(hectad)}`) ?? "").includes(system.format(tetrad).slice(-1))
    : false;
}

describe("content/land-squares.csv", () => {
  it("has the columns that its readers expect", () => {
    expect(header).toBe("grid,territory,hectad,tetrads");
  });

  // Counted on the same coast with GEOS (prepared intersection of each square) and PROJ 9.1.1, Debian 12. The Channel
  // Islands were counted there on WGS84, 150 to 240 m from the ED50 grid used here; no 10 km square changes.
  it.each([
    ["british", 2864],
    ["irish", 1018],
    ["channel-islands", 22],
  ])("lists the 10 km squares of the %s grid that touch land: %i", (grid, count) => {
    expect(rows.filter((row) => row.grid === grid)).toHaveLength(count);
  });

  it("lists each square once, in order, with letters of the DINTY tetrads in order", () => {
    expect(letters.size).toBe(rows.length);
    expect(
      rows.filter(({ tetrads }) => !/^A?B?C?D?E?F?G?H?I?J?K?L?M?N?P?Q?R?S?T?U?V?W?X?Y?Z?$/.test(tetrads) || !tetrads),
    ).toEqual([]);
  });

  // Positions of towns from general knowledge, to about 1 km, each well inland of the nearest shore.
  it.each<[string, GridId, number, number]>([
    ["Birmingham", "british", -1.8904, 52.4862],
    ["Leeds", "british", -1.5491, 53.8008],
    ["Inverness", "british", -4.2247, 57.4778],
    ["Lerwick", "british", -1.147, 60.155],
    ["Douglas, Isle of Man", "british", -4.486, 54.152],
    ["St Kilda", "british", -8.585, 57.815],
    ["Limerick", "irish", -8.6267, 52.6638],
    ["Belfast", "irish", -5.9301, 54.5973],
    ["Clare Island", "irish", -10, 53.8],
    ["St Helier", "channel-islands", -2.105, 49.187],
    ["Sark", "channel-islands", -2.36, 49.43],
  ])("has land at %s", (_, grid, longitude, latitude) => {
    expect(hasLand(grid, longitude, latitude)).toBe(true);
  });

  it.each<[string, GridId, number, number]>([
    ["the middle of the Irish Sea, British grid", "british", -5.25, 53.7],
    ["the middle of the Irish Sea, Irish grid", "irish", -5.25, 53.7],
    ["the English Channel", "british", -1.5, 50.1],
    ["the Moray Firth", "british", -3.2, 57.95],
    ["Galway Bay", "irish", -9.4, 53.18],
    ["between Guernsey and Jersey", "channel-islands", -2.35, 49.33],
    ["the Cotentin, which is not in any territory", "channel-islands", -1.6, 49.5],
  ])("has none in %s", (_, grid, longitude, latitude) => {
    expect(hasLand(grid, longitude, latitude)).toBe(false);
  });
});
