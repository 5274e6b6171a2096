import fc from "fast-check";
import * as mgrs from "mgrs";
import { describe, expect, it } from "vitest";
import type { SquareSize } from "../../src/grids/grid.ts";
import { mgrsGrid } from "../../src/grids/mgrs.ts";
import { parseGood, REFERENCES, SIZE_OF_LABEL } from "./grid-cases.ts";

const grid = mgrsGrid();

describe("MGRS references of tests/reference/grid-references.json (GeoConvert)", () => {
  const cases = REFERENCES.mgrs.flatMap((row) =>
    Object.entries(SIZE_OF_LABEL)
      .filter(([label]) => row[label] !== undefined)
      .map(([label, size]) => ({ name: row.name, lat: row.lat, lon: row.lon, ref: row[label] as string, size })),
  );

  it("are 90", () => expect(cases).toHaveLength(90));

  it.each(cases)("$name at $size m is $ref", ({ lat, lon, ref, size }) => {
    expect(grid.parse(ref)).toEqual(grid.squareAt(grid.project(lon, lat), size));
  });

  // A square across 56°N has two names there, one a band; ours is the southern.
  const twoNames = new Set(["30VVH", "30VVH80", "30VVH8706"]);
  it.each(cases.filter(({ ref }) => !twoNames.has(ref)))("$ref is written so", ({ ref }) => {
    expect(grid.format(parseGood(grid, ref))).toBe(ref);
  });

  it.each([...twoNames])("%s, across 56°N, is one square with its southern name", (ref) => {
    expect(grid.format(parseGood(grid, ref))).toBe(ref.replace("30V", "30U"));
    expect(grid.parse(ref.replace("30V", "30U"))).toEqual(grid.parse(ref));
  });
});

describe("random points (npm mgrs 2.2.0)", () => {
  it("lie in the square that implementation names", () => {
    const position = fc.record({
      longitude: fc.double({ min: -180, max: 179.999, noNaN: true }),
      latitude: fc.double({ min: -79.99, max: 83.99, noNaN: true }),
      accuracy: fc.integer({ min: 1, max: 4 }),
    });
    fc.assert(
      fc.property(position, ({ longitude, latitude, accuracy }) => {
        const size = (10 ** (5 - accuracy)) as SquareSize;
        const point = grid.project(longitude, latitude);
        // Its older series differs by millimetres, so points that near a line of the square are left out.
        const clear = [point.easting, point.northing].every(
          (value) => value % size > 0.05 && value % size < size - 0.05,
        );
        fc.pre(clear);
        expect(grid.parse(mgrs.forward([longitude, latitude], accuracy))).toEqual(grid.squareAt(point, size));
      }),
      { numRuns: 1000 },
    );
  });
});

describe("squares at the edge of a zone", () => {
  it("are named by their zone on both sides of 6°W", () => {
    // From the reference table, just west and just east of 6°W: the squares of two zones overlap on the ground.
    expect(parseGood(grid, "29UPA95").crs).toBe("EPSG:32629");
    expect(parseGood(grid, "30UUF05").crs).toBe("EPSG:32630");
  });

  it("have a square at a point of the zone only if part of it is in the zone", () => {
    // 4°E 55°N is in zone 31; given in zone 30 it lies 4° beyond the zone's edge, whose squares end there.
    expect(grid.squareAt({ crs: "EPSG:32630", easting: 840_000, northing: 6_100_000 }, 10_000)).toBeUndefined();
  });
});

describe("zones of Norway and Svalbard", () => {
  it.each([
    [5.3, 60.4, "EPSG:32632"],
    [2.9, 60.4, "EPSG:32631"],
    [5.3, 55.9, "EPSG:32631"],
    [5.3, 64.1, "EPSG:32631"],
    [8.9, 78, "EPSG:32631"],
    [9.1, 78, "EPSG:32633"],
    [20.9, 78, "EPSG:32633"],
    [21.1, 78, "EPSG:32635"],
    [33.1, 78, "EPSG:32637"],
    [41.9, 83.9, "EPSG:32637"],
    [42.1, 83.9, "EPSG:32638"],
    [9.1, 71.9, "EPSG:32632"],
    [-0.1, -33, "EPSG:32730"],
    [180, 10, "EPSG:32660"],
  ])("%s %s is in %s (NGA.STND.0037, table of UTM zone exceptions)", (longitude, latitude, crs) => {
    expect(grid.project(longitude, latitude).crs).toBe(crs);
  });
});

describe("the equator", () => {
  it("is in the northern hemisphere, and the least south of it in the southern", () => {
    expect(grid.format(parseGood(grid, "31NAA66"))).toBe("31NAA66");
    const square = grid.squareAt(grid.project(3, -5e-324), 1);
    expect(square).toEqual({ grid: "mgrs", crs: "EPSG:32731", easting: 500_000, northing: 9_999_999, size: 1 });
  });
});

describe("refusals", () => {
  it.each([
    ["WV6548", "“WV6548” does not begin with a zone, a band and two letters"],
    ["61UYC", "61 is no UTM zone"],
    ["0UYC", "0 is no UTM zone"],
    ["30IYC", "I is no band of the UTM zones"],
    ["30BYC", "B is no band of the UTM zones"],
    ["30UAC", "zone 30 has no square AC"],
    ["30UYK99", "zone 30U has no square YK"],
    ["30UZC99", "zone 30U has no square ZC"],
    ["32XMG", "zone 32X has no square MG"],
    // Letters whose rows reach beyond 84°N, where the outer squares lie further from the meridian than the projection holds.
    ["3USP74", "zone 3U has no square SP"],
    ["42WZU346078", "zone 42W has no square ZU"],
    ["30UYC123", "3 figures (123) cannot be halved"],
    ["30UYC99", "30UYC99 lies outside zone 30"],
  ])("“%s”: %s", (text, refused) => expect(grid.parse(text)).toMatchObject({ refused }));

  it("ask about a letter among the figures", () => {
    expect(grid.parse("30UYC08O7")).toMatchObject({
      wayOut:
        "if a letter stands for a figure, write 30UYC0807; otherwise write figures only after the letters, as in 3877",
    });
  });

  it("positions beyond 80°S and 84°N, and points of another system", () => {
    expect(() => grid.project(0, 84.01)).toThrow("latitude 84.01 is outside the UTM zones, -80° to 84°");
    expect(() => grid.project(0, -80.01)).toThrow("outside the UTM zones");
    expect(() => grid.unproject({ crs: "EPSG:27700", easting: 1, northing: 1 })).toThrow("is in EPSG:27700");
  });
});

describe("examples", () => {
  it("mgrsGrid", () => {
    expect(grid.parse("30U YC 08 07")).toEqual({
      grid: "mgrs",
      crs: "EPSG:32630",
      easting: 708000,
      northing: 5707000,
      size: 1000,
    });
  });
});
