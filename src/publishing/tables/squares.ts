/** Squares, their taxa and change. */
import {
  number,
  ofPeriod,
  PERIOD,
  type PublishedTable,
  periodId,
  SQUARE,
  SQUARE_KEY,
  TAXON,
  TAXON_KEY,
  text,
  whole,
  year,
  yes,
} from "./fields.ts";

export const SQUARES_TABLES: readonly PublishedTable[] = [
  {
    name: "squares",
    title: "Squares",
    description: "Every square that has records, and every 10 km square with land where the scheme has a list of them.",
    fields: [
      ...SQUARE,
      text("crs", "coordinate system of easting and northing"),
      whole("easting_sw", "easting of the south-west corner in metres"),
      whole("northing_sw", "northing of the south-west corner in metres"),
      number("centre_latitude", "WGS84 latitude of the centre in degrees"),
      number("centre_longitude", "WGS84 longitude of the centre in degrees"),
      yes("on_land", "in the scheme's list of squares with land; true without such a list"),
    ],
    primaryKey: ["grid", "square"],
    foreignKeys: [],
    query:
      "SELECT territory, grid, resolution_m, square, crs, easting AS easting_sw, northing AS northing_sw, round(latitude, 6) AS centre_latitude, round(longitude, 6) AS centre_longitude, on_land FROM square_places",
    order: "resolution_m DESC, grid, square",
  },
  {
    name: "taxon_squares",
    title: "Squares of each species",
    description:
      "Records and visits of each taxon by square and period. A blank square is not an absence: see square_effort.",
    fields: [
      TAXON,
      ...SQUARE,
      PERIOD,
      whole("records", "used records"),
      whole("visits", "visits with a record; a record whose date spans days makes none"),
      year(
        "first_year",
        "earliest year of a record in the period; a record known only to be before a year has that year",
      ),
      year("last_year", "latest year of a record in the period"),
    ],
    primaryKey: ["taxon_id", "grid", "square", "period"],
    foreignKeys: [TAXON_KEY, SQUARE_KEY],
    query: `SELECT t.taxon_id, t.territory, t.grid, t.resolution_m, t.square, ${periodId("period")}, t.records, t.visits, t.first_year, t.last_year
      FROM taxon_squares AS t ${ofPeriod("t")}`,
  },
  {
    name: "taxon_changes",
    title: "Change of each square",
    description:
      "State of each recorded square between the periods of the maps. Only squares covered in both by records of other taxa are gained or lost, by records that are established and of no provisional year; retained squares are shown whatever the rule, and compared says which are in the figures. Lost means not refound, never extinct.",
    fields: [
      TAXON,
      ...SQUARE,
      text("state", "retained, gained, lost, not_comparable_since or not_comparable_before"),
      yes("covered_before", "covered in the earlier period by records of other taxa"),
      yes("covered_since", "covered in the later period by records of other taxa"),
      yes("compared", "one of the comparable squares that figures of change rest on"),
    ],
    primaryKey: ["taxon_id", "grid", "square"],
    foreignKeys: [TAXON_KEY, SQUARE_KEY],
    query: `SELECT taxon_id, territory, grid, resolution_m, square, state, covered_from AS covered_before, covered_to AS covered_since,
      covered_from AND covered_to AND (state IN ('gained', 'lost') OR (recorded_from AND recorded_to)) AS compared
      FROM square_states WHERE state IS NOT NULL`,
  },
];
