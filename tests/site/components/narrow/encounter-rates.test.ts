import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { encounterRates } from "../../../../src/site/components/narrow/encounter-rates.ts";
import { taxon } from "./invented-taxa.ts";

const [a, b] = [taxon("a"), taxon("b")];

describe("encounter rates", () => {
  it("are those of the whole atlas without a place, never 0", () => {
    const rates = encounterRates([a, b], { everywhere: new Map([["a", 0.5]]), visits: 999 });
    // (0.5 × 999 + 0.5) / 1000 = 0.5; (0 × 999 + 0.5) / 1000 = 0.0005.
    expect(rates.get("a")).toBeCloseTo(Math.LN2, 9);
    expect(rates.get("b")).toBeCloseTo(-Math.log(0.9995), 9);
  });

  it("join five visits of the whole atlas to those of the place", () => {
    const here = { visits: 15, shares: new Map([["b", 0.4]]) };
    const rates = encounterRates([a, b], { everywhere: new Map([["a", 0.5]]), visits: 999, here });
    // a: (0 × 15 + 5 × 0.5) / 20 = 0.125; b: (0.4 × 15 + 5 × 0.0005) / 20 = 0.300125.
    expect(rates.get("a")).toBeCloseTo(-Math.log(0.875), 9);
    expect(rates.get("b")).toBeCloseTo(-Math.log(1 - 0.300125), 9);
  });

  it("are raised in proportion where a group has more than its members come to", () => {
    const group = taxon("group", { members: ["a", "b"] });
    const shares: [string, number][] = [
      ["a", 0.1],
      ["b", 0.1],
      ["group", 0.5],
    ];
    const rates = encounterRates([a, b, group], { everywhere: new Map(shares), visits: 1e9 });
    // −ln 0.5 shared equally; the group itself is no candidate.
    expect(rates.get("a")).toBeCloseTo(Math.LN2 / 2, 6);
    expect(rates.has("group")).toBe(false);
  });

  it("grow with the share of visits, and stay finite where all record it", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (one, other) => {
          const rates = encounterRates([a, b], {
            everywhere: new Map([
              ["a", one],
              ["b", other],
            ]),
            visits: 100,
          });
          expect(Number.isFinite(rates.get("a"))).toBe(true);
          if (one <= other) expect(rates.get("a") ?? 0).toBeLessThanOrEqual(rates.get("b") ?? 0);
        },
      ),
    );
  });
});
