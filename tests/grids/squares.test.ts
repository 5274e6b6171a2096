import { describe, expect, it } from "vitest";
import { britishGrid } from "../../src/grids/british.ts";
import { laeaGrid } from "../../src/grids/laea.ts";
import { mgrsGrid } from "../../src/grids/mgrs.ts";
import { centreOf, childrenOf, cornersOf, parentOf } from "../../src/grids/squares.ts";
import { parseGood, REFERENCES } from "./grid-cases.ts";

const british = britishGrid();
const named = (reference: string) => parseGood(british, reference);

describe("parentOf", () => {
  it.each([
    ["TQ388773", 1_000, "TQ3877"],
    ["TQ388773", 2_000, "TQ37Y"],
    ["TQ3877", 5_000, "TQ37NE"],
    ["TQ38A", 10_000, "TQ38"],
    ["TQ38SW", 10_000, "TQ38"],
    ["TQ38SW", 5_000, "TQ38SW"],
    ["TQ38", 100_000, "TQ"],
  ] as const)("of %s at %s m is %s", (reference, size, parent) => {
    expect(parentOf(british, named(reference), size)).toEqual(named(parent));
  });

  it.each([
    ["TQ38SW", 2_000, "a quarter is coarser than a tetrad"],
    ["TQ38M", 5_000, "the middle tetrad lies in four quarters"],
    ["TQ38", 1_000, "a hectad is coarser than a monad"],
    ["TQ38", 50_000, "the grid has no such size"],
  ] as const)("of %s at %s m is none: %s", (reference, size, _why) => {
    expect(parentOf(british, named(reference), size)).toBeUndefined();
  });

  it("of the nine tetrads on a hectad's middle lines at 5 km is none, of the other sixteen their quarter", () => {
    const tetrads = childrenOf(british, named("TQ38"), 2_000);
    const whole = tetrads.filter((tetrad) => parentOf(british, tetrad, 5_000) !== undefined);
    expect(whole).toHaveLength(16);
  });
});

describe("childrenOf", () => {
  it("are the tetrads in the order of their letters", () => {
    const letters = childrenOf(british, named("TQ38"), 2_000).map((tetrad) => british.format(tetrad).slice(4));
    expect(letters).toEqual(Object.keys(REFERENCES.dinty));
  });

  it("tile their square, each with it as its parent", () => {
    const monads = childrenOf(british, named("HU39"), 1_000);
    expect(new Set(monads.map((monad) => british.format(monad))).size).toBe(100);
    for (const monad of monads) expect(parentOf(british, monad, 10_000)).toEqual(named("HU39"));
  });

  it("of a square are itself at its own size", () => {
    expect(childrenOf(british, named("TQ38"), 10_000)).toEqual([named("TQ38")]);
  });

  it("beyond a zone's edge are left out", () => {
    const grid = mgrsGrid();
    // Greenwich, 0.1 km west of the edge of zone 30, is at 708 km east; so one column of ten is left.
    const cut = childrenOf(grid, parseGood(grid, "30UYC"), 10_000);
    expect(cut.map(({ easting }) => easting)).toEqual(Array(10).fill(700_000));
  });

  it.each([
    ["TQ38SW", 2_000],
    ["TQ3877", 2_000],
  ] as const)("of %s at %s m are refused", (reference, size) => {
    expect(() => childrenOf(british, named(reference), size)).toThrow(RangeError);
  });

  it("of an European cell of 500 m are four of 250 m", () => {
    const grid = laeaGrid();
    expect(childrenOf(grid, parseGood(grid, "500mE29345N34175"), 250)).toHaveLength(4);
  });
});

describe("cornersOf", () => {
  it("runs counter-clockwise, so that a ring of them has its area positive", () => {
    const corners = cornersOf(named("TQ37"));
    const doubleArea = corners.reduce((sum, corner, index) => {
      const next = corners[(index + 1) % 4] as (typeof corners)[0];
      return sum + corner.easting * next.northing - next.easting * corner.northing;
    }, 0);
    expect(doubleArea / 2).toBe(10_000 ** 2);
  });
});

describe("examples", () => {
  it("parentOf", () => {
    expect(parentOf(british, named("TQ3877"), 10_000)).toEqual({
      grid: "british",
      crs: "EPSG:27700",
      easting: 530000,
      northing: 170000,
      size: 10000,
    });
  });
  it("childrenOf", () => expect(childrenOf(british, named("TQ38"), 2_000)).toHaveLength(25));
  it("cornersOf", () =>
    expect(cornersOf(named("TQ37"))[2]).toEqual({ crs: "EPSG:27700", easting: 540000, northing: 180000 }));
  it("centreOf", () =>
    expect(centreOf(named("TQ37"))).toEqual({ crs: "EPSG:27700", easting: 535000, northing: 175000 }));
});
