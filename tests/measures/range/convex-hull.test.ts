import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { convexHull } from "../../../src/measures/range/convex-hull.ts";
import reference from "../../reference/range.json" with { type: "json" };

const example = reference.eoo_example;
const plane = (points: readonly (readonly number[])[]) => points.map(([x = 0, y = 0], index) => ({ x, y, index }));

function planarArea(ring: readonly { x: number; y: number }[]): number {
  const twice = ring.reduce((sum, { x, y }, index) => {
    const next = ring[(index + 1) % ring.length] ?? { x, y };
    return sum + (x * next.y - next.x * y);
  }, 0);
  return twice / 2;
}

describe("convexHull", () => {
  it("has the corners and area GEOS gives, in two projections", () => {
    for (const [points, indices, area] of [
      [example.bng_EN, example.hull_vertex_indices_bng, example.planar_area_bng_km2],
      [example.laea_EN, example.hull_vertex_indices_laea, example.planar_area_laea_km2],
    ] as const) {
      const hull = convexHull(plane(points));
      expect(hull.map(({ index }) => index).sort()).toEqual([...indices].sort());
      // Coordinates of a tenth of a millimetre: areas agree to far below a square metre.
      expect(planarArea(hull) / 1e6).toBeCloseTo(area, 6);
    }
  });

  it("round the corners of nine 2 km squares has the area GEOS gives", () => {
    const corners = reference.aoo_example.tetrads.flatMap(([east = 0, north = 0]) =>
      [0, 2000].flatMap((across) => [0, 2000].map((up) => [east + across, north + up])),
    );
    expect(planarArea(convexHull(plane(corners))) / 1e6).toBeCloseTo(reference.eoo_from_tetrad_corners_bng_km2, 6);
  });

  it("holds every point, turns left at each corner, and needs every corner", () => {
    const any = fc.array(fc.record({ x: fc.integer({ min: -20, max: 20 }), y: fc.integer({ min: -20, max: 20 }) }), {
      minLength: 3,
      maxLength: 200,
      size: "max",
    });
    fc.assert(
      fc.property(any, (points) => {
        const hull = convexHull(points);
        const left = (from: { x: number; y: number }, to: { x: number; y: number }, at: { x: number; y: number }) =>
          (to.x - from.x) * (at.y - from.y) - (to.y - from.y) * (at.x - from.x);
        const isLine = points.every(
          (one) =>
            left(points[0] ?? one, points.find(({ x, y }) => x !== points[0]?.x || y !== points[0]?.y) ?? one, one) ===
            0,
        );
        expect(hull.length === 0).toBe(isLine);
        hull.forEach((corner, index) => {
          const next = hull[(index + 1) % hull.length] ?? corner;
          const after = hull[(index + 2) % hull.length] ?? corner;
          expect(left(corner, next, after)).toBeGreaterThan(0);
          for (const point of points) expect(left(corner, next, point)).toBeGreaterThanOrEqual(0);
        });
      }),
    );
  });
});
