import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { quantiles } from "../../../src/measures/statistics/quantile.ts";
import { fitQuantile, type QuantileCells } from "../../../src/measures/statistics/quantile-regression.ts";
import { readReferenceFile } from "../../support/reference.ts";

interface Row {
  readonly x: readonly number[];
  readonly y: number;
  readonly weight?: number;
}
interface Fits {
  fits: { share: number; effects: number[]; loss: number }[];
}
interface Reference {
  trend: { year: number[]; doy: number[]; quantreg: { rho: [number, number, number] } };
  records: { year: number[]; doy: number[]; rq: { tau: number; coef: [number, number]; rho: number }[] };
}
const reference = readReferenceFile<Reference>("phenology.json");
const { regression } = readReferenceFile<{
  regression: Fits & Record<"year" | "latitude" | "worker" | "day" | "weight", number[]>;
}>("season-regression.json");

/** Cells of one row each: what is spread over a unit is spread over a thousandth of a day where days are told in thousandths. */
function cellsOf(rows: readonly Row[], parts: number): QuantileCells {
  const size = rows[0]?.x.length ?? 0;
  return {
    covariates: Float64Array.from(rows.flatMap(({ x }) => x)),
    size,
    first: Int32Array.from(rows, ({ y }) => y * parts),
    start: Int32Array.from({ length: rows.length + 1 }, (_, i) => i),
    totals: Float64Array.from(rows, ({ weight = 1 }) => weight),
    cluster: Int32Array.from(rows.keys()),
    clusters: rows.length,
  };
}

/** The loss that a quantile makes least, written out. */
function loss(rows: readonly Row[], effects: readonly number[], share: number): number {
  return rows.reduce((sum, { x, y, weight = 1 }) => {
    const over = y - x.reduce((fitted, value, j) => fitted + value * (effects[j] as number), 0);
    return sum + weight * over * (share - (over < 0 ? 1 : 0));
  }, 0);
}

const fitted = (rows: readonly Row[], share: number, parts: number) =>
  Array.from(fitQuantile(cellsOf(rows, parts), share), (effect) => effect / parts);
const onYear = ({ year, doy }: { year: number[]; doy: number[] }): Row[] =>
  year.map((one, i) => ({ x: [1, (one - 2000) / 10], y: doy[i] as number }));

// The least loss is unique, the effects that reach it need not be: the loss is compared. Spreading over a thousandth of a
// day adds an eighth of that a row at most.
describe("fitQuantile", () => {
  it("reaches the least loss that quantreg and a linear programme reach, of one day a year and of records with ties", () => {
    const cases = [
      ...[0.1, 0.5, 0.9].map((share, i) => [onYear(reference.trend), share, reference.trend.quantreg.rho[i]] as const),
      ...reference.records.rq.map(({ tau, rho }) => [onYear(reference.records), tau, rho] as const),
    ];
    for (const [rows, share, least] of cases)
      expect(Math.abs(loss(rows, fitted(rows, share, 1000), share) - (least as number))).toBeLessThan(
        rows.length / 8000,
      );
  });

  it("reaches that of quantreg with weights and three covariates, by its effects where they are unique", () => {
    const { year, latitude, worker, day, weight } = regression;
    const rows = day.map((y, i) => ({
      x: [1, ((year[i] as number) - 2004) / 10, (latitude[i] as number) - 52, worker[i] as number],
      y,
      weight: weight[i] as number,
    }));
    const total = weight.reduce((sum, one) => sum + one, 0);
    for (const { share, effects, loss: least } of regression.fits) {
      const found = fitted(rows, share, 1000);
      expect(Math.abs(loss(rows, found, share) - least)).toBeLessThan(total / 8000);
      found.forEach((effect, j) => expect(Math.abs(effect - (effects[j] as number))).toBeLessThan(0.01));
    }
  });

  it("moves by less than a day where days are spread over a whole one", () => {
    for (const { tau, coef } of reference.records.rq) {
      const [constant = 0, slope = 0] = fitted(onYear(reference.records), tau, 1);
      const at = (year: number) => constant + (slope * (year - 2000)) / 10;
      for (const year of [1975, 2015]) expect(Math.abs(at(year) - coef[0] - coef[1] * year)).toBeLessThan(1);
    }
  });

  it("counts a cluster as often as its weight says", () => {
    const rows = onYear(reference.trend);
    const weights = rows.map((_, i) => i % 3);
    const often = rows.flatMap((row, i) => Array<Row>(weights[i] as number).fill(row));
    const direct = fitQuantile(cellsOf(often, 1), 0.5);
    const weighed = fitQuantile(cellsOf(rows, 1), 0.5, weights);
    weighed.forEach((effect, j) => expect(effect).toBeCloseTo(direct[j] as number, 3));
  });

  it("of a constant alone is the quantile of a sample, within a day", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 20, maxLength: 60 }), (days) => {
        const sorted = days.toSorted((a, b) => a - b);
        const [median = 0] = quantiles({ values: sorted, weights: sorted.map(() => 1) }, [0.5]);
        const [found = 0] = fitQuantile(
          cellsOf(
            days.map((y) => ({ x: [1], y })),
            1,
          ),
          0.5,
        );
        const [lower = 0, upper = 0] = [sorted[(sorted.length - 1) >> 1], sorted[sorted.length >> 1]];
        expect(Math.abs(found - median)).toBeLessThanOrEqual(0.5 + (upper - lower) / 2);
      }),
    );
  });
});
