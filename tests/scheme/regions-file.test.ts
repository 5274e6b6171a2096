import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { readRegions, regionKey } from "../../src/scheme/regions-file.ts";
import { makeTemporaryFolder } from "../support/temporary-folder.ts";

const RING = [
  [
    [-2, 51],
    [-1, 51],
    [-1, 52],
    [-2, 51],
  ],
];

function regions(...properties: object[]) {
  const folder = makeTemporaryFolder();
  const features = properties.map((own) => ({
    ...{ type: "Feature", properties: own, geometry: { type: "Polygon", coordinates: RING } },
  }));
  writeFileSync(join(folder, "regions.geojson"), JSON.stringify({ type: "FeatureCollection", features }));
  return readRegions(folder);
}

it("reads regions with the field that states them, and none where there is no file", () => {
  expect(readRegions(makeTemporaryFolder())).toEqual([]);
  expect(regions({ field: "viceCounty", name: "Squareshire", code: 7, area: 1 })).toEqual([
    {
      ...{ id: "squareshire", territory: "", field: "viceCounty", name: "Squareshire", code: "7" },
      polygon: { type: "Polygon", coordinates: RING },
    },
  ]);
});

it("refuses regions of no field or no name", () => {
  expect(() => regions({ field: "parish", name: "Squareshire" })).toThrow("properties field and name");
  expect(() => regions({ field: "county", name: "" })).toThrow("properties field and name");
});

it("makes an id of the name, takes the one given, and joins features that share all three", () => {
  const named = (...own: object[]) => regions(...own.map((one) => ({ field: "county", ...one }))).map(({ id }) => id);
  expect(named({ name: "Bláth & Tor, West" }, { name: "Isle", id: "isle-2" })).toEqual(["blath-tor-west", "isle-2"]);
  expect(named({ name: "Isle" }, { name: "Isle" })).toEqual(["isle", "isle"]);
});

it("refuses two regions of one id, and an id that is no address", () => {
  expect(() => regions({ field: "county", name: "Isle" }, { field: "viceCounty", name: "Isle" })).toThrow(
    "two regions, Isle (county) and Isle (viceCounty)",
  );
  expect(() => regions({ field: "county", name: "Isle", id: "The Isle" })).toThrow("small letters");
});

it("finds a region by its name in any case, and by the ways a number is written", () => {
  expect(["VC 07", "vc7", "VC. 7", "7", " 07 "].map(regionKey)).toEqual(["7", "7", "7", "7", "7"]);
  expect(["VC H07", "h7"].map(regionKey)).toEqual(["h7", "h7"]);
  expect(regionKey("Squareshire ")).toBe("squareshire");
});
