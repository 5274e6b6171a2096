import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { casteShares, seasonFactor, thirdOf } from "../../../../src/site/components/narrow/season-shares.ts";
import { EVEN } from "./invented-taxa.ts";

const only = (third: number, count: number) => EVEN.map((_, i) => (i === third ? count : 0));

describe("the third of a month", () => {
  it("is 1–10, 11–20 or the rest, from January", () => {
    expect(["2026-01-01", "2026-01-10", "2026-01-11", "2026-02-28", "2026-12-31", "12 May"].map(thirdOf)).toEqual([
      0,
      0,
      1,
      5,
      35,
      undefined,
    ]);
  });
});

describe("the season of a taxon", () => {
  it("says how much oftener than on an average visit it is recorded", () => {
    // All 99 records in one third of 36 equal ones: half of it counts there, a quarter in each of those beside it.
    // (99 × 1/2 + 1/36) / (99 + 1) × 36 = 17.83.
    expect(seasonFactor(only(12, 99), EVEN, 12)).toBeCloseTo(17.83, 9);
    expect(seasonFactor(only(12, 99), EVEN, 13)).toBeCloseTo((99 / 4 + 1 / 36) * 0.36, 9);
    expect(seasonFactor(only(12, 99), EVEN, 20)).toBeCloseTo(0.01, 9);
  });

  it("is flat without a date or a record, goes over the turn of the year, and is never 0", () => {
    expect(seasonFactor(only(12, 99), EVEN, undefined)).toBe(1);
    expect(seasonFactor(only(12, 0), EVEN, 3)).toBe(1);
    expect(seasonFactor(only(0, 99), EVEN, 35)).toBeCloseTo(seasonFactor(only(12, 99), EVEN, 13), 9);
    fc.assert(
      fc.property(
        fc.array(fc.nat(99), { minLength: 36, maxLength: 36 }),
        fc.array(fc.nat(99), { minLength: 36, maxLength: 36 }),
        fc.nat(35),
        (season, visits, third) => seasonFactor(season, visits, third) > 0,
      ),
    );
  });
});

describe("castes", () => {
  const seasons = [
    { caste: "queen", records: only(9, 30) },
    { caste: "worker", records: only(18, 68) },
    { caste: "not_stated", records: only(3, 500) },
  ];
  it("share the year as the records that state one do, with a record each", () => {
    const shares = casteShares({ castes: ["queen", "worker"], seasons }, undefined);
    expect([shares.get("queen"), shares.get("worker")]).toEqual([0.31, 0.69]);
  });

  it("share a third of the month by its own records and four of the whole year", () => {
    const shares = casteShares({ castes: ["queen", "worker"], seasons }, 9);
    // Queens: half of 30 in their third; (15 + 4 × 0.31) / (15 + 4).
    expect(shares.get("queen")).toBeCloseTo(16.24 / 19, 9);
    expect((shares.get("queen") ?? 0) + (shares.get("worker") ?? 0)).toBeCloseTo(1, 9);
  });

  it("are one without a name where a taxon has none", () => {
    expect([...casteShares({ castes: [], seasons: [] }, 9)]).toEqual([["", 1]]);
  });
});
