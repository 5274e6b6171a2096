/** Flight periods and years. */
import { number, type PublishedTable, TAXON, TAXON_KEY, text, whole, year, yes } from "./fields.ts";

const CASTE = text(
  "caste",
  "caste, sex or stage; not_stated where the record says nothing, all for every caste together",
);

export const SEASONS_TABLES: readonly PublishedTable[] = [
  {
    name: "taxon_seasons",
    title: "Flight periods",
    description:
      "Records and visits by caste and third of the month (1–10, 11–20, 21 to the end). Records whose date does not lie in one third are left out, and so are specimens, literature and finds of nests. The share is one of visits on which something of the group was seen, not of numbers of animals.",
    fields: [
      TAXON,
      text("caste", "caste, sex or stage; not_stated where the record says nothing"),
      whole("month", "1 to 12"),
      whole("third", "1: days 1–10, 2: 11–20, 3: 21 to the end"),
      whole("records", "used records"),
      whole("visits", "visits with such a record"),
      whole("visits_group", "visits to the whole group in that third of the month"),
      number("share", "visits / visits_group; empty where visits_group is below the setting season.minimum_visits"),
      number("share_low", "lower end of its 95 % interval (Wilson)"),
      number("share_high", "upper end"),
    ],
    primaryKey: ["taxon_id", "caste", "month", "third"],
    foreignKeys: [TAXON_KEY],
    query: `SELECT s.taxon_id, s.caste, (s.third // 3 + 1)::INTEGER AS month, (s.third % 3 + 1)::INTEGER AS third, s.records, s.visits, coalesce(e.visits, 0) AS visits_group,
        round(h.share, 6) AS share, round(h.low, 6) AS share_low, round(h.high, 6) AS share_high
      FROM taxon_season AS s
      LEFT JOIN season_effort AS e ON e.third = s.third
      LEFT JOIN season_shares AS h ON h.taxon_id = s.taxon_id AND h.caste = s.caste AND h.third = s.third`,
  },
  {
    name: "season_dates",
    title: "Dates of the season",
    description:
      "Days of the year by which shares of the records or visits had been made (quantiles of type 8), by caste, territory and period. Only records dated to one day count; specimens, literature and finds of nests do not. Days count from 1 January, 1 to 365, 29 February with the 28th; above 365 they lie in the next year. There is no earliest date, for it moves with the number of records. Rows are not additive.",
    fields: [
      TAXON,
      CASTE,
      text("territory", "territory of the atlas; all for the whole of it"),
      text("period", "identifier of the period; all for every date"),
      text(
        "basis",
        "records; visits, each once; even_visits, weighed by the visits made to anything of the group in their third of a month, as though every day of the year had been visited equally often",
      ),
      whole("n", "records or visits the dates rest on"),
      whole("left_out_vague", "records left out because their date is not one day"),
      whole("left_out_no_season", "specimens, literature and finds of nests left out"),
      ...[10, 25, 50, 75, 90].map((share) =>
        number(`day_${share}`, `day by which ${share} % had been made; empty where not given`),
      ),
      number("median_low", "lower end of the 95 % interval of day_50, dates being the sampling unit"),
      number("median_high", "upper end"),
      yes("judged", "whether there was enough for the dates to be given"),
      text("reason", "why they are not"),
    ],
    primaryKey: ["taxon_id", "caste", "territory", "period", "basis"],
    foreignKeys: [TAXON_KEY],
    query: `SELECT taxon_id, caste, territory, period, basis, n, vague AS left_out_vague, of_no_season AS left_out_no_season,
        round(day_10, 2) AS day_10, round(day_25, 2) AS day_25, round(day_50, 2) AS day_50, round(day_75, 2) AS day_75, round(day_90, 2) AS day_90,
        round(median_low, 2) AS median_low, round(median_high, 2) AS median_high, judged, reason
      FROM season_figures`,
  },
  {
    name: "season_shifts",
    title: "Shift of the season",
    description:
      "How many days a decade the season moved, from everyday recording of settled years. Adjusted rows allow for latitude, territory, caste and when in the year people went recording; rows that are not adjusted move with all of these.",
    fields: [
      TAXON,
      text("caste", "caste, sex or stage; all for castes together"),
      text(
        "method",
        "yearly_medians: median slope (Theil–Sen) through the medians of the years; regression: quantile regression of the day on the year",
      ),
      number("share", "share of the visits whose date is followed; 0.5 for the median"),
      yes("adjusted", "whether latitude, territory, caste and the season of recording are allowed for"),
      year("first_year", "first year it rests on; empty where none does"),
      year("last_year", "last year"),
      whole("years", "years with visits enough"),
      whole("n", "visits it rests on"),
      number("shift", "days a decade, below 0 for earlier; empty where not judged"),
      number("low", "lower end of its 95 % interval, years being the sampling unit"),
      number("high", "upper end"),
      yes("judged", "whether the method speaks"),
      text("reason", "why it does not"),
    ],
    primaryKey: ["taxon_id", "caste", "method", "share", "adjusted"],
    foreignKeys: [TAXON_KEY],
    query: `SELECT taxon_id, caste, method, share, adjusted, first_year, last_year, years, n,
        round(shift, 3) AS shift, round(low, 3) AS low, round(high, 3) AS high, judged, reason
      FROM season_shifts`,
  },
  {
    name: "taxon_years",
    title: "Records by year",
    description: "Records and visits of each taxon by year, beside visits to the whole group.",
    fields: [
      TAXON,
      year("year", "calendar year"),
      whole("records", "used records"),
      whole("visits", "visits with a record"),
      whole("visits_group", "visits to the whole group that year"),
    ],
    primaryKey: ["taxon_id", "year"],
    foreignKeys: [TAXON_KEY],
    query:
      "SELECT y.taxon_id, y.year, y.records, y.visits, coalesce(e.visits, 0) AS visits_group FROM taxon_years AS y LEFT JOIN effort_years AS e USING (year)",
  },
];
