import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { drawnRows, quantile, quantileThird, season } from "../../../../src/site/components/charts/season.ts";

const counts = fc
  .array(fc.nat(500), { minLength: 36, maxLength: 36 })
  .filter((numbers) => numbers.some((number) => number > 0));
const at = (places: Record<number, number>) => Array.from({ length: 36 }, (_, third) => places[third] ?? 0);

describe("quantile", () => {
  it("spreads the records of a third evenly, as a histogram is read", () => {
    expect(quantile([0, 10, 10, 0], 0.5)).toBe(2);
    expect(quantile([10, 0, 0, 0], 0.25)).toBe(0.25);
    expect(quantile([5, 0, 0, 5], 0.75)).toBe(3.5);
    expect(quantile([0, 0], 0.5)).toBeNaN();
  });
  it("agrees with the cumulative count for any counts", () => {
    fc.assert(
      fc.property(counts, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (numbers, share) => {
        const place = quantile(numbers, share);
        const whole = Math.floor(place);
        const before =
          numbers.slice(0, whole).reduce((sum, number) => sum + number, 0) + (place - whole) * (numbers[whole] ?? 0);
        const all = numbers.reduce((sum, number) => sum + number, 0);
        expect(before / all).toBeCloseTo(share, 6); // double arithmetic on at most 18,000 records
      }),
    );
  });
  it("finds the third in which a share is reached", () => {
    expect(quantileThird(at({ 7: 10, 20: 90 }), 0.1)).toBe(7);
    expect(quantileThird(at({ 7: 10, 20: 90 }), 0.11)).toBe(20);
    expect(quantileThird(at({}), 0.5)).toBe(-1);
    expect(quantileThird(at({ 0: 1 }), 0.1)).toBe(0);
  });
});

describe("season", () => {
  it("gives none on fewer than thirty records", () => {
    expect(season(at({ 10: 29 }))).toBeUndefined();
    expect(season(at({ 10: 30 }))).toEqual({
      thin: { from: 10.1, to: 10.9 },
      thick: [{ from: 10.25, to: 10.75 }],
      median: 10.5,
    });
  });
  it("draws two broods as two strokes, and one long season as one", () => {
    const spring = { 10: 20, 11: 40, 12: 20 };
    expect(season(at({ ...spring, 22: 20, 23: 40, 24: 20 }))?.thick.map(({ from, to }) => [from, to])).toEqual([
      [11, 12],
      [23, 24],
    ]);
    expect(season(at({ ...spring, 13: 20, 14: 30, 15: 40, 16: 20 }))?.thick).toHaveLength(1);
    expect(season(at({ ...spring, 23: 5 }))?.thick).toHaveLength(1);
  });
  it("keeps its strokes in order and inside the year", () => {
    fc.assert(
      fc.property(counts, (numbers) => {
        const found = season(numbers);
        if (found === undefined) return;
        const places = [0, ...found.thick.flatMap(({ from, to }) => [from, to]), 36];
        expect(places).toEqual(places.toSorted((one, other) => one - other));
        expect(found.thin.from).toBeLessThanOrEqual(found.median);
        expect(found.median).toBeLessThanOrEqual(found.thin.to);
      }),
    );
  });
});

describe("drawnRows", () => {
  it("leaves rows of few records to words where another row can be drawn", () => {
    const rows = [{ total: 1200 }, { total: 30 }, { total: 29 }, { total: 0 }];
    expect(drawnRows(rows)).toEqual({ shown: [{ total: 1200 }, { total: 30 }], few: [{ total: 29 }] });
    expect(drawnRows([{ total: 3 }, { total: 0 }])).toEqual({ shown: [{ total: 3 }], few: [] });
  });
});
