import { describe, expect, it } from "vitest";
import type { ChangeCounts } from "../../src/publishing/change-counts.ts";
import { changeFigures, changeRows, type JudgingRules } from "../../src/publishing/change-rows.ts";

const RULES: JudgingRules = {
  periods: ["earlier", "recent"],
  minimumVisits: 5,
  minimumComparable: 20,
  minimumTetradShare: 0.5,
};
const COUNTS: ChangeCounts = {
  from_period: 0,
  to_period: 1,
  minimum_visits: 5,
  resolution_m: 10_000,
  territory: "all",
  retained: 631,
  gained: 189,
  lost: 90,
  recorded_both_not_covered: 4,
  recorded_both_unsettled: 2,
  not_comparable_since: 30,
  not_comparable_before: 7,
  covered_both_no_record: 800,
  covered_one_no_record: 60,
  covered_neither: 40,
  squares_from: 730,
  squares_to: 850,
  tetrads: { records_from: 10, at_tetrad_from: 6, records_to: 10, at_tetrad_to: 9 },
};
const NO_TETRADS = { records_from: 10, at_tetrad_from: 0, records_to: 10, at_tetrad_to: 0 };

describe("changeFigures", () => {
  it("gives net change among the comparable squares, in squares and in percent of those that held the species before, and turnover", () => {
    // By hand: 631 + 189 + 90 = 910; 189 − 90 = 99; 99 / (631 + 90) = 13.73 %; (189 + 90) / 910 = 30.66 %. Intervals by
    // scipy 1.17.1: binomtest(189, 279) exact 0.619104, 0.731917, so 279 × (2 × share − 1) is 66.46 to 129.41;
    // binomtest(279, 910).proportion_ci(0.95, "exact") is 0.276753, 0.337691.
    expect(changeFigures(COUNTS, RULES)).toEqual({
      comparable: 910,
      net: 99,
      net_percent: 13.7,
      interval_low: 66,
      interval_high: 130,
      turnover: 30.7,
      turnover_low: 27.7,
      turnover_high: 33.8,
      judged: true,
      reason: "",
    });
  });

  it.each<[string, Partial<ChangeCounts>]>([
    ["19 comparable squares; 20 are needed", { retained: 10, gained: 4, lost: 5 }],
    ["1 comparable square; 20 are needed", { retained: 1, gained: 0, lost: 0 }],
    ["no comparable squares", { retained: 0, gained: 0, lost: 0 }],
    ["not recorded in the earlier period in any comparable square", { retained: 0, gained: 40, lost: 0 }],
    ["it is a newcomer: no square in the earlier period", { retained: 0, gained: 40, lost: 0, squares_from: 0 }],
    ["no square in either period", { retained: 0, gained: 0, lost: 0, squares_from: 0, squares_to: 0 }],
    [
      "only 60 % and 49 % of its records of the two periods in the same 10 km squares are good to 2 km; 50 % of each are needed",
      {
        resolution_m: 2_000,
        tetrads: { records_from: 10, at_tetrad_from: 6, records_to: 1000, at_tetrad_to: 499 },
      },
    ],
    [
      "no 10 km square has records of it in both periods",
      { resolution_m: 2_000, tetrads: { records_from: 0, at_tetrad_from: 0, records_to: 0, at_tetrad_to: 0 } },
    ],
  ])("says why it does not judge: %s", (reason, counts) => {
    expect(changeFigures({ ...COUNTS, ...counts }, RULES)).toMatchObject({
      judged: false,
      reason,
      net_percent: null,
      interval_low: null,
      interval_high: null,
      turnover: null,
    });
  });

  it("says first what is hidden on purpose", () => {
    expect(changeFigures({ ...COUNTS, retained: 1 }, RULES, "its places are withheld").reason).toBe(
      "its places are withheld",
    );
  });

  it("judges 10 km squares whatever the references, and 2 km squares when both periods reach the share", () => {
    expect(changeFigures({ ...COUNTS, tetrads: NO_TETRADS }, RULES).judged).toBe(true);
    const half = { records_from: 2, at_tetrad_from: 1, records_to: 4, at_tetrad_to: 2 };
    expect(changeFigures({ ...COUNTS, resolution_m: 2_000, tetrads: half }, RULES).judged).toBe(true);
  });

  it("judges with exactly as many comparable squares as are asked for", () => {
    expect(changeFigures({ ...COUNTS, retained: 10, gained: 4, lost: 6 }, RULES).judged).toBe(true);
  });
});

describe("changeRows", () => {
  const strict = { ...COUNTS, minimum_visits: 10, retained: 12, gained: 25, lost: 12 };
  const other = { ...COUNTS, territory: "man" };

  it("puts what the stricter rule says beside each row of the first rule", () => {
    const rows = changeRows([COUNTS, other, strict], RULES, () => "");
    expect(rows.map(({ territory, stricter }) => [territory, stricter?.minimum_visits])).toEqual([
      ["all", 10],
      ["man", undefined],
    ]);
    // 25 and 12: exact p 0.047 (R), so that the interval leaves 0 out.
    expect(rows[0]?.stricter).toMatchObject({
      comparable: 49,
      net: 13,
      interval_low: 1,
      interval_high: 24,
      judged: true,
    });
    expect(rows[0]).toMatchObject({ from_period: "earlier", to_period: "recent", minimum_visits: 5, net: 99 });
  });

  it("hides both where squares lack records on purpose", () => {
    const [row] = changeRows([COUNTS, strict], RULES, () => "its places are withheld");
    expect([row?.judged, row?.stricter?.judged]).toEqual([false, false]);
  });
});
