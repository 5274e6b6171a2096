import { describe, expect, it } from "vitest";
import type { TrendMethod, TrendRow } from "../../../../src/publishing/contracts.ts";
import { methodWords } from "../../../../src/site/components/figures/lines.ts";
import { sensitivityOf, sensitivitySentence, whatMoves } from "../../../../src/site/components/figures/sensitivity.ts";

function trend(method: TrendMethod, evidence_set: string, low: number | null): TrendRow {
  const judged = low !== null;
  return {
    method,
    evidence_set,
    from_period: "p1",
    to_period: "p2",
    n_from: 30,
    n_to: 40,
    n: 50,
    estimate: judged ? low + 5 : null,
    low,
    high: judged ? low + 10 : null,
    judged,
    reason: judged ? "" : "3 comparable squares; 20 are needed",
  };
}
const parts = (...rows: [TrendMethod, string, number | null][]) =>
  sensitivityOf(
    rows.map((row) => trend(...row)),
    [],
    ["p1", "p2"],
  );

describe("sensitivityOf", () => {
  it("marks the sets under which a method says something else, the headline set first", () => {
    const [squares] = parts(
      ["squares_compared", "without_lots", -3],
      ["squares_compared", "main", 2],
      ["squares_compared", "with_provisional_years", 4],
    );
    expect(squares?.rows.map(({ name, differs, says }) => [name, differs ?? false, says])).toEqual([
      ["All records, without provisional years", false, "more squares"],
      ["With provisional years", false, "the same"],
      ["Without specimens and literature", true, "no longer a direction"],
    ]);
    expect(squares?.moved).toEqual(["Without specimens and literature"]);
    expect(squares?.silent).toBe(false);
  });
  it("keeps the reason of a silent method, and knows one that never speaks", () => {
    const [silent] = parts(["reporting_rate", "main", null], ["reporting_rate", "without_lots", null]);
    expect(silent?.silent).toBe(true);
    expect(silent?.rows.map(({ reason }) => reason)).toEqual([
      "3 comparable squares; 20 are needed",
      "3 comparable squares; 20 are needed",
    ]);
  });
});

describe("whatMoves", () => {
  const words = methodWords("squares_compared");
  it("tells losing, finding and turning a direction apart", () => {
    expect(whatMoves("more", { ...words, direction: "more" })).toBe("");
    expect(whatMoves(null, { ...words, direction: null })).toBe("");
    expect(whatMoves("more", { ...words, direction: "fewer" })).toBe("turns round: fewer squares");
    expect(whatMoves("none", { ...words, direction: "fewer" })).toBe("now fewer squares");
    expect(whatMoves("fewer", { ...words, direction: null })).toBe("no longer judged");
    expect(whatMoves(null, { ...words, direction: "none" })).toBe("judged: no direction");
  });
});

describe("sensitivitySentence", () => {
  const say = (...rows: [TrendMethod, string, number | null][]) =>
    sensitivitySentence(parts(...rows)).replaceAll("**", "");
  it("says that nothing moves, or names what does", () => {
    expect(say(["squares_compared", "main", 2], ["squares_compared", "without_lots", 1])).toBe(
      "Whatever is counted, the line that speaks says the same.",
    );
    expect(
      say(
        ["squares_compared", "main", 2],
        ["squares_compared", "without_lots", -1],
        ["local_frequency", "main", 2],
        ["local_frequency", "without_lots", 2],
      ),
    ).toBe("The answer changes when counting without specimens and literature (squares compared).");
    expect(say(["squares_compared", "main", null])).toBe("No line can judge it, whatever is counted.");
  });
});
