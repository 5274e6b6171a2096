import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { seasonOfRecording } from "../../../../src/measures/change/local-frequency/season-of-recording.ts";
import { anyVisits, laidOut, type Visit } from "./any-visits.ts";

const SIZES = { squares: 3, taxa: 4 };

function factorsOf(visits: readonly Visit[], weights?: readonly number[]): Float64Array {
  const laid = laidOut(visits);
  return seasonOfRecording(laid, Float64Array.from(weights ?? visits.map(() => 1)), [0, 1], SIZES).logFactors;
}

describe("seasonOfRecording", () => {
  it("divides the ratio over the year by that of Mantel and Haenszel", () => {
    // Spring: 6 of 10 records then, 12 of 20 now. Summer: 2 of 20 then, 1 of 10 now. By hand: the ratio of shares is 1 in both
    // strata; over the year (13/30) / (8/30) = 1.625.
    const records = (period: number, third: number, own: number, others: number): Visit[] => [
      ...Array.from({ length: own }, () => ({ square: 0, period, third, taxa: [0] })),
      ...Array.from({ length: others }, () => ({ square: 0, period, third, taxa: [1] })),
    ];
    const visits = [
      ...records(0, 10, 6, 4),
      ...records(1, 10, 12, 8),
      ...records(0, 20, 2, 18),
      ...records(1, 20, 1, 9),
    ];
    expect(factorsOf(visits)[0]).toBeCloseTo(Math.log(1.625), 12);
  });

  it("is nothing where both periods are recorded at the same times, however much more in one", () => {
    fc.assert(
      fc.property(anyVisits(3, 4, 20), (visits) => {
        const then = visits.map((visit): Visit => ({ ...visit, period: 0 }));
        const now = then.flatMap((visit): Visit[] => [
          { ...visit, period: 1 },
          { ...visit, period: 1 },
        ]);
        factorsOf([...then, ...now]).forEach((log) => expect(log).toBeCloseTo(0, 9));
      }),
    );
  });

  it("turns its sign with the periods, and what squares add sums to nothing", () => {
    fc.assert(
      fc.property(anyVisits(3, 4, 60), (visits) => {
        const factors = factorsOf(visits);
        factorsOf(visits.map((visit): Visit => ({ ...visit, period: 1 - visit.period }))).forEach((log, taxon) =>
          expect(log).toBeCloseTo(-(factors[taxon] as number), 9),
        );
        const { influences } = seasonOfRecording(
          laidOut(visits),
          Float64Array.from(visits, () => 1),
          [0, 1],
          SIZES,
        );
        for (let taxon = 0; taxon < SIZES.taxa; taxon++)
          expect(influences.subarray(taxon * 3, taxon * 3 + 3).reduce((sum, one) => sum + one, 0)).toBeCloseTo(0, 9);
      }),
    );
  });
});
