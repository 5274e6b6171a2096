/** Flight periods and years. */
import { type PublishedTable, TAXON, TAXON_KEY, text, whole, year } from "./fields.ts";

export const SEASONS_TABLES: readonly PublishedTable[] = [
  {
    name: "taxon_seasons",
    title: "Flight periods",
    description:
      "Records and visits by caste and third of the month (1–10, 11–20, 21 to the end). Records whose date does not lie in one third are left out.",
    fields: [
      TAXON,
      text("caste", "caste, sex or stage; not_stated where the record says nothing"),
      whole("month", "1 to 12"),
      whole("third", "1: days 1–10, 2: 11–20, 3: 21 to the end"),
      whole("records", "used records"),
      whole("visits", "visits with such a record"),
      whole("visits_group", "visits to the whole group in that third of the month"),
    ],
    primaryKey: ["taxon_id", "caste", "month", "third"],
    foreignKeys: [TAXON_KEY],
    query: `SELECT s.taxon_id, s.caste, (s.third // 3 + 1)::INTEGER AS month, (s.third % 3 + 1)::INTEGER AS third, s.records, s.visits, coalesce(e.visits, 0) AS visits_group
      FROM taxon_season AS s LEFT JOIN season_effort AS e USING (third)`,
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
