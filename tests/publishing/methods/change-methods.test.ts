import { describe, expect, it } from "vitest";
import { EVIDENCE_SETS } from "../../../src/measures/change/evidence-sets.ts";
import type { MethodClaim } from "../../../src/publishing/contracts.ts";
import { changeStatements } from "../../../src/publishing/methods/change-methods.ts";
import { ChangeSettings, CoverageSettings } from "../../../src/scheme/measure-settings.ts";
import type { Scheme } from "../../../src/scheme/scheme.ts";
import { EVIDENCE_WORDS } from "../../../src/site/components/figures/evidence-words.ts";
import { methodWords, TREND_METHODS } from "../../../src/site/components/figures/lines.ts";
import { statementHtml } from "../../../src/site/components/methods/statements.ts";

function scheme(periods: number): Scheme {
  const change = ChangeSettings.parse({ minimum_comparable_squares: 23, relative: { minimum_taxa: 37 } });
  const coverage = CoverageSettings.parse({ minimum_visits: 4 });
  return {
    settings: { change, coverage, provisional_years: [2024], periods: Array.from({ length: periods }) },
  } as unknown as Scheme;
}
const claims = (claim: MethodClaim["claim"], reason = ""): MethodClaim[] =>
  TREND_METHODS.map((method) => ({ method, claim, reason }));
const text = (list: readonly MethodClaim[]) => changeStatements(scheme(2), list).map(statementHtml).join(" ");

describe("changeStatements", () => {
  it("says nothing of change in an atlas of one period", () => {
    expect(changeStatements(scheme(1), claims("kept"))).toEqual([]);
  });
  it("has a heading where every line's link leads", () => {
    const places = new Set(changeStatements(scheme(2), []).map(({ section }) => section));
    for (const method of TREND_METHODS) expect(places).toContain(methodWords(method).anchor);
    for (const anchor of ["change", "what-it-hangs-on", "through-time", "first-years"])
      expect(places).toContain(anchor);
  });
  it("states the minimums in force", () => {
    expect(text([])).toContain("from 23 comparable squares");
    expect(text([])).toContain("covered by 4 visits, or by 8");
    expect(text([])).toContain("groups with 37 species or more");
  });
  it("claims a correction only as far as the claims allow", () => {
    expect(text(claims("kept"))).toContain("bears out");
    const withdrawn = text(claims("withdrawn", "9 % of unchanged species were called changed where effort doubles"));
    expect(withdrawn).not.toContain("bears out");
    expect(withdrawn).toContain("9 % of unchanged species were called changed where effort doubles.");
    for (const none of [claims("untested"), []]) expect(text(none)).not.toContain("bears out");
  });
});

describe("EVIDENCE_WORDS", () => {
  it("has words for every set of evidence, and no other", () => {
    expect(Object.keys(EVIDENCE_WORDS).sort()).toEqual(EVIDENCE_SETS.map(({ id }) => id).sort());
  });
});
