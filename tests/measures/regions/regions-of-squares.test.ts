import type { Polygon } from "geojson";
import { describe, expect, it } from "vitest";
import type { Grid, Square } from "../../../src/grids/grid.ts";
import { gridNamed } from "../../../src/grids/index.ts";
import { regionsOfSquares } from "../../../src/measures/regions/regions-of-squares.ts";
import type { Region } from "../../../src/scheme/regions-file.ts";

const british = gridNamed("british");
const grids = new Map<string, Grid>([["british", british]]);

/** A polygon whose corners are given in metres of the British grid, with sides so short that they are straight there too. */
function onGrid(...corners: (readonly [easting: number, northing: number])[]): Polygon {
  const ring = corners.flatMap(([x, y], index) => {
    const [toX, toY] = corners[(index + 1) % corners.length] ?? [x, y];
    return Array.from({ length: 100 }, (_, step) =>
      british.unproject({
        crs: "EPSG:27700",
        easting: x + ((toX - x) * step) / 100,
        northing: y + ((toY - y) * step) / 100,
      }),
    );
  });
  return { type: "Polygon", coordinates: [[...ring, ring[0] ?? [0, 0]]] };
}
const box = (west: number, south: number, east: number, north: number) =>
  onGrid([west, south], [east, south], [east, north], [west, north]);
const region = (id: string, polygon: Polygon): Region => ({
  id,
  name: id,
  code: "",
  territory: "",
  field: "county",
  polygon,
});
const touching = (square: string, ...regions: Region[]) =>
  regionsOfSquares([{ grid: "british", square }], regions, grids)[0];

describe("regionsOfSquares", () => {
  // SK12 is 410000–420000 east, 320000–330000 north; its tetrad A is the south-west one, Z the north-east.
  const west = region("west", box(400_000, 310_000, 413_000, 340_000));
  const east = region("east", box(413_000, 310_000, 430_000, 340_000));

  it("gives one region to a square wholly in it, and both to one on the boundary, though its centre is in one", () => {
    expect(touching("SK12", west, east)).toEqual(["west", "east"]);
    expect(touching("SK12A", west, east)).toEqual(["west"]);
    // 412000–414000: the boundary at 413000 goes through its middle.
    expect(touching("SK12F", west, east)).toEqual(["west", "east"]);
    expect(touching("SK12Z", west, east)).toEqual(["east"]);
    expect(touching("SK42", west, east)).toEqual([]);
  });

  it("takes less than 4,000 square metres for the drawing of a line", () => {
    // A strip 2,000 m long in the tetrad SK12A, which ends at 412000: 1.9 m wide is 3,800 m², 2.1 m is 4,200 m².
    const strip = (metres: number) => region("strip", box(412_000 - metres, 310_000, 413_000, 340_000));
    expect(touching("SK12A", strip(1.9))).toEqual([]);
    expect(touching("SK12A", strip(2.1))).toEqual(["strip"]);
  });

  it("leaves out holes, and adds polygons of one region", () => {
    const whole = box(400_000, 310_000, 430_000, 340_000);
    const hole = box(409_000, 319_000, 421_000, 331_000).coordinates[0] ?? [];
    expect(touching("SK12", region("ring", { type: "Polygon", coordinates: [...whole.coordinates, hole] }))).toEqual(
      [],
    );
    const [left, right] = [410_000, 410_002].map((x) => region("two", box(x, 320_000, x + 1.5, 322_000)));
    expect([left, right].map((one) => touching("SK12A", one as Region))).toEqual([[], []]);
    expect(touching("SK12A", left as Region, right as Region)).toEqual(["two"]);
  });

  it("cuts a polygon of half the world, which the projection cannot hold, to where the squares are", () => {
    const ring = [
      [-179, -80],
      [179, -80],
      [179, 80],
      [-179, 80],
      [-179, -80],
    ];
    expect(touching("SK12", region("world", { type: "Polygon", coordinates: [ring] }))).toEqual(["world"]);
  });

  it("reads squares of zones in the zone's own plane, and knows nothing of squares its grid does not know", () => {
    const mgrs = gridNamed("mgrs");
    const [longitude, latitude] = [-1.5, 52.5];
    const square = mgrs.squareAt(mgrs.project(longitude, latitude), 10_000) as Square;
    const around = region("here", {
      type: "Polygon",
      coordinates: [
        [
          [-8, 50],
          [2, 50],
          [2, 54],
          [-8, 54],
          [-8, 50],
        ],
      ],
    });
    const asked = [
      { grid: "mgrs", square: mgrs.format(square) },
      { grid: "mgrs", square: "no square" },
      { grid: "other", square: "SK12" },
    ];
    expect(regionsOfSquares(asked, [around], new Map<string, Grid>([["mgrs", mgrs]]))).toEqual([["here"], [], []]);
  });
});
