import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { shareOfCircleInRectangle } from "../../src/geodesy/circle-overlap.ts";

const metres = fc.double({ min: -5000, max: 5000, noNaN: true });
const radius = fc.double({ min: 1, max: 4000, noNaN: true });

/** The share by the midpoint rule over 20,000 columns of the circle: good to about 1e-6. */
function numericShare(
  cx: number,
  cy: number,
  r: number,
  west: number,
  south: number,
  east: number,
  north: number,
): number {
  const columns = 20_000;
  let area = 0;
  for (let column = 0; column < columns; column += 1) {
    const x = cx - r + ((column + 0.5) * 2 * r) / columns;
    if (x < west || x >= east) continue;
    const half = Math.sqrt(r * r - (x - cx) ** 2);
    area += (Math.max(0, Math.min(north, cy + half) - Math.max(south, cy - half)) * 2 * r) / columns;
  }
  return area / (Math.PI * r * r);
}

describe("shareOfCircleInRectangle", () => {
  it.each([
    ["all of it", 0, 0, 1, -2, -2, 2, 2, 1],
    ["none of it", 0, 0, 1, 2, 2, 3, 3, 0],
    ["a quarter from its centre on", 0, 0, 1, 0, 0, 9, 9, 0.25],
    ["half on one side of a line", 0, 0, 1, 0, -9, 9, 9, 0.5],
    ["the inscribed square, 2/π", 0, 0, 1, -Math.SQRT1_2, -Math.SQRT1_2, Math.SQRT1_2, Math.SQRT1_2, 2 / Math.PI],
    ["a segment of 120°: (2π/3 − √3/2) / 2π", 0, 0, 2, 1, -9, 9, 9, 1 / 3 - Math.sqrt(3) / (4 * Math.PI)],
    [
      "a half plane, to infinity",
      5,
      5,
      1,
      5,
      Number.NEGATIVE_INFINITY,
      Number.POSITIVE_INFINITY,
      Number.POSITIVE_INFINITY,
      0.5,
    ],
  ])("%s", (_, cx, cy, r, west, south, east, north, share) => {
    // Exact values of geometry; floating point leaves about 1e-15.
    expect(shareOfCircleInRectangle(cx, cy, r, west, south, east, north)).toBeCloseTo(share, 13);
  });

  it("agrees with numeric integration for any circle and rectangle", () => {
    fc.assert(
      fc.property(metres, metres, radius, fc.tuple(metres, metres), fc.tuple(metres, metres), (cx, cy, r, xs, ys) => {
        const [west, east] = [Math.min(...xs), Math.max(...xs)];
        const [south, north] = [Math.min(...ys), Math.max(...ys)];
        const exact = shareOfCircleInRectangle(cx, cy, r, west, south, east, north);
        // One column of the sum holds up to 6.4e-5 of the area at each side of the rectangle.
        expect(Math.abs(exact - numericShare(cx, cy, r, west, south, east, north))).toBeLessThan(1.5e-4);
      }),
      { numRuns: 200 },
    );
  });

  it("adds up to 1 over a tiling of the plane", () => {
    fc.assert(
      fc.property(metres, metres, radius, (cx, cy, r) => {
        let sum = 0;
        for (let west = -10_000; west < 10_000; west += 2000) {
          for (let south = -10_000; south < 10_000; south += 2000) {
            sum += shareOfCircleInRectangle(cx, cy, r, west, south, west + 2000, south + 2000);
          }
        }
        expect(sum).toBeCloseTo(1, 12);
      }),
    );
  });

  it("is the same when the axes are exchanged or turned round", () => {
    fc.assert(
      fc.property(metres, metres, radius, fc.tuple(metres, metres), fc.tuple(metres, metres), (cx, cy, r, xs, ys) => {
        const [west, east] = [Math.min(...xs), Math.max(...xs)];
        const [south, north] = [Math.min(...ys), Math.max(...ys)];
        const share = shareOfCircleInRectangle(cx, cy, r, west, south, east, north);
        expect(shareOfCircleInRectangle(cy, cx, r, south, west, north, east)).toBeCloseTo(share, 12);
        expect(shareOfCircleInRectangle(-cx, cy, r, -east, south, -west, north)).toBeCloseTo(share, 12);
      }),
    );
  });

  it("never falls when the rectangle grows", () => {
    fc.assert(
      fc.property(
        metres,
        metres,
        radius,
        metres,
        fc.double({ min: 0, max: 3000, noNaN: true }),
        (cx, cy, r, west, more) => {
          const share = shareOfCircleInRectangle(cx, cy, r, west, -1000, west + 2000, 1000);
          expect(
            shareOfCircleInRectangle(cx, cy, r, west, -1000, west + 2000 + more, 1000 + more),
          ).toBeGreaterThanOrEqual(share - 1e-12);
        },
      ),
    );
  });

  it("gives a circle of radius 0 to the one square that holds its centre", () => {
    expect(shareOfCircleInRectangle(2000, 0, 0, 0, 0, 2000, 2000)).toBe(0);
    expect(shareOfCircleInRectangle(2000, 0, 0, 2000, 0, 4000, 2000)).toBe(1);
  });

  it.each([
    [0, 0, -1, 0, 0, 1, 1],
    [0, 0, Number.NaN, 0, 0, 1, 1],
    [Number.NaN, 0, 1, 0, 0, 1, 1],
    [0, 0, Number.POSITIVE_INFINITY, 0, 0, 1, 1],
    [0, 0, 1, 1, 0, 0, 1],
    [0, 0, 1, 0, Number.NaN, 1, 1],
  ])("refuses %s %s radius %s in %s %s %s %s", (cx, cy, r, west, south, east, north) => {
    expect(() => shareOfCircleInRectangle(cx, cy, r, west, south, east, north)).toThrow(RangeError);
  });
});

describe("examples", () => {
  it("shareOfCircleInRectangle", () => expect(shareOfCircleInRectangle(0, 0, 1, 0, 0, 10, 10)).toBeCloseTo(0.25, 15));
});
