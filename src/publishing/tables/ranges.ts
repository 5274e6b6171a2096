/** Area of occupancy and extent of occurrence. */
import { number, type PublishedTable, TAXON, TAXON_KEY, text, whole, yes } from "./fields.ts";

export const RANGES_TABLES: readonly PublishedTable[] = [
  {
    name: "taxon_ranges",
    title: "Area of occupancy and extent of occurrence",
    description:
      "Figures of the range of each taxon by period and territory, from established records, provisional years too. They are minimum figures made of records, and no assessment of a risk of extinction: a threshold of criterion B counts only together with two of three further conditions, and within one country under regional guidance. A figure over several territories is for one unit of assessment only where that unit is all of them. Not additive: territories and periods can share squares.",
    fields: [
      TAXON,
      text("territory", "territory of the atlas the records lie in; all for the whole of it"),
      text("period", "identifier of the period; all for every date"),
      text("grids", "grid systems of the squares, separated by a bar: squares are added, never laid over each other"),
      whole("records", "established records, of any precision"),
      whole("records_not_shown", "of these, records shown at 10 km or coarser on purpose"),
      whole("records_left_out", "records of vagrants and other not established ones, in none of these figures"),
      whole("tetrads", "occupied 2 km squares"),
      whole("hectads", "occupied 10 km squares"),
      whole("hectads_without_tetrad", "of these, squares in which no record reaches 2 km: in no area of occupancy"),
      number("occupancy_km2", "area of occupancy: 4 km² a 2 km square; empty where not given"),
      text("occupancy_reason", "why it is not; empty where it is"),
      whole(
        "occupancy_below_km2",
        "smallest threshold of criterion B2 (10, 500, 2000) it is strictly below; empty for none",
      ),
      number(
        "extent_km2",
        "extent of occurrence: area on the ellipsoid of the smallest convex polygon, its sides geodesics, round the corners of the occupied 2 km squares and of the 10 km squares in which no record reaches 2 km; one decimal; empty where not given",
      ),
      text("extent_reason", "why it is not; empty where it is"),
      yes("extent_raised", "the polygon was smaller than the area of occupancy, and the extent set equal to it"),
      whole(
        "extent_below_km2",
        "smallest threshold of criterion B1 (100, 5000, 20000) it is strictly below; empty for none",
      ),
    ],
    primaryKey: ["taxon_id", "territory", "period"],
    foreignKeys: [TAXON_KEY],
    query: `SELECT r.taxon_id, r.territory, coalesce(p.id, 'all') AS period, r.grids, r.records, r.held_back AS records_not_shown, r.left_out AS records_left_out,
      r.tetrads, r.hectads, r.hectads_without_tetrad, r.occupancy_km2, r.occupancy_reason, r.occupancy_below_km2, r.extent_km2, r.extent_reason, r.extent_raised, r.extent_below_km2
      FROM ranges AS r LEFT JOIN periods AS p USING (period)`,
  },
];
