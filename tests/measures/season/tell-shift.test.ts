import { describe, expect, it } from "vitest";
import type { SettledRow, Shift } from "../../../src/measures/season/shift.ts";
import { shiftAsRecorded } from "../../../src/measures/season/shift-as-recorded.ts";
import { tellShift } from "../../../src/measures/season/tell-shift.ts";
import { type Invented, inventSeasons } from "./invented-seasons.ts";

const rules = { minimum_years: 10, minimum_records_a_year: 5 };
const median = (shifts: readonly Shift[]) =>
  shifts.find(({ method, share }) => method === "regression" && share === 0.5) as Shift;
const misses = ({ low, high }: Shift, truth: number) => (low as number) > truth || (high as number) < truth;

/** Recording that moves three degrees north, two weeks earlier in the year, and to other castes. */
const MOVING: Invented = { northward: 3, outEarlier: 15, laterCaste: 0.3 };

/** Shares of seeds whose intervals miss the truth, as recorded and allowed for. */
function missed(seeds: number, change: Invented, ofCaste: "all" | "queen") {
  const truth = -(change.earlier ?? 0);
  let [raw, allowed, inYears, bias] = [0, 0, 0, 0];
  for (let seed = 0; seed < seeds; seed += 1) {
    const { rows: all, groupVisits } = inventSeasons(`known truth ${seed}`, change);
    const rows = all.filter(({ caste }) => ofCaste === "all" || caste === ofCaste);
    const told = tellShift({ rows, groupVisits, rules, name: `seed ${seed}` });
    if (misses(shiftAsRecorded({ rows, rules }), truth)) raw += 1;
    if (misses(median(told), truth)) allowed += 1;
    if (misses(told[0] as Shift, truth)) inYears += 1;
    bias += ((median(told).shift as number) - truth) / seeds;
  }
  return { raw: raw / seeds, allowed: allowed / seeds, inYears: inYears / seeds, bias };
}

// The truth is that of the invention. Of 40 seeds at most 5 may miss where 5 % do: more have a chance of one in a hundred.
describe("tellShift, where the truth is known", () => {
  it("finds a shift of four days a decade while recording moves, which the medians as recorded miss", () => {
    const found = missed(40, { earlier: 4, ...MOVING }, "all");
    expect(found.allowed).toBeLessThanOrEqual(5 / 40);
    expect(found.inYears).toBeLessThanOrEqual(5 / 40);
    expect(Math.abs(found.bias)).toBeLessThan(0.7);
    expect(found.raw).toBeGreaterThan(0.9);
  });

  it("finds none under no shift while recording moves, which the medians as recorded take for one", () => {
    const found = missed(40, MOVING, "all");
    expect(found.allowed).toBeLessThanOrEqual(5 / 40);
    expect(found.inYears).toBeLessThanOrEqual(5 / 40);
    expect(Math.abs(found.bias)).toBeLessThan(0.7);
    expect(found.raw).toBeGreaterThan(0.9);
  });

  it("finds the shift of one caste while recording moves north alone, which the medians as recorded miss oftener", () => {
    const found = missed(40, { earlier: 4, northward: 4 }, "queen");
    expect(found.allowed).toBeLessThanOrEqual(5 / 40);
    expect(found.raw).toBeGreaterThan(0.3);
  });
});

describe("tellShift", () => {
  const { rows, groupVisits } = inventSeasons("one", {});
  const tell = (own: readonly SettledRow[], visits: ReadonlyMap<number, ArrayLike<number>> = groupVisits) =>
    tellShift({ rows: own, groupVisits: visits, rules, name: "one" });
  const reasons = (shifts: readonly Shift[]) => [...new Set(shifts.map(({ judged, reason }) => `${judged} ${reason}`))];

  it("gives the same bits each time", () => {
    expect(tell(rows)).toEqual(tell(structuredClone(rows)));
  });

  it("says how many years are too few", () => {
    const few = rows.filter(({ season_year }) => season_year < 2004);
    expect(reasons(tell(few))).toEqual(["false 4 years with 5 visits or more, where 10 are needed"]);
  });

  it("refuses where too many visits have no square", () => {
    const hidden = rows.map((row, i) => (i % 2 === 0 ? { ...row, band: null } : row));
    expect(reasons(tell(hidden))[0]).toMatch(/^false \d+ of \d+ visits have no 10 km square to tell their latitude$/);
  });

  it("refuses where latitude follows from the year", () => {
    const moving = rows.map((row) => ({ ...row, band: 2 * (row.season_year - 1950) }));
    expect(reasons(tell(moving))).toEqual([
      "false latitude, territory or caste changed with the years, and cannot be told from them",
    ]);
  });

  it("refuses where some of the years hardly visited its season", () => {
    const late = new Map(
      [...groupVisits].map(([year, thirds]) => [year, Array.from(thirds).map((count, i) => (i < 15 ? 0 : count))]),
    );
    expect(reasons(tell(rows, late))[0]).toMatch(
      /^false even in the last 10 years \d+ % of its visits fall in thirds of a month that were visited fewer than 10 times in some of them$/,
    );
  });
});
