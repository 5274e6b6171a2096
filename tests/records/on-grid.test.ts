import { describe, expect, test } from "vitest";
import { gridNamed } from "../../src/grids/index.ts";
import { isOnGrid, projectOn } from "../../src/records/on-grid.ts";
import type { PlaceFields, PlacingRules } from "../../src/records/place.ts";
import { isUnplaced } from "../../src/records/place.ts";
import { placeFromCoordinates } from "../../src/records/place-from-coordinates.ts";
import { placeFromProjected } from "../../src/records/place-from-projected.ts";

const british = gridNamed("british", { channelIslandsDatum: "ED50" });
const irish = gridNamed("irish", { channelIslandsDatum: "ED50" });
const laea = gridNamed("laea", { channelIslandsDatum: "ED50" });
const nothing: PlaceFields = {
  gridReference: "",
  decimalLatitude: "",
  decimalLongitude: "",
  geodeticDatum: "",
  coordinateUncertaintyInMeters: "",
  easting: "",
  northing: "",
  dataGeneralizations: "",
};
const rules = (grid: typeof british, more: Partial<PlacingRules> = {}): PlacingRules => ({
  territories: [{ id: "only", grid, holds: (longitude, latitude) => isOnGrid(grid, longitude, latitude) }],
  minimumOverlap: 0.9,
  datum: "EPSG:4326",
  crs: undefined,
  sourceUncertainty: undefined,
  defaultUncertainty: 100,
  ...more,
});
const refusal = (answer: ReturnType<typeof placeFromCoordinates>) => (isUnplaced(answer) ? answer.refused.check : "");

describe("a territory without a polygon ends where its grid does", () => {
  test("a position in the English Midlands is on the British grid, Berlin and the North Pole are not", () => {
    expect(isOnGrid(british, -2.2, 52.8)).toBe(true);
    expect(isOnGrid(british, 13.4, 52.5)).toBe(false);
    expect(isOnGrid(british, 0, 90)).toBe(false);
  });

  test("a position the projection cannot hold is nowhere, not an error", () => {
    expect(projectOn(british, 52.8, -2.2)).toBeUndefined();
    expect(isOnGrid(gridNamed("mgrs", { channelIslandsDatum: "ED50" }), 10, 89)).toBe(false);
  });

  test("latitude and longitude exchanged are found out and proposed", () => {
    const fields = { ...nothing, decimalLatitude: "-2.1910", decimalLongitude: "52.8233" };
    expect(refusal(placeFromCoordinates(fields, rules(british)))).toBe("coordinates_exchanged");
  });
});

test("degrees whose datum is stated as a system of metres are refused, not read as metres", () => {
  const fields = { ...nothing, decimalLatitude: "52.8233", decimalLongitude: "-2.1910", geodeticDatum: "EPSG:27700" };
  expect(refusal(placeFromCoordinates(fields, rules(british)))).toBe("datum_unknown");
});

test("“not recorded” and the older “unknown” of Darwin Core state no datum: the source's own holds", () => {
  const fields = { ...nothing, decimalLatitude: "52.8233", decimalLongitude: "-2.1910" };
  for (const geodeticDatum of ["not recorded", "unknown", "Unknown"]) {
    expect(isUnplaced(placeFromCoordinates({ ...fields, geodeticDatum }, rules(british)))).toBe(false);
    const refused = placeFromCoordinates({ ...fields, geodeticDatum }, rules(british, { datum: undefined }));
    expect(refusal(refused)).toBe("datum_not_stated");
  }
});

test("eastings and northings of another system than the territory's grid are a point, not an error", () => {
  // Brussels, Grand-Place, in Belgian Lambert 72; by cs2cs of PROJ at latitude 50.8467030 (within 1 m).
  const fields = { ...nothing, easting: "148900", northing: "170700" };
  const place = placeFromProjected(fields, rules(laea, { crs: "EPSG:31370" }));
  if (isUnplaced(place)) throw new Error(place.refused.message);
  expect(place.shape.kind).toBe("circle");
  expect(place.latitude).toBeCloseTo(50.846703, 5);
  // Dublin's centre in British metres, where the territory's grid is the Irish one.
  const dublin = placeFromProjected(
    { ...nothing, easting: "116100", northing: "390400" },
    rules(irish, { crs: "EPSG:27700" }),
  );
  expect(isUnplaced(dublin)).toBe(false);
});
