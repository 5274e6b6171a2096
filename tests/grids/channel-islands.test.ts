import { describe, expect, it } from "vitest";
import { channelIslandsGrid } from "../../src/grids/channel-islands.ts";
import { isRefusal } from "../../src/grids/grid.ts";
import { parseGood, REFERENCES, SIZE_OF_LABEL } from "./grid-cases.ts";

const grid = channelIslandsGrid();
const CRS = "EPSG:23030";

describe("Channel Islands references of tests/reference/grid-references.json", () => {
  it.each(REFERENCES.channel_islands)(
    "$ref is the square of $size m at $easting $northing",
    ({ ref, easting, northing, size }) => {
      expect(grid.parse(ref)).toEqual({ grid: "channel-islands", crs: CRS, easting, northing, size });
      expect(grid.format(parseGood(grid, ref))).toBe(ref);
    },
  );

  const forward = REFERENCES.forward.filter(({ system }) => system === "ci");
  it.each(forward)("$id is named at every size", ({ easting, northing, refs }) => {
    for (const [label, ref] of Object.entries(refs)) {
      const square = grid.squareAt({ crs: CRS, easting, northing }, SIZE_OF_LABEL[label] ?? 1);
      expect(square && grid.format(square)).toBe(ref);
    }
  });

  it("letters two squares of 100 km, and no others", () => {
    const alphabet = [..."ABCDEFGHIJKLMNOPQRSTUVWXYZ"];
    const accepted = alphabet
      .flatMap((first) => alphabet.map((second) => first + second))
      .filter((letters) => !isRefusal(grid.parse(letters)));
    expect(accepted).toEqual(["WA", "WV"]);
  });
});

describe("the datum", () => {
  // Points CI01 and the same in WGS84 / UTM zone 30N, PROJ 9.1.1: St Helier.
  const [longitude, latitude] = [-2.106568, 49.186823];

  it("is ED50 unless set", () => {
    const point = grid.project(longitude, latitude);
    expect(point.crs).toBe(CRS);
    expect(point.easting).toBeCloseTo(565203.6225, 2);
    expect(point.northing).toBeCloseTo(5448824.5723, 2);
  });

  it("may be WGS84, 238 m away", () => {
    const point = channelIslandsGrid("WGS84").project(longitude, latitude);
    expect(point.crs).toBe("EPSG:32630");
    expect(point.easting).toBeCloseTo(565102.731, 2);
    expect(point.northing).toBeCloseTo(5448608.522, 2);
    const other = grid.project(longitude, latitude);
    expect(Math.hypot(point.easting - other.easting, point.northing - other.northing)).toBeCloseTo(238.5, 0);
  });

  it("is carried by every square", () => {
    expect(parseGood(channelIslandsGrid("WGS84"), "WV64").crs).toBe("EPSG:32630");
  });
});

describe("refusals", () => {
  it.each([
    [
      "TQ38",
      "TQ is not a square of the Channel Islands",
      "begin with WV or WA, or read it with the grid its letters belong to",
    ],
    [
      "O1534",
      "“O1534” does not begin with WV or WA",
      "write the letters first, as in WV6548, or read it with the grid its letters belong to",
    ],
    ["WV123", "3 figures (123) cannot be halved", "give as many figures for the easting as for the northing"],
    ["", "the reference is empty", "give WV or WA and figures, as in WV6548"],
  ])("“%s”: %s", (text, refused, wayOut) => expect(grid.parse(text)).toEqual({ refused, wayOut }));

  it.each([
    [499_999, 5_450_000],
    [600_000, 5_450_000],
    [550_000, 5_399_999],
    [550_000, 5_600_000],
  ])("there is no square at %s %s", (easting, northing) => {
    expect(grid.squareAt({ crs: CRS, easting, northing }, 1_000)).toBeUndefined();
  });
});

describe("examples", () => {
  it("channelIslandsGrid", () => {
    expect(grid.parse("WV6548")).toEqual({
      grid: "channel-islands",
      crs: CRS,
      easting: 565000,
      northing: 5448000,
      size: 1000,
    });
  });
});
