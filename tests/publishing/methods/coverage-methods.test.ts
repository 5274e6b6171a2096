import { describe, expect, it } from "vitest";
import { coverageStatements } from "../../../src/publishing/methods/coverage-methods.ts";
import { CoverageSettings } from "../../../src/scheme/measure-settings.ts";
import type { Scheme } from "../../../src/scheme/scheme.ts";
import { statementHtml } from "../../../src/site/components/methods/statements.ts";

const told = (visits: number, visits_without_recorder: number, coverage: object = {}) => {
  const settings = { coverage: CoverageSettings.parse(coverage), group: { one: "bee", many: "bees" } };
  const statements = coverageStatements({ settings } as unknown as Scheme, { visits, visits_without_recorder });
  return statements.flatMap((one) => (one === null ? [] : [statementHtml(one)])).join(" ");
};

describe("coverageStatements", () => {
  it("gives the share of visits whose records name nobody", () => {
    expect(told(1_200, 300)).toContain("300 of 1,200 visits (25 %) name nobody");
    expect(told(1_200, 1)).toContain("1 of 1,200 visits (less than 1 %) name nobody");
    expect(told(1_200, 0)).toContain("Every visit names a recorder.");
    expect(told(0, 0)).not.toMatch(/nobody:|Every visit/);
  });

  it("states both rules and the visits asked for", () => {
    expect(told(9, 1)).toMatch(
      /at least 3 visits there recorded other bees.*a stricter one of 6 visits.*speaks from 5 visits/s,
    );
    const own = { minimum_visits: 1, stricter_minimum_visits: 4, minimum_visits_for_richness: 8 };
    expect(told(9, 1, own)).toMatch(/at least one visit there.*a stricter one of 4 visits.*speaks from 8 visits/s);
  });

  it("says that a blank is no absence", () => {
    expect(told(9, 1)).toContain("not proof of absence");
  });
});
