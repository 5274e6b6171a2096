import { describe, expect, it } from "vitest";
import {
  changesOf,
  claimWords,
  methodName,
  misses,
  powerOf,
  truthSentence,
} from "../../../../src/site/components/methods/known-truth-words.ts";
import { KNOWN_TRUTH } from "../../../support/published/known-truth.ts";

const NULL = [{ change: 0, judged: 100, more: 3, fewer: 1, coverage: null }];
const REAL = [{ change: -40, judged: 10, more: 1, fewer: 7, coverage: null }, ...NULL];

describe("the known truth in words", () => {
  it("names every method, counting alone too", () => {
    expect(methodName("raw_counts")).toBe("Squares counted, nothing else");
    expect(methodName("reporting_rate")).toBe("Reporting rate");
  });
  it("says which target a row misses", () => {
    expect(misses({ called: 0.05, coverage: 0.92, by_change: NULL })).toBe("");
    expect(misses({ called: 0.051, coverage: 0.98, by_change: NULL })).toBe("calls too many changed");
    expect(misses({ called: 0.9, coverage: 0.5, by_change: REAL })).toBe("intervals too narrow");
    expect(misses({ called: 0.9, coverage: 0.98, by_change: REAL })).toBe("intervals too wide");
    expect(misses({ called: 0.9, coverage: 0.97, by_change: REAL })).toBe("");
  });
  it("counts species called as they changed, and gives no percentage of few", () => {
    expect(changesOf([{ by_change: REAL }])).toEqual([-40, 0]);
    expect(powerOf({ by_change: REAL }, -40)).toBe("7 of 10");
    expect(powerOf({ by_change: REAL }, 0)).toBe("4");
    expect(powerOf({ by_change: REAL }, 60)).toBe("–");
  });
  it("shows counting alone to fail, and claims nothing where nothing was tested", () => {
    expect(truthSentence(KNOWN_TRUTH.rows)).toContain("counting squares alone calls up to **97 %** of them changed");
    expect(truthSentence([])).toContain("none claims to correct for recording");
  });
  it("words every state of a claim", () => {
    expect(claimWords({ claim: "kept", reason: "" })).toBe("corrects for recording");
    for (const claim of ["none", "untested", "withdrawn"] as const)
      expect(claimWords({ claim, reason: "why" })).not.toBe("corrects for recording");
  });
});
