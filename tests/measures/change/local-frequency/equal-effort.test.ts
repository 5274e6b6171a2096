import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { atEqualEffort } from "../../../../src/measures/change/local-frequency/equal-effort.ts";
import { anyVisits, laidOut, type Visit } from "./any-visits.ts";

/** All ways to keep a number of things. */
function subsets<Item>(items: readonly Item[], many: number): Item[][] {
  if (many === 0) return [[]];
  return items.flatMap((item, at) => subsets(items.slice(at + 1), many - 1).map((rest) => [item, ...rest]));
}

describe("atEqualEffort", () => {
  it("gives the share of all ways to keep as many visits that find the taxon", () => {
    fc.assert(
      fc.property(anyVisits(2, 3, 14), (drawn) => {
        // All in one third of a month, and so in one part of the season.
        const visits = drawn.map((visit): Visit => ({ ...visit, third: 18 }));
        const { expected } = atEqualEffort(laidOut(visits), [0, 1], { squares: 2, taxa: 3 });
        for (const square of [0, 1]) {
          const groups = [0, 1].map((period) => visits.filter((one) => one.square === square && one.period === period));
          const kept = Math.min(...groups.map(({ length }) => length));
          groups.forEach((group, period) => {
            const ways = subsets(group, kept);
            for (const taxon of [0, 1, 2]) {
              const finding = ways.filter((way) => way.some(({ taxa }) => taxa.includes(taxon))).length;
              expect(expected[period]?.[square * 3 + taxon]).toBeCloseTo(finding / ways.length, 9);
            }
          });
        }
      }),
    );
  });

  it("keeps as many visits of both periods in each square", () => {
    fc.assert(
      fc.property(anyVisits(4, 3, 60), (drawn) => {
        const visits = laidOut(drawn);
        const { weights } = atEqualEffort(visits, [0, 1], { squares: 4, taxa: 3 });
        for (const square of [0, 1, 2, 3]) {
          const [from = 0, to = 0] = [0, 1].map((period) =>
            weights.reduce(
              (sum, weight, at) => sum + (visits.squares[at] === square && visits.periods[at] === period ? weight : 0),
              0,
            ),
          );
          expect(from).toBeCloseTo(to, 9);
        }
      }),
    );
  });

  it("compares no visits of different parts of the season", () => {
    const visits = [9, 9, 18, 18, 26, 26].map(
      (third, at): Visit => ({ square: at % 2, period: at % 2, third, taxa: [0] }),
    );
    const apart = visits.map((visit): Visit => ({ ...visit, square: 0, period: visit.third === 9 ? 0 : 1 }));
    const { expected, weights } = atEqualEffort(laidOut(apart), [0, 1], { squares: 1, taxa: 1 });
    expect(expected.map(([one]) => one)).toEqual([0, 0]);
    expect([...weights]).toEqual([0, 0, 0, 0, 0, 0]);
  });
});
