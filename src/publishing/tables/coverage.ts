/** How well squares were visited: effort, taxa observed and expected, and squares covered under two rules. */
import {
  number,
  ofPeriod,
  PERIOD,
  type PublishedTable,
  periodId,
  SQUARE,
  SQUARE_KEY,
  text,
  whole,
  yes,
} from "./fields.ts";

const LISTS = [
  whole("visits_one_species", "visits whose list is explained by one taxon"),
  whole("visits_two_or_three", "visits whose list is explained by two or three taxa at the least"),
  whole(
    "visits_four_or_more",
    "visits whose list needs four taxa or more; visits that found nothing, and those of records shown coarser, are in no class of length",
  ),
  whole("complete_lists", "visits declared to list every taxon of the group that was found; of any length"),
];

export const COVERAGE_TABLES: readonly PublishedTable[] = [
  {
    name: "square_effort",
    title: "Recording effort",
    description:
      "Records, visits to the whole group and taxa by square and period: read every species' squares beside it. A square without a row was not visited; that is no absence.",
    fields: [
      ...SQUARE,
      PERIOD,
      whole("records", "used records of any taxon, non-detections too"),
      whole(
        "visits",
        "visits: one place (a named site, a 1 km square, or a coarser square), one day, one recorder or party",
      ),
      ...LISTS,
      whole("taxa", "fewest taxa that explain the names recorded there"),
    ],
    primaryKey: ["grid", "square", "period"],
    foreignKeys: [SQUARE_KEY],
    query: `SELECT e.territory, e.grid, e.resolution_m, e.square, ${periodId("period")}, e.records, e.visits, e.visits_one_species, e.visits_two_or_three,
      e.visits_four_or_more, e.complete_lists, e.taxa FROM square_effort AS e ${ofPeriod("e")}`,
  },
  {
    name: "square_richness",
    title: "Taxa observed and expected in squares",
    description:
      "How many taxa the visits to a square named, and how many such visits can be expected to find there: a lower bound (Chao 1987, with visits as samples). Samples are visits of everyday recording and mass events; surveys for one taxon, museum and literature lots and records shown coarser are left out, so that observed may be below square_effort's taxa. Where a group and a member of it were recorded, the group is not counted. Below the number of visits asked for nothing is expected; such squares of 2 km have no row.",
    fields: [
      ...SQUARE,
      text("period", "identifier of the period; all for all dates together"),
      whole("visits", "samples: visits that named something there"),
      whole("observed", "taxa named on them"),
      whole("single_records", "of these, taxa with exactly one record"),
      number("expected", "expected number of taxa, one decimal; empty where not judged"),
      number("low", "lower end of its 95 % interval (log-normal); empty where the estimate adds nothing"),
      number("high", "upper end of its 95 % interval; empty where the estimate adds nothing"),
      number("completeness", "observed / expected, 0 to 1, three decimals; empty where not judged"),
      number(
        "sample_coverage",
        "share of incidences that the observed taxa make (Chao & Jost 2012), 0 to 1; empty where not judged",
      ),
      number(
        "expected_without_single_records",
        "expected number without the taxa of a single record, which misidentification makes most of; empty where not judged or none is left",
      ),
      number(
        "completeness_without_single_records",
        "completeness without them: (observed − single_records) / expected_without_single_records",
      ),
      yes("judged", "whether anything is expected"),
      text("reason", "why not; empty where it is"),
    ],
    primaryKey: ["grid", "square", "period"],
    foreignKeys: [SQUARE_KEY],
    query: `SELECT r.territory, r.grid, r.resolution_m, r.square, coalesce(p.id, 'all') AS period, r.visits, r.observed, r.single_records,
      round(r.expected, 1) AS expected, round(r.low, 1) AS low, round(r.high, 1) AS high, round(r.completeness, 3) AS completeness,
      round(r.sample_coverage, 3) AS sample_coverage, round(r.expected_without_single_records, 1) AS expected_without_single_records,
      round(r.completeness_without_single_records, 3) AS completeness_without_single_records, r.judged, r.reason
      FROM square_richness AS r LEFT JOIN periods AS p ON p.period = r.span`,
  },
  {
    name: "coverage_rules",
    title: "Squares covered under two rules",
    description:
      "How many squares on land are covered in the compared periods for a taxon that was never recorded there, under the rule in force and a stricter one. For one that was, its own records do not count and a little less is covered. A square that is not covered says nothing.",
    fields: [
      text("territory", "territory of the atlas; all for all of them"),
      whole("resolution_m", "side of the squares in metres: 10000 or 2000"),
      text("rule", "in force or stricter"),
      whole("minimum_visits", "visits that cover a square under the rule"),
      whole("squares", "squares on land; at 2 km those with a record of any date"),
      whole("covered_from", "covered in the earlier period; empty with one period"),
      whole("covered_to", "covered in the later period"),
      whole("covered_both", "covered in both; empty with one period"),
    ],
    primaryKey: ["territory", "resolution_m", "rule"],
    foreignKeys: [],
    query:
      "SELECT territory, resolution_m, rule, minimum_visits, squares, covered_from, covered_to, covered_both FROM coverage_rules",
  },
  {
    name: "period_effort",
    title: "Visits by period",
    description: "Visits to the whole group by period, by the length of their list, and how many name no recorder.",
    fields: [
      PERIOD,
      whole("visits", "visits"),
      whole("visits_without_recorder", "visits made of place and date alone, since their records name nobody"),
      ...LISTS,
    ],
    primaryKey: ["period"],
    foreignKeys: [],
    query: `SELECT ${periodId("period")}, e.visits, e.without_recorder AS visits_without_recorder, e.visits_one_species, e.visits_two_or_three,
      e.visits_four_or_more, e.complete_lists FROM period_effort AS e ${ofPeriod("e")}`,
  },
];
