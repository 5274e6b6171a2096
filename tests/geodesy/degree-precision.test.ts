import { describe, expect, it } from "vitest";
import { decimalsAsWritten, precisionUncertainty } from "../../src/geodesy/degree-precision.ts";
import { readReferenceFile } from "../support/reference.ts";

interface Table {
  latitudes: number[];
  rows: { degrees?: number; minutes?: number; seconds?: number; metres: number[] }[];
}
const { latitudes, rows } = readReferenceFile<Table>("coordinate-precision.json");

describe("precisionUncertainty", () => {
  const cells = rows.flatMap(({ degrees = 0, minutes = 0, seconds = 0, metres }) =>
    latitudes.map((latitude, index) => ({
      latitude,
      precision: degrees + minutes / 60 + seconds / 3600,
      metres: metres[index] as number,
    })),
  );

  it("is checked in 52 cells", () => expect(cells).toHaveLength(52));

  it.each(cells)("of $precision° at $latitude° is $metres m as published", ({ latitude, precision, metres }) => {
    // The table is rounded up to the metre; five of its cells are one metre from the exact value rounded up.
    expect(Math.abs(Math.ceil(precisionUncertainty(latitude, precision)) - metres)).toBeLessThanOrEqual(1);
  });

  it("gives the published worked example, 10.27° to 0.01°: 1.5568 km", () => {
    expect(precisionUncertainty(10.27, 0.01)).toBeCloseTo(1556.8, 0);
  });

  it("gives the second worked example, 10° to 0.5°: 77.87 km", () => {
    expect(precisionUncertainty(10, 0.5) / 1000).toBeCloseTo(77.87, 2);
  });

  it("is the same north and south of the equator", () => {
    expect(precisionUncertainty(-54, 0.01)).toBe(precisionUncertainty(54, 0.01));
  });

  it.each([
    [91, 0.01],
    [Number.NaN, 0.01],
    [50, 0],
    [50, -1],
    [50, Number.NaN],
  ])("refuses latitude %s with precision %s", (latitude, precision) => {
    expect(() => precisionUncertainty(latitude, precision)).toThrow(RangeError);
  });
});

describe("decimalsAsWritten", () => {
  it.each([
    ["51.50", 2],
    ["-1,25", 2],
    ["52", 0],
    ["52.", 0],
    [".5", 1],
    ["5.15e1", 1],
    ["5e-3", 3],
    ["−6.260", 3],
    [" 51.47780 ", 5],
    ["51.5°", 1],
  ])("of “%s” are %s", (text, decimals) => expect(decimalsAsWritten(text)).toBe(decimals));

  it.each(["", "abc", "51 28", "51.4.7", "NaN", "1,234,567"])("of “%s” are not known", (text) => {
    expect(decimalsAsWritten(text)).toBeUndefined();
  });
});
