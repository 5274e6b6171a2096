import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { gridNamed } from "../../../../src/grids/index.ts";
import { hectadOfReference } from "../../../../src/site/components/find/hectad-of-reference.ts";

const british = gridNamed("british");

describe("hectadOfReference", () => {
  it("reads references as people write them", () => {
    const written = ["NZ27", "nz 2574 6412", "NZ25746412", "NZ27F", "NZ27NE", "N27", "n 2574 7412", "10kmE398N302"];
    expect(written.map(hectadOfReference)).toEqual([
      "NZ27",
      "NZ26",
      "NZ26",
      "NZ27",
      "NZ27",
      "N27",
      "N27",
      "10kmE398N302",
    ]);
  });
  it("takes nothing else for a reference", () => {
    for (const text of ["", "red-tailed", "NZ2", "NZ274", "NZ27O", "IZ27", "12 34", "NZ"])
      expect(hectadOfReference(text)).toBeUndefined();
  });
  it("agrees with the British grid for any place on it", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 100_000, max: 650_000 }),
        fc.integer({ min: 50_000, max: 1_200_000 }),
        (easting, northing) => {
          const point = { crs: "EPSG:27700", easting, northing };
          const [fine, coarse] = ([100, 10_000] as const).map((size) => british.squareAt(point, size));
          if (fine === undefined || coarse === undefined) throw new Error("off the grid");
          expect(hectadOfReference(british.format(fine))).toBe(british.format(coarse));
        },
      ),
    );
  });
});
