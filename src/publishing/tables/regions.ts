/** Regions, their taxa, and what is in none. Written only where the scheme has regions. */
import { type PublishedTable, TAXON, TAXON_KEY, text, whole, year } from "./fields.ts";

const FIELD = text(
  "field",
  "the record's field that states such regions: its layer. Each layer holds every record once",
);
const REGION = text("region_id", "identifier of the region; not_assigned for records in none, or in one of several");
const NOT_ADDITIVE =
  "Counts of squares and taxa are not additive: a square can count in two regions where its records state them.";

export const REGIONS_TABLES: readonly PublishedTable[] = [
  {
    name: "regions",
    title: "Regions",
    description: `What was recorded in each region. A record's stated region beats its square, but of records shown coarser on purpose only the square that is shown counts. A record of a square that touches two regions, and states none, is not assigned. ${NOT_ADDITIVE}`,
    needs: "regions",
    fields: [
      FIELD,
      REGION,
      text("name", "its name"),
      text("code", "its number or code; empty for none"),
      text("region_territory", "territory of the atlas the scheme puts it in; empty for none"),
      whole("records", "used records; additive within a layer"),
      whole("records_stated", "of these, records that state the region"),
      whole("hectads", "10 km squares of its records"),
      whole("tetrads", "2 km squares of its records"),
      year("first_year", "earliest year of a record; a record known only to be before a year has that year"),
      year("last_year", "latest year of a record"),
      whole(
        "land_hectads_inside",
        "10 km squares with land that touch this region alone; 0 without a list of land squares",
      ),
      whole("land_hectads_boundary", "10 km squares with land that touch this region and another"),
    ],
    primaryKey: ["field", "region_id"],
    foreignKeys: [],
    query: `SELECT t.field, t.region_id, f.name, f.code, f.territory AS region_territory, t.records, t.records_stated, t.hectads, t.tetrads, t.first_year, t.last_year, t.land_hectads_inside, t.land_hectads_boundary
      FROM region_totals AS t JOIN region_facts AS f USING (field, region_id)`,
  },
  {
    name: "region_taxa",
    title: "Species of each region",
    description: `Records of each taxon by region. A taxon without a row was not recorded there, which is no absence: boundary squares are not assigned, and nobody looked everywhere. ${NOT_ADDITIVE}`,
    needs: "regions",
    fields: [
      FIELD,
      REGION,
      TAXON,
      whole("records", "used records; additive within a layer, but not over groups and their members"),
      whole("hectads", "10 km squares of these records"),
      whole("tetrads", "2 km squares of these records"),
      year("first_year", "earliest year of a record; a record known only to be before a year has that year"),
      year("last_year", "latest year of a record"),
    ],
    primaryKey: ["field", "region_id", "taxon_id"],
    foreignKeys: [TAXON_KEY, { fields: ["field", "region_id"], table: "regions", to: ["field", "region_id"] }],
    query: "SELECT field, region_id, taxon_id, records, hectads, tetrads, first_year, last_year FROM region_taxa",
  },
  {
    name: "region_bases",
    title: "How records came to a region",
    description: "Used records by what puts them in a region, or keeps them from one. The rows of a layer add up.",
    needs: "regions",
    fields: [
      FIELD,
      text(
        "basis",
        "stated: the record states it; square: its finest square touches one region only; boundary: that square touches several; outside: it touches none; no_square: the record fills no square",
      ),
      whole("records", "used records"),
    ],
    primaryKey: ["field", "basis"],
    foreignKeys: [],
    query: "SELECT field, basis, records FROM region_bases",
  },
];
