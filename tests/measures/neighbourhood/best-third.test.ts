import { describe, expect, it } from "vitest";
import { bestThird, seasonFactors } from "../../../src/measures/neighbourhood/best-third.ts";

const thirds = (counts: Readonly<Record<number, number>>) =>
  Array.from({ length: 36 }, (_, third) => counts[third] ?? 0);

describe("seasonFactors", () => {
  it("tells a taxon's share of its year from the group's share of theirs, by hand", () => {
    // 3 of 4 records in the third 16, where 200 of 1,000 visits were made: 0.75 / 0.2; 1 of 4 in 17, with 800: 0.25 / 0.8.
    const factors = seasonFactors(thirds({ 16: 3, 17: 1 }), thirds({ 16: 200, 17: 800 }), 150);
    expect([factors[15], factors[16], factors[17]]).toEqual([0, 3.75, 0.3125]);
  });

  it("says nothing of thirds with few visits, or of a taxon without a date", () => {
    expect(seasonFactors(thirds({ 16: 3 }), thirds({ 16: 149, 17: 800 }), 150)[16]).toBe(0);
    expect(new Set(seasonFactors(thirds({}), thirds({ 16: 500 }), 150))).toEqual(new Set([0]));
  });
});

describe("bestThird", () => {
  const season = (counts: Readonly<Record<number, number>>) => thirds(counts);

  it("weighs each taxon by its chance, by hand", () => {
    // Third 10: 0.9 × 0.1 × 2 = 0.18; third 20: 0.5 × 0.2 × 2 = 0.2.
    const one = { chance: 0.9, frequency: 0.1, season: season({ 10: 2 }) };
    const other = { chance: 0.5, frequency: 0.2, season: season({ 20: 2 }) };
    expect(bestThird([one, other])).toBe(20);
  });

  it("never lets a visit find a taxon more than once", () => {
    const rare = { chance: 0.1, frequency: 0.5, season: season({ 3: 20 }) };
    const common = { chance: 0.8, frequency: 0.5, season: season({ 15: 1 }) };
    expect(bestThird([rare, common])).toBe(15);
  });

  it("takes the earliest of equals, and none where nothing is promised", () => {
    expect(bestThird([{ chance: 0.5, frequency: 0.2, season: season({ 12: 1, 18: 1 }) }])).toBe(12);
    expect(bestThird([{ chance: 0.5, frequency: 0.2, season: thirds({}) }])).toBeNull();
    expect(bestThird([])).toBeNull();
  });
});
