import { describe, expect, it } from "vitest";
import { datumShiftAt } from "../../src/geodesy/accuracy.ts";
import { readGridShift } from "../../src/geodesy/grid-shift.ts";
import { MADE_TABLES, makeNtv2 } from "../support/ntv2.ts";

/** Accuracies from the EPSG register, v10.076; for OSGB36 the worst official OSTN15 test point, rounded up. */
describe("datumShiftAt", () => {
  it.each([
    ["EPSG:4326", 0, 0, "none", 0],
    ["EPSG:32630", -3, 50, "none", 0],
    ["EPSG:3035", 10, 52, "EPSG:1149, taken as WGS84", 1],
    ["EPSG:2157", -8, 53, "EPSG:1678, taken as WGS84", 1],
    ["EPSG:27700", -1.5, 52, "EPSG:1314, seven parameters", 5],
    ["EPSG:29903", -6.26, 53.35, "EPSG:1041, official polynomial", 0.4],
    ["EPSG:29903", -11, 53.35, "EPSG:1954, seven parameters", 1],
    ["EPSG:23030", -2.5, 49.4, "EPSG:1138, three parameters", 6],
    ["EPSG:31370", 4.35, 50.85, "EPSG:15929, seven parameters", 1],
  ])("%s at %s %s: %s, %s m", (crs, longitude, latitude, operation, accuracy) => {
    expect(datumShiftAt(crs, longitude, latitude)).toEqual({ operation, accuracy });
  });

  it("names a grid-shift file inside its cover, and what takes over outside", () => {
    const file = readGridShift(makeNtv2(MADE_TABLES), { name: "made.gsb", datum: "EPSG:4277", accuracy: 0.1 });
    expect(datumShiftAt("EPSG:27700", 1.7, 52.6, file)).toEqual({ operation: "made.gsb", accuracy: 0.1 });
    expect(datumShiftAt("EPSG:27700", -4, 57, file).operation).toBe("EPSG:1314, seven parameters");
    expect(datumShiftAt("EPSG:29903", -6.26, 53.35, file).operation).toBe("EPSG:1041, official polynomial");
  });

  it("refuses an unknown code", () => {
    expect(() => datumShiftAt("EPSG:1", 0, 0)).toThrow("unknown coordinate system “EPSG:1”");
  });
});
