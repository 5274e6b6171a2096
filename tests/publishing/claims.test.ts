import { describe, expect, it } from "vitest";
import { claimsOf } from "../../src/publishing/claims.ts";
import type { KnownTruthRow } from "../../src/publishing/contracts.ts";

const ROW: KnownTruthRow = {
  method: "local_frequency",
  scenario: "doubled",
  label: "effort doubles",
  estimand: "2 km squares lived in, %",
  species: 510,
  judged: 500,
  called: 0.04,
  called_error: 0.01,
  median_bias: 0.4,
  coverage: 0.95,
  by_change: [{ change: 0, judged: 500, more: 12, fewer: 8, coverage: 0.95 }],
};
const CHANGED = [{ change: -40, judged: 500, more: 0, fewer: 400, coverage: 0.94 }];
const claim = (...rows: Partial<KnownTruthRow>[]) =>
  claimsOf(rows.map((row) => ({ ...ROW, ...row }))).find(({ method }) => method === "local_frequency");

/** Bounds: at most 5 % of unchanged species called changed; 92 to 97 % of nominal 95 % intervals hold the truth. */
describe("claimsOf", () => {
  it("keeps a claim at the bounds of the targets", () => {
    const changed = [0.92, 0.97].map((coverage) => ({ by_change: CHANGED, coverage }));
    for (const row of [{}, { called: 0.05 }, ...changed])
      expect(claim({}, row)).toEqual({ method: "local_frequency", claim: "kept", reason: "" });
  });
  it("withdraws it beyond them, and names the first target missed", () => {
    expect(claim({ called: 0.06 })).toEqual({
      method: "local_frequency",
      claim: "withdrawn",
      reason: "6 % of unchanged species were called changed where effort doubles",
    });
    expect(claim({}, { by_change: CHANGED, called: 0.8, coverage: 0.875 })?.reason).toBe(
      "87.5 % of its 95 % intervals held the truth where effort doubles",
    );
    expect(claim({}, { by_change: CHANGED, coverage: 0.98 })?.claim).toBe("withdrawn");
  });
  it("does not mind how few of the unchanged species are called changed", () => {
    expect(claim({ called: 0.01, coverage: 0.99 })?.claim).toBe("kept");
  });
  it("does not mind how many of the changed species are called changed", () => {
    expect(claim({}, { by_change: CHANGED, called: 0.9 })?.claim).toBe("kept");
  });
  it("does not take species that change for a test of those that do not", () => {
    expect(claim({ by_change: CHANGED })?.claim).toBe("untested");
  });
  it("claims nothing untested, of no species, or for squares that are only compared", () => {
    expect(claimsOf([]).map(({ claim: kept }) => kept)).toEqual(["none", "rank", "untested", "untested"]);
    expect(claim({ judged: 0, called: null, coverage: null })?.claim).toBe("untested");
    expect(claimsOf([{ ...ROW, method: "squares_compared", called: 0 }])[0]?.claim).toBe("none");
    // It calls at most one in twenty of a group by construction: the table cannot bear out a claim.
    expect(claimsOf([{ ...ROW, method: "relative_change", called: 0.03 }])[1]?.claim).toBe("rank");
  });
});
