import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Centre, greatCircleKm, nearSquares } from "../../../src/measures/neighbourhood/near-squares.ts";

const anyCentre: fc.Arbitrary<Centre> = fc.record({
  latitude: fc.double({ min: 49, max: 61, noNaN: true }),
  longitude: fc.double({ min: -11, max: 2, noNaN: true }),
});

describe("greatCircleKm", () => {
  it("gives the published distance of two airports", () => {
    // 36.12° N 86.67° W to 33.94° N 118.40° W: 2887.26 km on a sphere of 6372.8 km, the common worked example of the
    // haversine; 2886.45 km on one of 6371.0088 km.
    expect(greatCircleKm({ latitude: 36.12, longitude: -86.67 }, { latitude: 33.94, longitude: -118.4 })).toBe(2886);
  });

  it("agrees with the geodesic on the ellipsoid to 0.6 %, and to the rounding", () => {
    // geod of PROJ: 54.1° N 6.2° W to 54.4° N 4.8° W is 97.170892 km on WGS84.
    const km = greatCircleKm({ latitude: 54.1, longitude: -6.2 }, { latitude: 54.4, longitude: -4.8 });
    expect(Math.abs(km - 97.170892)).toBeLessThan(0.5 + 0.006 * 97.2);
  });

  it("is a distance: the same both ways, 0 to itself, never longer by a third square, to the rounding", () => {
    fc.assert(
      fc.property(anyCentre, anyCentre, anyCentre, (a, b, c) => {
        expect(greatCircleKm(a, b)).toBe(greatCircleKm(b, a));
        expect(greatCircleKm(a, a)).toBe(0);
        expect(greatCircleKm(a, c)).toBeLessThanOrEqual(greatCircleKm(a, b) + greatCircleKm(b, c) + 1);
      }),
    );
  });
});

describe("nearSquares", () => {
  it("finds what comparing every square with every other finds, in order", () => {
    fc.assert(
      fc.property(fc.array(anyCentre, { maxLength: 40 }), fc.constantFrom(0, 10, 40, 150, 600), (centres, furthest) => {
        const plain = centres.flatMap((one, of) =>
          centres.flatMap((other, near) => {
            const km = greatCircleKm(one, other);
            return km <= furthest ? [[of, near, km]] : [];
          }),
        );
        const { of, near, km } = nearSquares(centres, furthest);
        expect(of.map((one, index) => [one, near[index], km[index]])).toEqual(plain);
      }),
    );
  });
});
