import type { MultiPolygon, Polygon } from "geojson";
import { describe, expect, it } from "vitest";
import { inTerritory, makeTerritory, territoryOf } from "../../src/geodesy/territory.ts";

const box = (west: number, south: number, east: number, north: number) => [
  [west, south],
  [east, south],
  [east, north],
  [west, north],
  [west, south],
];
const withLake: Polygon = { type: "Polygon", coordinates: [box(-10, 50, -6, 55), box(-9, 52, -8, 53)] };
const islands: MultiPolygon = { type: "MultiPolygon", coordinates: [[box(-6, 50, 2, 59)], [box(-3, 59.5, 0, 61)]] };
/** An L: the bounds of its outer ring hold more than it does. */
const bent: Polygon = {
  type: "Polygon",
  coordinates: [
    [
      [0, 0],
      [3, 0],
      [3, 1],
      [1, 1],
      [1, 3],
      [0, 3],
      [0, 0],
    ],
  ],
};
const territories = [makeTerritory("west", withLake), makeTerritory("east", islands)];

describe("territoryOf", () => {
  it.each([
    [-7, 54, "west"],
    [-8.5, 52.5, undefined],
    [-2, 52, "east"],
    [-2, 59.2, undefined],
    [-1.5, 60, "east"],
    [20, 52, undefined],
    [-6, 52, "west"],
    [Number.NaN, 52, undefined],
    [-2, Number.POSITIVE_INFINITY, undefined],
  ])("at %s %s is %s", (longitude, latitude, id) => expect(territoryOf(longitude, latitude, territories)).toBe(id));

  it("is none where there are no territories", () => expect(territoryOf(0, 0, [])).toBeUndefined());
});

describe("inTerritory", () => {
  it("tells the inner corner of a bent polygon from its inside", () => {
    const territory = makeTerritory("bent", bent);
    expect(inTerritory(2, 2, territory)).toBe(false);
    expect(inTerritory(0.5, 2, territory)).toBe(true);
    expect(inTerritory(2, 1, territory)).toBe(true);
  });
});

describe("examples", () => {
  it("makeTerritory", () => expect(makeTerritory("ireland", withLake).id).toBe("ireland"));
});
