import { describe, expect, it } from "vitest";
import type { TrendRow } from "../../../../src/publishing/contracts.ts";
import {
  correctionOf,
  directionOf,
  lineNumber,
  linesOf,
  numbersOf,
  saysOf,
} from "../../../../src/site/components/figures/lines.ts";

const TREND: TrendRow = {
  method: "relative_change",
  evidence_set: "main",
  from_period: "p1",
  to_period: "p2",
  n_from: 40,
  n_to: 60,
  n: 30,
  estimate: -1.26,
  low: -2,
  high: -0.5,
  judged: true,
  reason: "",
};

describe("linesOf", () => {
  it("takes the asked pair and set, in the order of the methods", () => {
    const trends: TrendRow[] = [
      TREND,
      { ...TREND, method: "squares_compared" },
      { ...TREND, evidence_set: "without_lots" },
      { ...TREND, to_period: "p3" },
    ];
    expect(linesOf(trends, [], ["p1", "p2"]).map(({ method }) => method)).toEqual([
      "squares_compared",
      "relative_change",
    ]);
    expect(linesOf(trends, [], ["p1", "p2"], "without_lots")).toHaveLength(1);
    expect(linesOf([], [], ["p1", "p2"])).toEqual([]);
  });
  it("says of the correction only what the claim allows, and nothing good without one", () => {
    const said = (claim: "none" | "kept" | "withdrawn" | "untested") =>
      linesOf([TREND], [{ method: "relative_change", claim, reason: "" }], ["p1", "p2"])[0];
    expect(said("kept")).toMatchObject({ isCorrected: true, correction: "corrected for recording" });
    for (const claim of ["none", "withdrawn", "untested"] as const) {
      expect(said(claim)?.isCorrected).toBe(false);
      expect(said(claim)?.correction).toMatch(/^not corrected|failed its test$|untested$/);
    }
    expect(linesOf([TREND], [], ["p1", "p2"])[0]?.isCorrected).toBe(false);
  });
  it("carries the fixed words of a relative figure", () => {
    const [line] = linesOf([TREND], [], ["p1", "p2"]);
    expect(line && saysOf(line)).toBe("fewer squares than expected from the group as a whole");
    const [up] = linesOf([{ ...TREND, method: "local_frequency", low: 1, high: 3 }], [], ["p1", "p2"]);
    expect(up && saysOf(up)).toBe("more squares than expected from the group as a whole");
  });
});

describe("numbersOf", () => {
  it("adds up the lists of two periods, and never calls squares lists", () => {
    const trend = { n_from: 300, n_to: 500, n: 40 };
    expect(numbersOf({ trend, counts: "list" })).toEqual([300, 500, 800]);
    expect(numbersOf({ trend, counts: "square" })).toEqual([300, 500, 40]);
  });
});

describe("correctionOf", () => {
  it("says that squares compared are not corrected, and nothing good of what is not known", () => {
    const claims = [{ method: "squares_compared", claim: "none", reason: "" }] as const;
    expect(correctionOf(claims, "squares_compared")).toBe("not corrected for recording");
    expect(correctionOf(claims, "reporting_rate")).toBe("its correction for recording is untested");
  });
});

describe("directionOf", () => {
  it("has none where the interval touches no change, is missing or not judged", () => {
    expect(directionOf({ judged: true, low: 0, high: 3 })).toBe("none");
    expect(directionOf({ judged: true, low: 0.1, high: 3 })).toBe("more");
    expect(directionOf({ judged: true, low: null, high: 3 })).toBeNull();
    expect(directionOf({ judged: false, low: 1, high: 3 })).toBeNull();
  });
});

describe("lineNumber", () => {
  it("gives whole per cent and tenths of a standard deviation, with a true minus", () => {
    expect(lineNumber("%", -0.4)).toBe("0");
    expect(lineNumber("%", 1204.6)).toBe("+1,205");
    expect(lineNumber("SD", -1.26)).toBe("−1.3");
  });
});
