import type { CoverageFile, CoverageRule, HectadSummary } from "../../../src/publishing/contracts.ts";
import { total } from "./numbers.ts";

/** Visits that cover a square in force and under the stricter rule. */
const RULES = [
  ["in force", 5],
  ["stricter", 10],
] as const;

/** Coverage of the invented squares, as far as their visits tell it; completeness by position in the list. */
export function coverageFile(hectads: readonly HectadSummary[], two: boolean): CoverageFile {
  const latest = two ? 1 : 0;
  const rules = RULES.flatMap(([rule, minimum_visits]) =>
    ["britain", "all"].map((territory): CoverageRule => {
      const covered = (period: number) => hectads.filter(({ visits }) => (visits[period] ?? 0) >= minimum_visits);
      return {
        ...{ territory, rule, minimum_visits, squares: hectads.length },
        covered_from: two ? covered(0).length : null,
        covered_to: covered(latest).length,
        covered_both: two ? covered(0).filter((square) => covered(1).includes(square)).length : null,
      };
    }),
  );
  const periods = two ? ["p1", "p2"] : ["p1"];
  return {
    minimum_visits_for_richness: 5,
    rules,
    completeness: [...periods, "all"].map((period) => {
      const classes = [0, 1, 2, 3].map(
        (number) => hectads.filter((_, index) => index % 6 === number || (number === 3 && index % 6 === 4)).length,
      );
      const rest = hectads.length - total(classes);
      return {
        ...{ period, squares: hectads.length, unsampled: 0, not_judged: rest, classes },
        fullest_without_single_records: total(classes.slice(2)),
      };
    }),
    lists: periods.map((period, index) => {
      const visits = total(hectads.map((hectad) => hectad.visits[index] ?? 0));
      const one_species = Math.floor(visits / 2);
      const two_or_three = Math.floor((visits - one_species) / 2);
      const four_or_more = visits - one_species - two_or_three;
      return { period, visits, one_species, two_or_three, four_or_more, complete: four_or_more };
    }),
  };
}
