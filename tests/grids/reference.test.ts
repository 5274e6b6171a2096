import { describe, expect, it } from "vitest";
import type { Grid } from "../../src/grids/grid.ts";
import { gridNamed } from "../../src/grids/index.ts";
import { readReference } from "../../src/grids/reference.ts";

const british = gridNamed("british");
const irish = gridNamed("irish");
const islands = gridNamed("channel-islands");
const all = [british, irish, islands];

describe("readReference", () => {
  it.each([
    ["TQ3877", "british"],
    ["O1534", "irish"],
    ["H10", "irish"],
    ["WV6548", "channel-islands"],
  ])("gives %s to the %s grid", (text, grid) => expect(readReference(text, all)).toMatchObject({ grid }));

  it.each([
    ["O159346", [british], "“O159346” is a reference of the Irish Grid, which this atlas does not use"],
    ["TQ38", [irish], "“TQ38” is a reference of the British National Grid, which this atlas does not use"],
    ["WV64", [british, irish], "“WV64” is a reference of the Channel Islands grid, which this atlas does not use"],
    [
      "10kmE324N348",
      all,
      "“10kmE324N348” is a reference of the European reference grid (ETRS89-LAEA), which this atlas does not use",
    ],
    [
      "30UYC08",
      all,
      "“30UYC08” is a reference of the Military Grid Reference System (UTM), which this atlas does not use",
    ],
    ["TQ123", all, "3 figures (123) cannot be halved"],
    ["O123", all, "3 figures (123) cannot be halved"],
    ["WV123", all, "3 figures (123) cannot be halved"],
    ["TQ123", [british], "3 figures (123) cannot be halved"],
    ["12", all, "“12” is not a reference of the British National Grid, the Irish Grid and the Channel Islands grid"],
    ["", all, "the reference is empty"],
  ])("refuses “%s” with its reason", (text, grids, refused) => {
    expect(readReference(text, grids)).toMatchObject({ refused, wayOut: expect.stringMatching(/\w/) });
  });

  it("refuses a text that two grids accept", () => {
    const other: Grid = { ...british, name: "Other Grid" };
    expect(readReference("TQ38", [british, other])).toEqual({
      refused: "“TQ38” is a reference of the British National Grid and the Other Grid",
      wayOut: "say which grid the source uses",
    });
  });

  it("needs a grid", () => expect(() => readReference("TQ38", [])).toThrow(RangeError));
});
