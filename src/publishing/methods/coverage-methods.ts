import type { Scheme } from "../../scheme/scheme.ts";
import { percent, type Told, told } from "./statement.ts";

/** Visits, and those of them whose records name nobody. */
export interface VisitCounts {
  visits: number;
  visits_without_recorder: number;
}

/**
 * What the methods page says of visits, of squares that are covered, and of taxa that are expected.
 *
 * @example coverageStatements(scheme, { visits: 40, visits_without_recorder: 10 })[1] // => { key: "methods.coverage-nameless", values: { n: 10, all: 40, percent: 25 } }
 */
export function coverageStatements(
  { settings: { coverage, group } }: Pick<Scheme, "settings">,
  counts: VisitCounts,
): (Told | null)[] {
  const { minimum_visits: least, stricter_minimum_visits: more = 2 * least, minimum_visits_for_richness } = coverage;
  return [
    told("coverage-visit"),
    withoutRecorder(counts),
    told("coverage-lists", { group: group.many }),
    told("coverage-rule", { least, more, group: group.many }),
    told("coverage-blank"),
    told("coverage-expected", { group: group.many }),
    told("coverage-bound", { visits: minimum_visits_for_richness }),
    told("coverage-reading"),
  ];
}

function withoutRecorder({ visits, visits_without_recorder: n }: VisitCounts): Told | null {
  if (visits === 0) return null;
  if (n === 0) return told("coverage-named");
  return told("coverage-nameless", { n, all: visits, percent: n / visits < 0.005 ? 0 : percent(n / visits) });
}
