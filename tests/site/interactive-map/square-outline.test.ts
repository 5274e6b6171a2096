import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { outlineOf, type Place } from "../../../src/site/interactive-map/square-outline.ts";

const number = fc.integer({ min: -1000, max: 1000 });
const places = fc.array(fc.tuple(number, number), { minLength: 3, maxLength: 60 });

/** Twice the signed area of a triangle: positive where it turns against the clock. */
const turn = ([ax, ay]: Place, [bx, by]: Place, [cx, cy]: Place) => (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);

describe("outlineOf", () => {
  it("goes round a spine and a page without the line between them", () => {
    const spine: Place[] = [
      [0, 0],
      [1.5, 0],
      [1.5, 4],
      [0, 4],
    ];
    const page: Place[] = [
      [1.5, 0],
      [4, 0],
      [4, 4],
      [1.5, 4],
    ];
    expect(outlineOf([...spine, ...page])).toEqual([
      [0, 0],
      [4, 0],
      [4, 4],
      [0, 4],
      [0, 0],
    ]);
  });

  it("is closed, turns one way, and leaves no point outside", () => {
    fc.assert(
      fc.property(places, (points) => {
        const ring = outlineOf(points);
        if (ring.length === 0) return;
        expect(ring.at(-1)).toEqual(ring[0]);
        const sides = ring.slice(1).map((to, i) => [ring[i] ?? to, to] as const);
        for (const [from, to] of sides)
          for (const point of points) expect(turn(from, to, point)).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it("is empty where the points make no area", () => {
    expect(outlineOf([])).toEqual([]);
    expect(
      outlineOf([
        [0, 0],
        [1, 1],
        [2, 2],
      ]),
    ).toEqual([]);
  });
});
