/** The checklist, and what is shown coarser. */
import { type PublishedTable, TAXON, TAXON_KEY, text, whole, year } from "./fields.ts";

export const TAXA_TABLES: readonly PublishedTable[] = [
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
];
