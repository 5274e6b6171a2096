import type { Database } from "../engine/database.ts";
import type { Scheme } from "../scheme/scheme.ts";
import type { CompletenessCounts, CoverageFile, CoverageRule, ListCounts } from "./contracts.ts";

/** Squares of 10 km on land by completeness and span; below nine tenths means below, so that 0.9 is in the last class. */
const BY_COMPLETENESS = `
  SELECT r.span, count(*) AS sampled, count(*) FILTER (NOT r.judged) AS not_judged,
    [count(*) FILTER (r.completeness < 0.5), count(*) FILTER (r.completeness >= 0.5 AND r.completeness < 0.75),
     count(*) FILTER (r.completeness >= 0.75 AND r.completeness < 0.9), count(*) FILTER (r.completeness >= 0.9)] AS classes,
    count(*) FILTER (r.completeness_without_single_records >= 0.9) AS fullest_without_single_records
  FROM square_richness AS r
  JOIN square_places AS p ON p.grid = r.grid AND p.resolution_m = r.resolution_m AND p.square = r.square
  WHERE r.resolution_m = 10000 AND p.on_land
  GROUP BY r.span`;

/** The coverage page's numbers: squares covered under two rules, how complete lists are, and how long those of visits. */
export async function coverageFile(database: Database, { settings }: Pick<Scheme, "settings">): Promise<CoverageFile> {
  const spans = [...settings.periods.map(({ id }, span) => ({ id, span })), { id: "all", span: -1 }];
  const [land] = await database.rows<{ squares: number }>(
    "SELECT count(*)::INTEGER AS squares FROM square_places WHERE resolution_m = 10000 AND on_land",
  );
  const sampled = await database.rows<Pick<CompletenessCounts, "not_judged" | "classes"> & Record<string, number>>(
    BY_COMPLETENESS,
  );
  const effort = await database.rows<Omit<ListCounts, "period"> & { period: number | null }>(
    `SELECT period, visits, visits_one_species AS one_species, visits_two_or_three AS two_or_three,
       visits_four_or_more AS four_or_more, complete_lists AS complete FROM period_effort`,
  );
  const none = { one_species: 0, two_or_three: 0, four_or_more: 0, complete: 0, visits: 0 };
  return {
    minimum_visits_for_richness: settings.coverage.minimum_visits_for_richness,
    rules: await database.rows<CoverageRule>(
      `SELECT territory, rule, minimum_visits, squares, covered_from, covered_to, covered_both FROM coverage_rules
       WHERE resolution_m = 10000 ORDER BY territory, minimum_visits, rule`,
    ),
    completeness: spans.map(({ id, span }) => {
      const own = sampled.find((row) => row["span"] === span);
      const squares = land?.squares ?? 0;
      return {
        period: id,
        squares,
        unsampled: squares - (own?.["sampled"] ?? 0),
        not_judged: own?.not_judged ?? 0,
        classes: own?.classes ?? [0, 0, 0, 0],
        fullest_without_single_records: own?.["fullest_without_single_records"] ?? 0,
      };
    }),
    lists: settings.periods.map(({ id }, index) => ({
      ...none,
      ...effort.find(({ period }) => period === index),
      period: id,
    })),
  };
}
