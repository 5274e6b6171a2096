import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type UseCounts, useRatio } from "../../../src/measures/surroundings/use-ratio.ts";

/** Visits by cluster: with the taxon in the term, in the term, with the taxon, in all. */
interface Clusters {
  a: number[];
  b: number[];
  c: number[];
  n: number[];
}

const dot = (one: readonly number[], other: readonly number[]) =>
  one.reduce((sum, value, index) => sum + value * (other[index] ?? 0), 0);
const sum = (values: readonly number[]) => dot(values, Array(values.length).fill(1));

function countsOf({ a, b, c, n }: Clusters): UseCounts {
  return {
    ...{ a: sum(a), b: sum(b), c: sum(c), n: sum(n), clusters: n.length },
    ...{ aa: dot(a, a), ab: dot(a, b), ac: dot(a, c), an: dot(a, n), bb: dot(b, b) },
    ...{ bc: dot(b, c), bn: dot(b, n), cc: dot(c, c), cn: dot(c, n), nn: dot(n, n) },
  };
}

/** 400 visits in 25 clusters, drawn by R's generator. */
const DRAWN: Clusters = {
  a: [1, 2, 1, 4, 0, 1, 1, 0, 0, 4, 1, 1, 1, 8, 2, 3, 2, 0, 0, 2, 1, 1, 1, 0, 0],
  b: [5, 2, 8, 4, 3, 4, 1, 2, 12, 9, 5, 11, 6, 14, 13, 5, 7, 3, 0, 6, 8, 2, 6, 5, 8],
  c: [3, 4, 3, 10, 2, 6, 6, 1, 0, 9, 2, 1, 1, 10, 4, 4, 4, 1, 1, 4, 2, 5, 5, 1, 1],
  n: [17, 20, 12, 15, 22, 18, 11, 7, 17, 23, 16, 11, 12, 17, 15, 11, 21, 17, 14, 18, 13, 23, 13, 16, 21],
};

/** Each visit a cluster of its own. */
function alone({ a, b, c, n }: Clusters): Clusters {
  const cells = [sum(a), sum(b) - sum(a), sum(c) - sum(a)] as const;
  const rest = sum(n) - cells[0] - cells[1] - cells[2];
  const lay = (...flags: readonly number[]) =>
    [...cells, rest].flatMap((size, cell) => Array<number>(size).fill(flags[cell] ?? 0));
  return { a: lay(1, 0, 0, 0), b: lay(1, 1, 0, 0), c: lay(1, 0, 1, 0), n: lay(1, 1, 1, 1) };
}

describe("useRatio", () => {
  // R 4.2.2, package survey 4.1.1: svycontrast(svytotal(~A + B + C + N, svydesign(ids = ~cluster, weights = ~1)),
  // quote(log(A / C / (B / N)))) ± qnorm(.975) SE. Printed with seven digits, hence the tolerance.
  it("has the interval a survey of clusters has", () => {
    const { ratio, low, high } = useRatio(countsOf(DRAWN));
    expect(ratio).toBeCloseTo(1.103654, 5);
    expect(low).toBeCloseTo(0.8621625, 5);
    expect(high).toBeCloseTo(1.412787, 5);
  });

  it("has that of single visits where each is a cluster of its own", () => {
    const { low, high } = useRatio(countsOf(alone(DRAWN)));
    expect(low).toBeCloseTo(0.8884011, 5);
    expect(high).toBeCloseTo(1.371061, 5);
  });

  // Exact binomial limit of 0 in b: 1 − 0.025^(1/b), as R's binom.test(0, 20)$conf.int gives 0.1684335 for 20.
  it("says of a term it was never recorded in how often it could have been", () => {
    const none = { ...countsOf(DRAWN), a: 0, b: 20 };
    expect(useRatio(none)).toEqual({ ratio: 0, low: 0, high: expect.closeTo(0.1684335 / (none.c / none.n), 6) });
  });

  it("is 1 for a taxon on every visit, and does not change with the order of the clusters", () => {
    const cluster = fc.tuple(fc.nat(9), fc.nat(9), fc.nat(9), fc.nat(9));
    fc.assert(
      fc.property(fc.array(cluster, { minLength: 2, maxLength: 20 }), (cells) => {
        const lay = (rows: typeof cells): Clusters => ({
          a: rows.map(([a]) => a),
          b: rows.map(([a, b]) => a + b),
          c: rows.map(([a, , c]) => a + c),
          n: rows.map(([a, b, c, rest]) => a + b + c + rest),
        });
        const counts = countsOf(lay(cells));
        fc.pre(counts.a > 0);
        const { ratio, low, high } = useRatio(counts);
        expect(low).toBeLessThanOrEqual(ratio);
        expect(high).toBeGreaterThanOrEqual(ratio);
        expect(useRatio(countsOf(lay(cells.toReversed())))).toEqual({ ratio, low, high });
        const everywhere = lay(cells);
        expect(useRatio(countsOf({ ...everywhere, a: everywhere.b, c: everywhere.n })).ratio).toBeCloseTo(1, 12);
      }),
    );
  });
});
