import fc from "fast-check";
import geodesic from "geographiclib-geodesic";
import { describe, expect, it } from "vitest";
import { gnomonicAbout } from "../../src/geodesy/gnomonic.ts";

describe("gnomonicAbout", () => {
  it("is that of Snyder about a point of the equator", () => {
    // Snyder (1987), ch. 22, the equatorial aspect: x = tan λ, y = tan φ / cos λ; of λ = φ = 30° these are 1/√3 and 2/3.
    const plane = gnomonicAbout([
      [-10, 0],
      [10, 0],
    ]);
    const point = plane(30, 30);
    expect(point?.x).toBeCloseTo(1 / Math.sqrt(3), 12);
    expect(point?.y).toBeCloseTo(2 / 3, 12);
  });

  it("draws great circles straight: the middle of two points of a meridian or the equator is on their line", () => {
    const plane = gnomonicAbout([
      [-4, 54],
      [-2, 52],
      [-7, 53],
    ]);
    const [a, b, c] = [plane(-4, 50), plane(-4, 54), plane(-4, 60)];
    if (a === undefined || b === undefined || c === undefined) throw new Error("in no plane");
    expect((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)).toBeCloseTo(0, 14);
  });

  it("bends geodesics of the ellipsoid by less than 160 m in a thousand kilometres, as the square of their length", () => {
    const position = fc.tuple(
      fc.double({ min: -11, max: 3, noNaN: true }),
      fc.double({ min: 49, max: 61, noNaN: true }),
    );
    fc.assert(
      fc.property(position, position, ([east1, north1], [east2, north2]) => {
        const line = geodesic.Geodesic.WGS84.InverseLine(north1, east1, north2, east2);
        const middle = line.Position(line.s13 / 2);
        const plane = gnomonicAbout([[-4, 55]]);
        const [from, at, to] = [plane(east1, north1), plane(middle.lon2 ?? 0, middle.lat2 ?? 0), plane(east2, north2)];
        if (from === undefined || at === undefined || to === undefined) throw new Error("in no plane");
        const across = Math.abs((to.x - from.x) * (at.y - from.y) - (to.y - from.y) * (at.x - from.x));
        const length = Math.hypot(to.x - from.x, to.y - from.y);
        // In units of the sphere: 0.001 of the length squared is 157 m of 1,000 km. The flattening, 1/298, is what bends.
        expect(across).toBeLessThanOrEqual(1e-3 * length ** 3 + 1e-15);
      }),
    );
  });

  it("has no place for the other side of the globe", () => {
    expect(gnomonicAbout([[0, 0]])(0, 80)).toBeUndefined();
    expect(gnomonicAbout([[0, 0]])(180, 0)).toBeUndefined();
  });
});
