import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { expectedShare, type Ring, shrunkShare } from "../../src/review/expected-share.ts";

const share = fc.double({ min: 0, max: 1, noNaN: true });
const worth = fc.double({ min: 0.5, max: 500, noNaN: true });
const ring = fc
  .tuple(fc.nat(2000), fc.nat(2000))
  .map(([a, b]): Ring => ({ visits: Math.max(a, b), reports: Math.min(a, b) }));
const rings = fc.array(ring, { minLength: 1, maxLength: 4 });

describe("shrunkShare", () => {
  it("is the mean of the beta-binomial posterior", () => {
    // Conjugacy: Beta(a, b) and 0 of 1,340 give Beta(a, b + 1340), mean a / (a + b + 1340). Here a = 1, b = 49.
    expect(shrunkShare({ share: 0.02, visits: 50 }, { visits: 1340, reports: 0 })).toBeCloseTo(1 / 1390, 15);
    // Beta(2, 2), the prior of two and two, and 7 of 10: (2 + 7) / 14.
    expect(shrunkShare({ share: 0.5, visits: 4 }, { visits: 10, reports: 7 })).toBeCloseTo(9 / 14, 15);
  });

  it("is the prior's share without visits, and near the visits' own with very many", () => {
    expect(shrunkShare({ share: 0.3, visits: 15 }, { visits: 0, reports: 0 })).toBe(0.3);
    expect(shrunkShare({ share: 0.3, visits: 15 }, { visits: 1e9, reports: 1e8 })).toBeCloseTo(0.1, 6);
  });

  it("counts no report oftener than there are visits", () => {
    expect(shrunkShare({ share: 0.5, visits: 10 }, { visits: 10, reports: 40 })).toBe(0.75);
  });
});

describe("expectedShare", () => {
  it("draws each ring's share towards that of the ring around it", () => {
    // By hand, outermost first: (0.1 × 10 + 1) / (10 + 30) = 0.05; then (0.05 × 10 + 0) / (10 + 10) = 0.025.
    const around = [
      { visits: 10, reports: 0 },
      { visits: 30, reports: 1 },
    ];
    expect(expectedShare({ share: 0.1, visits: 10 }, around)).toBeCloseTo(0.025, 15);
  });

  it("stays a share", () => {
    fc.assert(
      fc.property(share, worth, rings, (prior, visits, around) => {
        const expected = expectedShare({ share: prior, visits }, around);
        expect(expected).toBeGreaterThanOrEqual(0);
        expect(expected).toBeLessThanOrEqual(1 + 1e-12);
      }),
    );
  });

  it("never rises with more visits that did not report the taxon", () => {
    fc.assert(
      fc.property(share, worth, rings, fc.nat(3), fc.nat(500), (prior, visits, around, at, more) => {
        const now = around.map((one, index) =>
          index === at % around.length ? { ...one, visits: one.visits + more } : one,
        );
        const before = expectedShare({ share: prior, visits }, around);
        expect(expectedShare({ share: prior, visits }, now)).toBeLessThanOrEqual(before + 1e-12);
      }),
    );
  });

  it("never falls with another report, nor when visits alike are reported nearer", () => {
    fc.assert(
      fc.property(share, worth, rings, fc.nat(3), (prior, visits, around, at) => {
        const where = at % around.length;
        const reported = around.map((one, index) =>
          index === where && one.reports < one.visits ? { ...one, reports: one.reports + 1 } : one,
        );
        const before = expectedShare({ share: prior, visits }, around);
        expect(expectedShare({ share: prior, visits }, reported)).toBeGreaterThanOrEqual(before - 1e-12);
      }),
    );
    // One report among visits alike in all rings, moved inwards ring by ring.
    fc.assert(
      fc.property(share, worth, fc.integer({ min: 1, max: 500 }), (prior, visits, each) => {
        const withOne = (at: number) => [0, 1, 2].map((index) => ({ visits: each, reports: index === at ? 1 : 0 }));
        const [near = 0, middle = 0, far = 0] = [0, 1, 2].map((at) =>
          expectedShare({ share: prior, visits }, withOne(at)),
        );
        expect(near).toBeGreaterThanOrEqual(middle - 1e-12);
        expect(middle).toBeGreaterThanOrEqual(far - 1e-12);
      }),
    );
  });
});
