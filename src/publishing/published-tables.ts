/** The tables researchers download: their columns with type and meaning, and the query that fills each from the measures. */

export interface Field {
  name: string;
  type: "string" | "integer" | "number" | "boolean" | "year";
  description: string;
}

export interface PublishedTable {
  name: string;
  title: string;
  description: string;
  fields: Field[];
  primaryKey: string[];
  foreignKeys: { fields: string[]; table: string; to: string[] }[];
  /** Gives the fields in order, rows in any; `invented` is added by the writer. */
  query: string;
  /** Order of the rows, as SQL; by all fields where not given. */
  order?: string;
}

const text = (name: string, description: string): Field => ({ name, type: "string", description });
const whole = (name: string, description: string): Field => ({ name, type: "integer", description });
const number = (name: string, description: string): Field => ({ name, type: "number", description });
const year = (name: string, description: string): Field => ({ name, type: "year", description });
const yes = (name: string, description: string): Field => ({ name, type: "boolean", description });

const TAXON = text("taxon_id", "identifier of the taxon in the scheme's checklist");
const SQUARE = [
  text("territory", "territory of the atlas the square is counted in"),
  text("grid", "grid system: british, irish, channel-islands, laea or mgrs"),
  whole("resolution_m", "side of the square in metres: 10000 or 2000"),
  text("square", "reference of the square; NA… is a hectad, not a missing value"),
];
const PERIOD = text("period", "identifier of the period; outside for records inside no period");
const TAXON_KEY = { fields: ["taxon_id"], table: "taxa", to: ["taxon_id"] };
const SQUARE_KEY = { fields: ["grid", "square"], table: "squares", to: ["grid", "square"] };
const periodId = (column: string) => `coalesce(p.id, 'outside') AS ${column}`;
const ofPeriod = (table: string) => `LEFT JOIN periods AS p ON p.period = ${table}.period`;

export const PUBLISHED_TABLES: readonly PublishedTable[] = [
  {
    name: "taxa",
    title: "Species and groups",
    description:
      "The checklist of the atlas, with headline numbers. Records of a member count for every group above it.",
    fields: [
      TAXON,
      text("scientific_name", "accepted name without author"),
      text("authorship", "author and year of the name"),
      text("rank", "rank in the scheme's words"),
      text("vernacular_name", "name in the atlas's language"),
      text("within", "taxon_ids of the groups directly above, separated by a bar"),
      text(
        "generalised_to",
        "size its records are shown at on purpose: 2 km, 10 km or withheld; in part where only some are (see generalisations); none",
      ),
      whole("records", "used records"),
      whole("hectads", "10 km squares with a record of any date"),
      whole("tetrads", "2 km squares with a record of any date"),
      whole("visits", "visits with a record"),
      year("first_year", "earliest year of a record; a record known only to be before a year has that year"),
      year("last_year", "latest year of a record"),
    ],
    primaryKey: ["taxon_id"],
    foreignKeys: [],
    query: `SELECT n.taxon_id, n.scientific_name, n.authorship, n.rank, n.vernacular_name, n.within, n.generalised_to,
      coalesce(t.records, 0) AS records, coalesce(t.hectads, 0) AS hectads, coalesce(t.tetrads, 0) AS tetrads, coalesce(t.visits, 0) AS visits, t.first_year, t.last_year
      FROM taxon_names AS n LEFT JOIN taxon_totals AS t USING (taxon_id)`,
  },
  {
    name: "generalisations",
    title: "Records shown coarser than they are known",
    description:
      "Which records of which taxa are shown at 10 km or 2 km, or their places withheld, and why. Squares finer than that lack them on purpose: a blank there is no absence.",
    fields: [
      TAXON,
      text("generalised_to", "2 km, 10 km or withheld"),
      text("records", "which of its records, in words; all"),
      text("reason", "in the words of the scheme's list"),
      text("review_date", "day by which the scheme looks at it again"),
    ],
    primaryKey: ["taxon_id", "generalised_to", "records"],
    foreignKeys: [TAXON_KEY],
    query: "SELECT DISTINCT taxon_id, generalised_to, records, reason, review_date FROM listed_generalisations",
  },
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
      "State of each recorded square between the compared periods. Only squares covered in both by records of other taxa are retained, gained or lost; lost means not refound, never extinct.",
    fields: [
      TAXON,
      ...SQUARE,
      text("state", "retained, gained, lost, not_comparable_since or not_comparable_before"),
      yes("covered_before", "covered in the earlier period by records of other taxa"),
      yes("covered_since", "covered in the later period by records of other taxa"),
    ],
    primaryKey: ["taxon_id", "grid", "square"],
    foreignKeys: [TAXON_KEY, SQUARE_KEY],
    query:
      "SELECT taxon_id, territory, grid, resolution_m, square, state, covered_from AS covered_before, covered_to AS covered_since FROM square_states WHERE state IS NOT NULL",
  },
  {
    name: "square_effort",
    title: "Recording effort",
    description: "Records and visits to the whole group by square and period: read every species' squares beside it.",
    fields: [
      ...SQUARE,
      PERIOD,
      whole("records", "used records of any taxon, non-detections too"),
      whole("visits", "visits: one place, one day, one recorder or party"),
    ],
    primaryKey: ["grid", "square", "period"],
    foreignKeys: [SQUARE_KEY],
    query: `SELECT e.territory, e.grid, e.resolution_m, e.square, ${periodId("period")}, e.records, e.visits FROM square_effort AS e ${ofPeriod("e")}`,
  },
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
  {
    name: "accounting",
    title: "What became of each record",
    description: "Records read from each source, by status and reason. The rows of a source add up to what was read.",
    fields: [
      text("source", "identifier of the source"),
      text("status", "used, held or not used"),
      text("reason", "code of the reason"),
      text("reason_in_words", "the reason"),
      whole("records", "records"),
    ],
    primaryKey: ["source", "status", "reason"],
    foreignKeys: [],
    query: "SELECT source, status, reason, reason_in_words, records FROM accounting",
  },
];

/** A table by name; throws for a name that is not there, which is our bug. */
export function publishedTable(name: string): PublishedTable {
  const table = PUBLISHED_TABLES.find((one) => one.name === name);
  if (table === undefined) throw new Error(`no published table ${name}`);
  return table;
}
