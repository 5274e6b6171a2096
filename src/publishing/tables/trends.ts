/** How each taxon changes: squares compared, what each method says, series and spread. */
import { number, type PublishedTable, TAXON, TAXON_KEY, text, whole, year, yes } from "./fields.ts";

const METHOD = text(
  "method",
  "squares_compared: net change in comparable 10 km squares, % of the earlier period's, not corrected for effort; relative_change: squares against what the group leads to expect, in standard deviations (more or fewer than expected from the group as a whole); local_frequency: change of the time factor, %, at equal effort and season, against the mean of the group (more or fewer than expected from the group as a whole); reporting_rate: change of the share of complete lists that name it, %, at equal list length, season and place",
);
const PAIR = [
  text("from_period", "identifier of the earlier period"),
  text("to_period", "identifier of the later period"),
];
const BOUNDS = [
  number("low", "lower end of the 95 % interval; empty where there is none"),
  number("high", "upper end of the 95 % interval; empty where there is none"),
];

export const TRENDS_TABLES: readonly PublishedTable[] = [
  {
    name: "taxon_change_counts",
    title: "Squares compared between periods",
    description:
      "Squares of each taxon between each two periods, by what can be said of them, under two coverage rules. Only squares covered in both periods by records of other taxa are compared, from records that are established and of no provisional year. The comparison is not corrected for effort within those squares; a square without a record is no absence, and lost means not refound.",
    fields: [
      TAXON,
      ...PAIR,
      whole("minimum_visits", "the rule: visits with records of other taxa that make a square covered in a period"),
      whole("resolution_m", "side of the squares in metres: 10000 or 2000"),
      text("territory", "territory of the atlas; all for the whole of it"),
      whole("comparable", "retained + gained + lost"),
      whole("retained", "comparable squares with the taxon in both periods"),
      whole("gained", "comparable squares with it in the later period only"),
      whole("lost", "comparable squares with it in the earlier period only: not refound"),
      whole("net", "gained − lost"),
      number("net_percent", "net as % of retained + lost, one decimal; empty where not judged"),
      whole(
        "interval_low",
        "lower end of the exact 95 % interval of net (Clopper–Pearson on the share gained among squares that changed), in whole squares; empty where not judged",
      ),
      whole("interval_high", "upper end of the same interval"),
      number("turnover", "(gained + lost) / comparable, in %, one decimal; empty where not judged"),
      number("turnover_low", "lower end of its exact 95 % interval (Clopper–Pearson)"),
      number("turnover_high", "upper end of its exact 95 % interval"),
      whole("recorded_both_not_covered", "squares with it in both periods outside the rule: in no figure"),
      whole(
        "recorded_both_unsettled",
        "squares with it in both periods, in one of them only by records of a provisional year or not established: in no figure",
      ),
      whole("not_comparable_since", "squares with it in the later period only that say nothing of change"),
      whole("not_comparable_before", "squares with it in the earlier period only that say nothing of change"),
      whole("covered_both_no_record", "squares covered in both periods without a record of it of any date"),
      whole("covered_one_no_record", "squares covered in one period without a record of it"),
      whole("covered_neither", "squares covered in neither period without a record of it, unvisited land too"),
      yes("judged", "whether the figures are given"),
      text("reason", "why they are not; empty where they are"),
    ],
    primaryKey: ["taxon_id", "from_period", "to_period", "minimum_visits", "resolution_m", "territory"],
    foreignKeys: [TAXON_KEY],
    query: `SELECT c.taxon_id, p.id AS from_period, q.id AS to_period, c.minimum_visits, c.resolution_m, c.territory, f.comparable, c.retained, c.gained, c.lost,
      f.net, f.net_percent, f.interval_low, f.interval_high, f.turnover, f.turnover_low, f.turnover_high, c.recorded_both_not_covered, c.recorded_both_unsettled,
      c.not_comparable_since, c.not_comparable_before, c.covered_both_no_record, c.covered_one_no_record, c.covered_neither, f.judged, f.reason
      FROM change_counts AS c JOIN change_figures AS f USING (taxon_id, from_period, to_period, minimum_visits, resolution_m, territory)
      JOIN periods AS p ON p.period = c.from_period JOIN periods AS q ON q.period = c.to_period`,
  },
  {
    name: "trends",
    title: "What each method says of change",
    description:
      "One row a taxon, method, pair of periods and part of the evidence. A method that may not speak says why. Figures of different methods are in different units and answer different questions.",
    fields: [
      TAXON,
      METHOD,
      text(
        "evidence_set",
        "records it is told from. main: all that are established and of no provisional year; with_provisional_years: those years too; without_single_species_lists, without_targeted, without_mass_events, without_lots: main without visits that named one species, surveys for one species, mass events, specimens and literature; complete_lists: only lists declared complete",
      ),
      ...PAIR,
      whole(
        "n_from",
        "squares with the taxon in the earlier period: for local_frequency all of them, for the other methods those compared; for reporting_rate the complete lists compared in that period, whether they name it or not",
      ),
      whole("n_to", "the same in the later period"),
      whole(
        "n",
        "10 km squares the figure rests on: with the taxon in either period for squares_compared, with lists in both periods for reporting_rate, with the group for relative_change and local_frequency",
      ),
      number("estimate", "the figure, in the method's unit; empty where it is not judged"),
      ...BOUNDS,
      yes("judged", "whether the method speaks"),
      text("reason", 'why it does not, after "not applicable: "; empty where it does'),
    ],
    primaryKey: ["taxon_id", "method", "evidence_set", "from_period", "to_period"],
    foreignKeys: [TAXON_KEY],
    query: `SELECT t.taxon_id, t.method, t.evidence_set, p.id AS from_period, q.id AS to_period, t.n_from, t.n_to, t.n, round(t.estimate, 4) AS estimate, round(t.low, 4) AS low, round(t.high, 4) AS high, t.judged, t.reason
      FROM trends AS t JOIN periods AS p ON p.period = t.from_period JOIN periods AS q ON q.period = t.to_period`,
  },
  {
    name: "series",
    title: "Series by period or year",
    description:
      "Each method's figure by period or year, from the main part of the evidence. For squares_compared: the share of the 10 km squares covered in that period by records of other taxa that hold the taxon, in %, with the score interval (Wilson); it rises with effort. For local_frequency: the time factor at equal effort, in % of that of the earlier of the compared periods, which is 100 and has no interval.",
    fields: [
      TAXON,
      METHOD,
      text("unit", "period or year"),
      text("time", "identifier of the period, or the year"),
      whole("n", "squares or lists the point rests on"),
      number("estimate", "the figure; empty where there is none"),
      ...BOUNDS,
      yes("provisional", "whether it rests on years for which records still arrive"),
    ],
    primaryKey: ["taxon_id", "method", "unit", "time"],
    foreignKeys: [TAXON_KEY],
    query: `SELECT s.taxon_id, s.method, s.unit, CASE s.unit WHEN 'period' THEN p.id ELSE s.time::VARCHAR END AS time, s.n, round(s.estimate, 4) AS estimate, round(s.low, 4) AS low, round(s.high, 4) AS high, s.provisional
      FROM series AS s LEFT JOIN periods AS p ON s.unit = 'period' AND p.period = s.time`,
  },
  {
    name: "taxon_spread",
    title: "Spread over 10 km squares",
    description:
      "10 km squares in which each taxon was first recorded, by year, and all up to that year. Squares are never taken away again, so the total rises with recording alone. Only established records count; a record dated to several years counts at the last.",
    fields: [
      TAXON,
      year("year", "a year with new squares"),
      whole("squares_new", "10 km squares first recorded in that year"),
      whole("squares_total", "10 km squares recorded up to that year"),
      yes("provisional", "whether records of that year still arrive"),
    ],
    primaryKey: ["taxon_id", "year"],
    foreignKeys: [TAXON_KEY],
    query: "SELECT taxon_id, year, squares_new, squares_total, provisional FROM spread",
  },
];
