import { expect, it } from "vitest";
import { fields, placed } from "./placing.ts";

const notes = (given: Parameters<typeof fields>[0]) => placed(fields(given)).notes.map(({ check }) => check);

// 51.7512, −1.2512 is E 451,788 N 206,099, in SP5106 (formulas of Ordnance Survey's guide to coordinate systems in Great
// Britain, 2020, worked in another program).
const POINT = { decimalLatitude: "51.7512", decimalLongitude: "-1.2512" };

it("asks where coordinates lie outside the square of the reference, beside their uncertainty", () => {
  expect(notes({ gridReference: "SP5106", ...POINT })).toEqual([]);
  expect(notes({ gridReference: "SP5306", ...POINT })).toEqual(["place_fields_disagree"]);
  // The western line of SP5306 is E 453,000: 1,212 m from the point.
  expect(notes({ gridReference: "SP5306", ...POINT, coordinateUncertaintyInMeters: "1000" })).toEqual([
    "place_fields_disagree",
  ]);
  expect(notes({ gridReference: "SP50", ...POINT })).toEqual([]);
});

it("tells an uncertainty of 0, and one larger than the square, where a reference is given too", () => {
  expect(notes({ gridReference: "SP5106", coordinateUncertaintyInMeters: "0" })).toEqual(["uncertainty_out_of_range"]);
  expect(notes({ gridReference: "SP5106", coordinateUncertaintyInMeters: "1000" })).toEqual([]);
  expect(notes({ gridReference: "SP5106", coordinateUncertaintyInMeters: "5000" })).toEqual([
    "uncertainty_above_square",
  ]);
});
