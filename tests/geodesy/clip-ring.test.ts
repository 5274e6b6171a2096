import { booleanPointInPolygon } from "@turf/boolean-point-in-polygon";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boundsOf, clipRing, overlap, type Rectangle, ringArea } from "../../src/geodesy/clip-ring.ts";

/** A ring round the origin whose points come in order of their angle: it never crosses itself, and is seldom convex. */
const star = fc
  .array(fc.tuple(fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }), fc.double({ min: 1, max: 10, noNaN: true })), {
    minLength: 3,
    maxLength: 30,
  })
  .map((points) =>
    points
      .sort(([one], [other]) => one - other)
      .flatMap(([angle, far]) => [far * Math.cos(angle), far * Math.sin(angle)]),
  );
const lines = fc.uniqueArray(fc.integer({ min: -9, max: 9 }), { minLength: 1, maxLength: 4 });

describe("clipRing and ringArea", () => {
  it("cut a U in two whose parts add up, worked by hand", () => {
    // A square of side 4 with a notch 2 wide and 3 deep: 16 − 6 = 10; above y = 2 two legs of 1 × 2 are left.
    const u = [0, 0, 4, 0, 4, 4, 3, 4, 3, 1, 1, 1, 1, 4, 0, 4];
    expect(ringArea(u)).toBe(10);
    expect(ringArea(clipRing(u, { west: 0, south: 2, east: 4, north: 4 }))).toBe(4);
    expect(ringArea(clipRing(u, { west: 1, south: 2, east: 3, north: 4 }))).toBe(0);
    expect(clipRing(u, { west: 5, south: 0, east: 6, north: 4 })).toEqual([]);
  });

  it("lose and double nothing: the parts in the cells of a grid add up to the whole", () => {
    fc.assert(
      fc.property(star, lines, lines, (ring, across, up) => {
        const [xs, ys] = [across, up].map((own) => [-20, ...own.sort((a, b) => a - b), 20]) as [number[], number[]];
        const cells = xs
          .slice(1)
          .flatMap((east, x) =>
            ys.slice(1).map((north, y): Rectangle => ({ west: xs[x] ?? 0, east, south: ys[y] ?? 0, north })),
          );
        const sum = cells.reduce((area, cell) => area + ringArea(clipRing(ring, cell)), 0);
        expect(sum).toBeCloseTo(ringArea(ring), 8);
      }),
    );
  });

  it("give the share of a rectangle that points in the polygon give", () => {
    const cell = { west: -2, south: -1, east: 3, north: 4 };
    // Middles of 50 by 50 cells of 0.1: the border, some 30 long, crosses at most 2 × 30/0.1 of them, each off by less than its
    // half on average and to either side; 1.5 of 25 is far outside what that gives.
    fc.assert(
      fc.property(star, (ring) => {
        const closed = [...ring, ring[0] ?? 0, ring[1] ?? 0];
        const coordinates = [Array.from({ length: closed.length / 2 }, (_, i) => closed.slice(2 * i, 2 * i + 2))];
        let inside = 0;
        for (let x = -1.95; x < 3; x += 0.1)
          for (let y = -0.95; y < 4; y += 0.1)
            if (booleanPointInPolygon([x, y], { type: "Polygon", coordinates })) inside += 1;
        expect(Math.abs(ringArea(clipRing(ring, cell)) - inside * 0.01)).toBeLessThan(1.5);
      }),
      { numRuns: 30 },
    );
  });

  it("know bounds, and which overlap", () => {
    expect(boundsOf([0, 0, 4, 0, 4, 3])).toEqual({ west: 0, south: 0, east: 4, north: 3 });
    const one = { west: 0, south: 0, east: 1, north: 1 };
    expect(overlap(one, { west: 1, south: 1, east: 2, north: 2 })).toBe(true);
    expect(overlap(one, { west: 1.1, south: 0, east: 2, north: 1 })).toBe(false);
  });
});
