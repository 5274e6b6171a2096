import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { changeAtEqualEffort } from "../../../../src/measures/change/local-frequency/change-at-equal-effort.ts";
import { laidOut, type Visit } from "./any-visits.ts";

const [SQUARES, TAXA] = [60, 12];
const FREQUENCIES = Float64Array.from({ length: SQUARES * TAXA }, (_, at) => 0.1 + (0.8 * (at % TAXA)) / TAXA);
const SIZES = { squares: SQUARES, taxa: TAXA, minimumSquares: 10 };

/** Numbers from 0 to 1 by a linear congruential rule, so that a seed says all of a group. */
function numbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

/** Visits to every square that find each taxon at its rate; the first taxon's is multiplied in the later period. */
function invented(seed: number, visits: readonly [number, number], change: number): Visit[] {
  const next = numbers(seed);
  return [0, 1].flatMap((period) =>
    Array.from({ length: SQUARES * (visits[period] as number) }, (_, at): Visit => {
      const taxa = Array.from({ length: TAXA }, (_, taxon) => taxon).filter(
        (taxon) => next() < (taxon === 0 && period === 1 ? change : 1) * (0.05 + (0.3 * taxon) / TAXA),
      );
      return { square: at % SQUARES, period, third: 12 + Math.floor(next() * 12), taxa };
    }).filter(({ taxa }) => taxa.length > 0),
  );
}

function changesOf(visits: readonly Visit[], pair: readonly [number, number] = [0, 1]) {
  return changeAtEqualEffort(FREQUENCIES, laidOut(visits), pair, SIZES).changes;
}

const anySeed = fc.integer({ min: 1, max: 1e6 });

describe("changeAtEqualEffort", () => {
  it("finds no change where the same was found twice", () => {
    fc.assert(
      fc.property(anySeed, (seed) => {
        const then = invented(seed, [6, 0], 1);
        const both = [...then, ...then.map((visit): Visit => ({ ...visit, period: 1 }))];
        for (const { change, from, to } of changesOf(both)) {
          expect(from).toBeCloseTo(to, 9);
          if (change !== null) expect(change.estimate).toBeCloseTo(0, 9);
        }
      }),
      { numRuns: 20 },
    );
  });

  it("turns its sign with the periods and is blind to the order of squares", () => {
    fc.assert(
      fc.property(anySeed, (seed) => {
        const visits = invented(seed, [4, 8], 0.6);
        const [own, turned] = [changesOf(visits), changesOf(visits, [1, 0])];
        const moved = changesOf(visits.map((visit): Visit => ({ ...visit, square: SQUARES - 1 - visit.square })));
        own.forEach(({ change }, taxon) => {
          expect(turned[taxon]?.change === null).toBe(change === null);
          if (change === null) return;
          // Effort and factors are found by turns, from the same start in both periods.
          expect(turned[taxon]?.change?.estimate).toBeCloseTo(-change.estimate, 9);
          expect(turned[taxon]?.change?.low).toBeCloseTo(-change.high, 9);
          expect(moved[taxon]?.change?.estimate).toBeCloseTo(change.estimate, 9);
        });
      }),
      { numRuns: 10 },
    );
  });

  it("calls few changed where effort trebles, and holds the truth of one that halved", () => {
    const told = Array.from({ length: 30 }, (_, seed) => changesOf(invented(seed + 1, [4, 12], 0.5)));
    const others = told.flatMap((changes) =>
      changes.slice(1).flatMap(({ change }) => (change === null ? [] : [change])),
    );
    const called = others.filter(({ low, high }) => low > 0 || high < 0).length / others.length;
    // 5 in 100 are meant; of 330 independent ones at most 9 in 100 would be called in 999 of 1,000 runs (binomial).
    expect(called).toBeLessThan(0.09);
    const halved = told.flatMap(([first]) => (first?.change ? [first.change] : []));
    const mean = halved.reduce((sum, { estimate }) => sum + estimate, 0) / halved.length;
    // Each of 30 has a standard error of about 0.35.
    expect(Math.abs(mean - Math.log(0.5))).toBeLessThan(0.2);
  });

  it("says nothing of taxa that are too few or in one period only, nor of squares visited once", () => {
    const visits = invented(7, [4, 4], 1).map(
      ({ taxa, ...visit }): Visit => ({
        ...visit,
        taxa: taxa.filter((taxon) => taxon !== 3 || visit.period === 1),
      }),
    );
    expect(changesOf(visits)[3]?.change).toBeNull();
    expect(changesOf(visits.filter(({ period }) => period === 0)).every(({ change }) => change === null)).toBe(true);
  });
});
