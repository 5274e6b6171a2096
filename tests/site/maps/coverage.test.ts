import { describe, expect, it } from "vitest";
import type { CoverageRule } from "../../../src/publishing/contracts.ts";
import { territoryRules } from "../../../src/site/maps/coverage.ts";

const place = (id: string, name: string) => ({ id, name, grid: "british", grid_name: "", land_hectads: 0 });
const rule = (territory: string, name: CoverageRule["rule"], covered_both: number): CoverageRule => ({
  ...{ territory, rule: name, minimum_visits: name === "in force" ? 3 : 6, squares: 40 },
  ...{ covered_from: 20, covered_to: 30, covered_both },
});

describe("territoryRules", () => {
  const rules = ["all", "b", "a"].flatMap((id) => [rule(id, "stricter", 4), rule(id, "in force", 9)]);

  it("gives territories in the atlas's order, then all, each with the rule in force first", () => {
    const rows = territoryRules({ rules }, { territories: [place("a", "Alpha"), place("b", "Beta")] });
    expect(rows.map(({ name }) => name)).toEqual(["Alpha", "Beta", "All"]);
    expect(rows.map((row) => row.rules.map(({ covered_both }) => covered_both))).toEqual([
      [9, 4],
      [9, 4],
      [9, 4],
    ]);
  });

  it("leaves out a territory without squares, and all where there is only one", () => {
    expect(territoryRules({ rules }, { territories: [place("a", "Alpha")] }).map(({ name }) => name)).toEqual([
      "Alpha",
    ]);
    expect(territoryRules({ rules }, { territories: [place("c", "Gamma"), place("a", "Alpha")] })).toHaveLength(2);
  });
});
