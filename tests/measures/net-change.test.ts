import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exactSplitChance } from "../../src/measures/binomial.ts";
import { inWholeSquares, netChangeInterval, netPercent, turnoverPercent } from "../../src/measures/net-change.ts";
import reference from "../reference/shares-of-two.json" with { type: "json" };

const squares = fc.nat(20_000);
const compared = fc.record({ retained: fc.nat(4000), gained: fc.nat(4000), lost: fc.nat(4000) });

describe("netChangeInterval", () => {
  it.each(reference.rows as number[][])(
    "is scipy's exact interval of the share gained, in squares: %i gained, %i lost",
    (gained = 0, lost = 0, low = Number.NaN, high = Number.NaN) => {
      const net = (share: number) => (gained + lost) * (2 * share - 1);
      const [from, to] = netChangeInterval({ retained: 20_000, gained, lost });
      // 1e-9 of a share, times twice the squares that changed.
      const tolerance = 2e-9 * (gained + lost);
      expect(Math.abs(from - net(low))).toBeLessThan(tolerance);
      expect(Math.abs(to - net(high))).toBeLessThan(tolerance);
    },
  );

  it("is the example of its docstring, and leaves 0 out there as McNemar's exact test does: R 4.2, p 0.04703103", () => {
    expect(netChangeInterval({ retained: 40, gained: 25, lost: 12 }).map((limit) => limit.toFixed(3))).toEqual([
      "0.159",
      "23.670",
    ]);
    expect(exactSplitChance(25, 12).toFixed(8)).toBe("0.04703103");
  });

  it("leaves 0 out exactly where the exact test of McNemar is below 5 %, in whole squares too", () => {
    fc.assert(
      fc.property(fc.nat(400), fc.nat(400), (gained, lost) => {
        const [low, high] = netChangeInterval({ retained: 20_000, gained, lost });
        const [from, to] = inWholeSquares([low, high]);
        const chance = exactSplitChance(gained, lost);
        expect(low > 0 || high < 0).toBe(chance < 0.05);
        expect(from > 0 || to < 0).toBe(chance < 0.05);
      }),
      { numRuns: 1000 },
    );
  });

  // R 4.2.2: binom.test(0, 5)$conf.int gives 0.52182375 as the upper limit of none in five.
  it("reaches as far as the limit of none among those compared where nothing changed, and is never minus zero", () => {
    expect(netChangeInterval({ retained: 0, gained: 0, lost: 0 })).toEqual([0, 0]);
    const reach = expect.closeTo(5 * 0.52182375, 6);
    expect(netChangeInterval({ retained: 5, gained: 0, lost: 0 }).map(Math.abs)).toEqual([reach, reach]);
    fc.assert(
      fc.property(squares, squares, (gained, lost) => {
        const interval = netChangeInterval({ retained: 20_000, gained, lost });
        expect([...interval, ...inWholeSquares(interval)].some((end) => Object.is(end, -0))).toBe(false);
      }),
    );
  });

  it("holds the net change, and no more squares than changed", () => {
    fc.assert(
      fc.property(squares, squares, (gained, lost) => {
        const [low, high] = netChangeInterval({ retained: 20_000, gained, lost });
        fc.pre(gained + lost > 0);
        const order = [-(gained + lost), low, gained - lost, high, gained + lost];
        expect(order).toEqual(order.toSorted((one, other) => one - other));
      }),
    );
  });

  it("turns round when gains and losses change places", () => {
    fc.assert(
      fc.property(squares, squares, (gained, lost) => {
        const [low, high] = netChangeInterval({ retained: 20_000, gained, lost });
        const [from, to] = netChangeInterval({ retained: 20_000, gained: lost, lost: gained });
        // The inverse of the beta distribution is found in steps: 1e-9 of a share on either side.
        expect(Math.abs(from + high) + Math.abs(to + low)).toBeLessThan(4e-9 * (gained + lost) + 1e-12);
      }),
    );
  });

  it("covers the true share at least as often as it says: exact sums over the binomial distribution", () => {
    for (const changed of [5, 20, 60, 200])
      for (let share = 0.05; share < 0.96; share += 0.03) expect(coverage(changed, share)).toBeGreaterThanOrEqual(0.95);
  });
});

describe("inWholeSquares", () => {
  it("rounds outwards, but not onto 0", () => {
    expect(inWholeSquares([66.46, 129.41])).toEqual([66, 130]);
    expect(inWholeSquares([0.159, 23.67])).toEqual([1, 24]);
    expect(inWholeSquares([-23.67, -0.159])).toEqual([-24, -1]);
    expect(inWholeSquares([-0.2, 0.2])).toEqual([-1, 1]);
  });
});

describe("netPercent and turnoverPercent", () => {
  it("are by hand: of 20 squares, 12 found in both, 3 newly found, 5 not refound", () => {
    // net (3 − 5) / (12 + 5); turnover (3 + 5) / 20, exact interval of 8 in 20 by scipy 1.17.1's
    // binomtest(8, 20).proportion_ci(0.95, "exact"): 0.191190061, 0.639457413.
    const parts = { retained: 12, gained: 3, lost: 5 };
    expect(netPercent(parts)?.estimate).toBeCloseTo(-200 / 17, 12);
    const turnover = turnoverPercent(parts);
    expect(turnover?.estimate).toBe(40);
    expect(turnover?.low).toBeCloseTo(19.1190061, 6);
    expect(turnover?.high).toBeCloseTo(63.9457413, 6);
  });

  it("are silent where there is nothing to divide by", () => {
    expect(netPercent({ retained: 0, gained: 9, lost: 0 })).toBeNull();
    expect(turnoverPercent({ retained: 0, gained: 0, lost: 0 })).toBeNull();
  });

  it("hold their estimate, turnover between 0 and 100 %, net at least −100 %", () => {
    fc.assert(
      fc.property(compared, (parts) => {
        for (const [figure, least, most] of [
          [netPercent(parts), -100, Number.POSITIVE_INFINITY],
          [turnoverPercent(parts), 0, 100],
        ] as const) {
          if (figure === null) continue;
          const order = [least, figure.low, figure.estimate, figure.high, most];
          // Where all or nothing changed a limit is the estimate itself, but for the last bit.
          order.slice(1).forEach((end, index) => expect(end).toBeGreaterThanOrEqual((order[index] ?? 0) - 1e-9));
        }
      }),
    );
  });
});

/** Chance that the interval holds changed × (2 × share − 1) when each changed square was gained with that chance. */
function coverage(changed: number, share: number): number {
  let chance = (1 - share) ** changed;
  let sum = 0;
  for (let gained = 0; gained <= changed; gained += 1) {
    const [low, high] = netChangeInterval({ retained: 200, gained, lost: changed - gained });
    const truth = changed * (2 * share - 1);
    if (low <= truth && truth <= high) sum += chance;
    chance *= ((changed - gained) / (gained + 1)) * (share / (1 - share));
  }
  return sum;
}
