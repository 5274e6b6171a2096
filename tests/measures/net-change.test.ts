import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { netChangeInterval } from "../../src/measures/net-change.ts";

/**
 * Wilson score intervals of gained / (gained + lost), by statsmodels 0.15.0 under Python 3.11, from
 *
 *   from statsmodels.stats.proportion import proportion_confint
 *   proportion_confint(gained, gained + lost, alpha=0.05, method="wilson")
 *
 * rounded to nine places: [gained, lost, low, high].
 */
const WILSON: readonly [gained: number, lost: number, low: number, high: number][] = [
  [189, 90, 0.620478018, 0.72954139],
  [1, 0, 0.206549314, 1.0],
  [0, 1, 0.0, 0.793450686],
  [5, 5, 0.236593091, 0.763406909],
  [12, 3, 0.548145513, 0.929524507],
  [40, 61, 0.306154234, 0.493543326],
  [300, 280, 0.47659445, 0.557661425],
  [1, 9, 0.017876213, 0.404150027],
  [0, 25, 0.0, 0.133192251],
  [7, 2, 0.452588969, 0.936774893],
];

const squares = fc.nat(20_000);

/**
 * Wilson's limits as the two roots of his equation, (p − share)² = z² p (1 − p) / n, found by bisection on each side
 * of the share: the definition itself (1927, equation 3), not its solved form.
 */
function rootsOfWilson(gained: number, lost: number): [low: number, high: number] {
  const n = gained + lost;
  const share = gained / n;
  const inside = (p: number) => (p - share) ** 2 <= (1.959963984540054 ** 2 * p * (1 - p)) / n;
  const edge = (from: number, to: number) => {
    let [near, far] = [from, to];
    for (let step = 0; step < 200; step += 1) {
      const middle = (near + far) / 2;
      if (inside(middle)) near = middle;
      else far = middle;
    }
    return near;
  };
  const middle = (share + 1.92 / n) / (1 + 3.84 / n);
  return [edge(middle, 0), edge(middle, 1)];
}

describe("netChangeInterval", () => {
  it("is the example of its docstring", () => {
    expect(netChangeInterval(189, 90)).toEqual([67, 129]);
  });

  it.each(WILSON)(
    "is the score interval of the share gained, in squares, outwards: %i gained, %i lost",
    (gained, lost, low, high) => {
      const net = (share: number) => (gained + lost) * (2 * share - 1);
      // Nine places of a share are 1e-6 of a square here, and no limit lies nearer to a whole number but 0 and 1 themselves.
      expect(netChangeInterval(gained, lost)).toEqual([Math.floor(net(low) + 1e-6), Math.ceil(net(high) - 1e-6)]);
    },
  );

  it("solves Wilson's own equation", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 3000 }), fc.integer({ min: 1, max: 3000 }), (gained, lost) => {
        const [low, high] = netChangeInterval(gained, lost);
        const [from, to] = rootsOfWilson(gained, lost).map((share) => (gained + lost) * (2 * share - 1)) as [
          number,
          number,
        ];
        // Rounded outwards to whole squares: within one square outside, never inside (1e-6 for the bisection).
        expect(low).toBeLessThanOrEqual(from + 1e-6);
        expect(low).toBeGreaterThan(from - 1 - 1e-6);
        expect(high).toBeGreaterThanOrEqual(to - 1e-6);
        expect(high).toBeLessThan(to + 1 + 1e-6);
      }),
    );
  });

  it("is [0, 0] where nothing changed, and never minus zero", () => {
    expect(netChangeInterval(0, 0)).toEqual([0, 0]);
    fc.assert(
      fc.property(squares, squares, (gained, lost) => {
        expect(netChangeInterval(gained, lost).some((end) => Object.is(end, -0))).toBe(false);
      }),
    );
  });

  it("holds the net change, and no more squares than changed", () => {
    fc.assert(
      fc.property(squares, squares, (gained, lost) => {
        const [low, high] = netChangeInterval(gained, lost);
        expect([-(gained + lost), low, gained - lost, high, gained + lost]).toEqual(
          [-(gained + lost), low, gained - lost, high, gained + lost].toSorted((one, other) => one - other),
        );
      }),
    );
  });

  it("turns round when gains and losses change places", () => {
    fc.assert(
      fc.property(squares, squares, (gained, lost) => {
        const [low, high] = netChangeInterval(gained, lost);
        expect(netChangeInterval(lost, gained)).toEqual([0 - high, 0 - low]);
      }),
    );
  });

  it("widens in squares and narrows as a share when the same shares come from more squares", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 500 }),
        fc.integer({ min: 1, max: 500 }),
        fc.integer({ min: 2, max: 9 }),
        (gained, lost, times) => {
          const width = ([low, high]: [number, number]) => high - low;
          const [once, more] = [
            width(netChangeInterval(gained, lost)),
            width(netChangeInterval(times * gained, times * lost)),
          ];
          // 2: both ends are rounded outwards by less than a square.
          expect(more).toBeGreaterThan(once - 2);
          expect(more / times).toBeLessThan(once + 2 / times);
        },
      ),
    );
  });

  it("covers the true share about as often as it says: exact sums over the binomial distribution", () => {
    for (const changed of [20, 60, 200]) {
      const shares = Array.from({ length: 91 }, (_, index) => 0.05 + index / 100);
      const covered = shares.map((share) => coverage(changed, share));
      const mean = covered.reduce((sum, one) => sum + one, 0) / covered.length;
      // Nominal 0.95; Brown, Cai & DasGupta (2001, Statist. Sci. 16:101–133) find it near that on average, with dips.
      expect(mean).toBeGreaterThan(0.945);
      expect(mean).toBeLessThan(0.98);
      expect(Math.min(...covered)).toBeGreaterThan(0.9);
    }
  });
});

/** Chance that the interval holds changed × (2 × share − 1) when each changed square was gained with that chance. */
function coverage(changed: number, share: number): number {
  let chance = (1 - share) ** changed;
  let sum = 0;
  for (let gained = 0; gained <= changed; gained += 1) {
    const [low, high] = netChangeInterval(gained, changed - gained);
    const truth = changed * (2 * share - 1);
    if (low <= truth && truth <= high) sum += chance;
    chance *= ((changed - gained) / (gained + 1)) * (share / (1 - share));
  }
  return sum;
}
