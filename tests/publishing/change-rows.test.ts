import { describe, expect, it } from "vitest";
import { changeRow, type JudgingRules } from "../../src/publishing/change-rows.ts";
import type { ChangeCounts } from "../../src/publishing/measured.ts";

const RULES: JudgingRules = {
  periods: ["earlier", "recent"],
  minimumComparable: 20,
  tetradShares: [0.6, 0.9],
  minimumTetradShare: 0.5,
};
const COUNTS: ChangeCounts = {
  resolution_m: 10_000,
  territory: "all",
  retained: 631,
  gained: 189,
  lost: 90,
  recorded_both_not_covered: 4,
  not_comparable_since: 30,
  not_comparable_before: 7,
  covered_both_no_record: 800,
  covered_one_no_record: 60,
  covered_neither: 40,
};

describe("changeRow", () => {
  it("gives net change among the comparable squares, in squares and in percent of those that held the species before", () => {
    // By hand: 631 + 189 + 90 = 910; 189 − 90 = 99; 99 / (631 + 90) = 13.73 %; interval: tests/measures/net-change.test.ts.
    expect(changeRow(COUNTS, RULES)).toMatchObject({
      comparable: 910,
      net: 99,
      net_percent: 13.7,
      interval_low: 66,
      interval_high: 130,
      judged: true,
      reason: "",
      from_period: "earlier",
      to_period: "recent",
    });
  });

  it.each<[string, Partial<ChangeCounts>, Partial<JudgingRules>]>([
    ["19 comparable squares; 20 are needed", { retained: 10, gained: 4, lost: 5 }, {}],
    ["1 comparable square; 20 are needed", { retained: 1, gained: 0, lost: 0 }, {}],
    ["no comparable squares", { retained: 0, gained: 0, lost: 0 }, {}],
    ["not recorded in the earlier period in any comparable square", { retained: 0, gained: 40, lost: 0 }, {}],
    [
      "only 60 % and 40 % of the two periods' records in the same 10 km squares are good to 2 km; 50 % of each are needed",
      { resolution_m: 2_000 },
      { tetradShares: [0.6, 0.4] },
    ],
  ])("says why it does not judge: %s", (reason, counts, rules) => {
    expect(changeRow({ ...COUNTS, ...counts }, { ...RULES, ...rules })).toMatchObject({
      judged: false,
      reason,
      net_percent: null,
      interval_low: null,
      interval_high: null,
    });
  });

  it("judges 10 km squares whatever the references, and 2 km squares when both periods reach the share", () => {
    expect(changeRow(COUNTS, { ...RULES, tetradShares: [0, 0] }).judged).toBe(true);
    expect(changeRow({ ...COUNTS, resolution_m: 2_000 }, { ...RULES, tetradShares: [0.5, 0.5] }).judged).toBe(true);
  });

  it("judges with exactly as many comparable squares as are asked for", () => {
    expect(changeRow({ ...COUNTS, retained: 10, gained: 4, lost: 6 }, RULES).judged).toBe(true);
  });
});
