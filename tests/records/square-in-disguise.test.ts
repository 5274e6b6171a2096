import { describe, expect, it } from "vitest";
import { squareInDisguise } from "../../src/records/square-in-disguise.ts";
import { circle, fields, placed, position } from "./placing.ts";

function disguiseOf(latitude: number, longitude: number, decimals: number, uncertainty = ""): string {
  const place = placed(
    position(latitude.toFixed(decimals), longitude.toFixed(decimals), { coordinateUncertaintyInMeters: uncertainty }),
  );
  const found = squareInDisguise(place);
  return found === undefined ? "a point" : place.territory.grid.format(found.square);
}

/** Grid positions in WGS84 by PROJ 9.1.1: cs2cs -f %.9f EPSG:27700 EPSG:4326 and EPSG:29903 EPSG:4326, which gives latitude first. */
const SQUARES: readonly [what: string, square: string, latitude: number, longitude: number][] = [
  ["the centre of a hectad", "TQ38", 51.547750934, -0.054443424],
  ["the corner of a hectad", "TQ38", 51.503990828, -0.12835394],
  ["the centre of a tetrad", "TQ38H", 51.548225435, -0.083269638],
  ["the corner of a tetrad", "TQ38I", 51.557446453, -0.097308089],
  ["the centre of a kilometre square", "TQ3385", 51.55260063, -0.075873432],
  ["the centre of a hectad far from the others", "NN27", 56.833417147, -4.869972991],
  ["the centre of an Irish hectad", "O13", 53.352947853, -6.273697348],
  ["the corner of an Irish hectad", "O13", 53.309103939, -6.350485158],
  ["the centre of an Irish kilometre square", "O1534", 53.348348575, -6.266374527],
  ["the corner of an Irish tetrad", "O13I", 53.36257211, -6.318375326],
];

describe("a point that is a square in disguise", () => {
  it.each(SQUARES)("stands on %s, %s, to five and to six decimals", (_, square, latitude, longitude) => {
    expect(disguiseOf(latitude, longitude, 5)).toBe(square);
    expect(disguiseOf(latitude, longitude, 6)).toBe(square);
  });

  it.each(SQUARES)("is none 40 m away from %s", (_, __, latitude, longitude) => {
    // 0.0004° of latitude are 44 m.
    expect(["a point", "TQ332857"]).toContain(
      disguiseOf(latitude + 0.0004, longitude, 5).replace(/^TQ\d{6}$|^[NO]N?\d{6}$/, "a point"),
    );
  });

  it("is the largest square it stands on", () => {
    // 533000 187000 is the centre of a tetrad and the corner of a kilometre square.
    expect(disguiseOf(51.566198113, -0.082513866, 6)).toBe("TQ38I");
  });

  it("could be chance for a square of 100 m, whose share among honest points is told", () => {
    const found = squareInDisguise(circle("british", 533_450, 185_350, 50));
    expect(found?.square).toMatchObject({ size: 100, easting: 533_400, northing: 185_300 });
    // Two places in a square of 100 m, each 20 m wide: 2 × (20/100)².
    expect(found?.chance).toBeCloseTo(0.08, 10);
    expect(squareInDisguise(circle("british", 535_000, 185_000, 50))?.chance).toBeCloseTo(2 * (20 / 10_000) ** 2, 10);
  });

  it("is the kilometre square, not the 5 km quarter, where it is the middle of both", () => {
    expect(squareInDisguise(circle("british", 532_500, 182_500, 50))?.square).toMatchObject({
      size: 1000,
      easting: 532_000,
      northing: 182_000,
    });
  });

  it("is never a square that was named as one", () => {
    expect(squareInDisguise(placed(fields({ gridReference: "TQ38" })))).toBeUndefined();
  });
});
