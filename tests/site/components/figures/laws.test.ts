import { describe, expect, it } from "vitest";
import type { ChangeRow } from "../../../../src/publishing/contracts.ts";
import { netRow, rulesSentence, ruleWords } from "../../../../src/site/components/figures/coverage-rules.ts";
import { coveredBoth } from "../../../../src/site/components/figures/covered-both.ts";
import { change, figured, interval } from "../../../../src/site/components/figures/figure-words.ts";
import { pairsOf } from "../../../../src/site/components/figures/pairs.ts";
import { territorySentence } from "../../../../src/site/components/figures/territory-sentence.ts";
import { changeOf } from "../../../support/published/squares.ts";

const ROW: ChangeRow = {
  ...changeOf([], [], "all", 10_000),
  comparable: 40,
  judged: true,
  reason: "",
  net: 6,
  net_percent: 20,
  interval_low: 1,
  interval_high: 11,
};
const STRICTER = {
  minimum_visits: 10,
  comparable: 25,
  net: 2,
  net_percent: 9.4,
  interval_low: -2,
  interval_high: 6,
  turnover: null,
  turnover_low: null,
  turnover_high: null,
  judged: true,
  reason: "",
};

describe("figures in words", () => {
  it("have a true minus, a sign where asked, and none on what rounds to 0", () => {
    expect([figured(-12.34, 1), figured(1234.5), change(0.4), change(-0.4), change(3)]).toEqual([
      "−12.3",
      "1,235",
      "0",
      "0",
      "+3",
    ]);
    expect(interval(-3.2, 8.1, (end) => change(end))).toBe("−3 to +8");
    expect(interval(null, 8, String)).toBe("");
  });
});

describe("coveredBoth", () => {
  it("adds every square up once", () => {
    const counts = {
      comparable: 10,
      covered_both_no_record: 5,
      recorded_both_not_covered: 1,
      recorded_both_unsettled: 2,
      not_comparable_since: 3,
      not_comparable_before: 4,
      covered_one_no_record: 6,
      covered_neither: 7,
    };
    expect(coveredBoth(counts)).toBe(
      "**15 of 38 squares** are covered in both periods by records of others: only these can show a change. 3 more squares hold it in both, outside these figures: too little else was recorded there, or one period has only records of provisional years or of animals not established.",
    );
  });
});

describe("rules of coverage", () => {
  it("say whether the stricter one changes the answer", () => {
    expect(ruleWords(1)).toBe("One visit or more");
    expect(rulesSentence({ ...ROW, stricter: null })).toBe("");
    expect(rulesSentence({ ...ROW, stricter: STRICTER })).toBe(
      "The rule matters: more squares under the first, **no direction** under the stricter, with 25 comparable squares.",
    );
    expect(rulesSentence({ ...ROW, stricter: { ...STRICTER, interval_low: 1 } })).toBe(
      "Under the stricter rule, with 25 comparable squares, the squares say **the same**: more squares.",
    );
    expect(rulesSentence({ ...ROW, stricter: { ...STRICTER, judged: false } })).toContain("too few **to be judged**");
    expect(netRow(STRICTER)).toMatchObject({ estimate: "+9\u00a0%", interval: "−2 to +6 squares", counts: [25] });
    expect(netRow({ ...STRICTER, judged: false, reason: "why" }).reason).toBe("why");
  });
});

describe("pairsOf", () => {
  it("puts the compared pair first, then goes by time", () => {
    const periods = ["a", "b", "c"].map((id, index) => ({ id, label: id.toUpperCase(), from: index, to: index }));
    const rows = [
      ["b", "c"],
      ["a", "c"],
      ["a", "b"],
    ].map(([from_period = "", to_period = ""]) => ({ from_period, to_period }));
    expect(pairsOf(rows, periods, ["a", "c"]).map(({ from, toLabel }) => `${from}${toLabel}`)).toEqual([
      "aC",
      "aB",
      "bC",
    ]);
    expect(pairsOf(rows, periods, null)).toEqual([]);
  });
});

describe("territorySentence", () => {
  const of = (territory: string, low: number, high: number): ChangeRow => ({
    ...ROW,
    territory,
    interval_low: low,
    interval_high: high,
  });
  const name = ({ territory }: ChangeRow) => territory;
  it("names the territories with a direction and says what 2 km cannot", () => {
    const finer = { ...ROW, resolution_m: 2_000 as const, judged: false, reason: "too coarse" };
    expect(territorySentence([ROW, of("North", 1, 4), of("South", -5, -1), finer], name)).toBe(
      "More squares in **North**, fewer in **South**. At 2 km change **cannot be judged**: too coarse.",
    );
    expect(territorySentence([ROW, of("North", -1, 4), of("South", -5, 1)], name)).toBe(
      "No territory shows a direction.",
    );
    expect(territorySentence([ROW], name)).toBe("");
  });
});
