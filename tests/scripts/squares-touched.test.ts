import { booleanIntersects } from "@turf/boolean-intersects";
import { polygon } from "@turf/helpers";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { columnOf, type Metres, rowOf, squaresTouched } from "../../scripts/squares-touched.ts";

const names = (keys: Set<number>): string[] => [...keys].map((key) => `${columnOf(key)} ${rowOf(key)}`).sort();

describe("examples", () => {
  it("gives the one square of a small triangle", () => {
    expect([
      ...squaresTouched(
        [
          [
            [100, 100],
            [900, 100],
            [900, 900],
            [100, 100],
          ],
        ],
        1000,
      ),
    ]).toEqual([0]);
  });

  it("reads column and row from a key", () => {
    expect([columnOf(65_537 * 2), rowOf(65_537 * 2)]).toEqual([2, 2]);
  });
});

describe("squaresTouched", () => {
  it("fills a block and leaves the squares wholly inside a hole", () => {
    const outline: Metres[] = [
      [100, 100],
      [4900, 100],
      [4900, 4900],
      [100, 4900],
      [100, 100],
    ];
    const hole: Metres[] = [
      [900, 900],
      [900, 4100],
      [4100, 4100],
      [4100, 900],
      [900, 900],
    ];
    const found = names(squaresTouched([outline, hole], 1000));
    expect(found).toHaveLength(25 - 9);
    expect(found).not.toContain("2 2");
  });

  it("finds a sliver that passes the corner of a square", () => {
    expect(
      names(
        squaresTouched(
          [
            [
              [950, 10],
              [1010, 70],
              [1010, 10],
              [950, 10],
            ],
          ],
          1000,
        ),
      ),
    ).toEqual(["0 0", "1 0"]);
  });

  // Checked against Turf's test whether two polygons share a point, square by square.
  it("gives the squares that share a point with a triangle, and no others", () => {
    const coordinate = fc.double({ min: 0.1, max: 59.9, noNaN: true, noDefaultInfinity: true });
    const corner = fc.tuple(coordinate, coordinate);
    fc.assert(
      fc.property(corner, corner, corner, (a, b, c) => {
        fc.pre(Math.abs((b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1])) > 1);
        fc.pre([a, b, c].flat().every((value) => Math.abs(value / 10 - Math.round(value / 10)) > 1e-6));
        const ring = [a, b, c, a];
        fc.pre(passesNoCornerClosely(ring));
        const expected: string[] = [];
        for (let x = 0; x < 6; x++) {
          for (let y = 0; y < 6; y++) {
            const [w, s, e, n] = [x * 10, y * 10, x * 10 + 10, y * 10 + 10];
            const square = polygon([
              [
                [w, s],
                [e, s],
                [e, n],
                [w, n],
                [w, s],
              ],
            ]);
            if (booleanIntersects(square, polygon([ring]))) {
              expected.push(`${x} ${y}`);
            }
          }
        }
        expect(names(squaresTouched([ring], 10))).toEqual(expected.sort());
      }),
      { numRuns: 60 },
    );
  });
});

/** Whether every edge's line keeps 1e-6 from every corner of the squares: nearer, Turf takes a passing line for a touch. */
function passesNoCornerClosely(ring: readonly (readonly [number, number])[]): boolean {
  const lines = [0, 10, 20, 30, 40, 50, 60];
  return ring.slice(1).every(([x, y], i) => {
    const [fromX, fromY] = ring[i] ?? [0, 0];
    const length = Math.hypot(x - fromX, y - fromY);
    const distance = (cornerX: number, cornerY: number) =>
      Math.abs((x - fromX) * (cornerY - fromY) - (y - fromY) * (cornerX - fromX)) / length;
    return lines.every((cornerX) => lines.every((cornerY) => distance(cornerX, cornerY) > 1e-6));
  });
}
