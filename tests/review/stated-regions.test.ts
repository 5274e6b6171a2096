import { describe, expect, it } from "vitest";
import { mayBeRight } from "../../src/review/stated-regions.ts";
import type { Region } from "../../src/scheme/regions-file.ts";

/** A square degree, 1–2° west and 51–52° north. */
const SHIRE: Region = {
  id: "squareshire",
  territory: "",
  field: "viceCounty",
  name: "Squareshire",
  code: "7",
  polygon: {
    type: "Polygon",
    coordinates: [
      [
        [-2, 51],
        [-1, 51],
        [-1, 52],
        [-2, 52],
        [-2, 51],
      ],
    ],
  },
};
const at = (longitude: number, latitude: number, reach_m = 71, grid: "british" | "irish" | "laea" = "british") => ({
  longitude,
  latitude,
  reach_m,
  grid,
});
const agree = mayBeRight([SHIRE]);

describe("a region of the scheme's file", () => {
  it("agrees with places in it, by name or number", () => {
    for (const stated of ["Squareshire", "squareSHIRE ", "7", "VC7", "vc 07", "VC. 7"])
      expect([
        stated,
        agree("viceCounty", stated, at(-1.5, 51.5)),
        agree("viceCounty", stated, at(-0.5, 51.5)),
      ]).toEqual([stated, true, false]);
  });

  it("agrees with a place that reaches into it", () => {
    // 0.95° west is 0.05 × 111.2 km × cos 51.5° = 3.5 km east of its line.
    expect(agree("viceCounty", "7", at(-0.95, 51.5, 3_000))).toBe(false);
    expect(agree("viceCounty", "7", at(-0.95, 51.5, 4_000))).toBe(true);
  });

  it("says nothing of another field or a name it does not know", () => {
    expect(agree("county", "Squareshire", at(-0.5, 51.5))).toBe(true);
    expect(agree("viceCounty", "H7", at(-0.5, 51.5))).toBe(true);
    expect(agree("viceCounty", "Roundshire", at(-0.5, 51.5))).toBe(true);
  });
});

describe("a country", () => {
  it("is held against the grid of the place", () => {
    expect(agree("countryCode", "IE", at(-1.5, 51.5))).toBe(false);
    expect(agree("countryCode", "FR", at(-1.5, 51.5))).toBe(false);
    expect(agree("countryCode", "gb", at(-1.5, 51.5))).toBe(true);
    expect(agree("country", "Ireland", at(-1.5, 51.5))).toBe(false);
    expect(agree("country", "Wales", at(-1.5, 51.5))).toBe(true);
  });

  it("lets Northern Ireland use the Irish grid, and knows no countries on the grids of the continent", () => {
    expect(agree("countryCode", "GB", at(-6, 54.6, 71, "irish"))).toBe(true);
    expect(agree("country", "Northern Ireland", at(-6, 54.6, 71, "irish"))).toBe(true);
    expect(agree("countryCode", "IE", at(5, 52, 71, "laea"))).toBe(true);
  });

  it("says nothing in words it does not know", () => {
    expect(agree("country", "Vereinigtes Königreich", at(-1.5, 51.5))).toBe(true);
    expect(agree("countryCode", "ZZ", at(-1.5, 51.5))).toBe(true);
  });
});
