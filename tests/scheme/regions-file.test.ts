import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { readRegions } from "../../src/scheme/regions-file.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

const RING = [
  [
    [-2, 51],
    [-1, 51],
    [-1, 52],
    [-2, 51],
  ],
];

function regions(properties: object) {
  const folder = makeTemporaryFolder();
  const feature = { type: "Feature", properties, geometry: { type: "Polygon", coordinates: RING } };
  writeFileSync(join(folder, "regions.geojson"), JSON.stringify({ type: "FeatureCollection", features: [feature] }));
  return readRegions(folder);
}

it("reads regions with the field that states them, and none where there is no file", () => {
  expect(readRegions(makeTemporaryFolder())).toEqual([]);
  expect(regions({ field: "viceCounty", name: "Squareshire", code: 7, area: 1 })).toEqual([
    { field: "viceCounty", name: "Squareshire", code: "7", polygon: { type: "Polygon", coordinates: RING } },
  ]);
});

it("refuses regions of no field or no name", () => {
  expect(() => regions({ field: "parish", name: "Squareshire" })).toThrow("properties field and name");
  expect(() => regions({ field: "county", name: "" })).toThrow("properties field and name");
});
