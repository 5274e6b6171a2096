/** What is expected in 10 km squares and not yet found, and which squares want a visit. */
import { FURTHER_VISITS, LEAST_CHANCE } from "../../measures/neighbourhood/expected-taxa.ts";
import { LEAST_COVERED, REACH_KM } from "../../measures/neighbourhood/measure-neighbourhood.ts";
import { type PublishedTable, SQUARE_KEY, TAXON, TAXON_KEY, text, whole, year } from "./fields.ts";

const GRID = text("grid", "grid system: british, irish, channel-islands, laea or mgrs");
const HECTAD = text("square", "reference of the 10 km square; NA… is a hectad, not a missing value");

export const EXPECTED_TABLES: readonly PublishedTable[] = [
  {
    name: "expected_taxa",
    title: "Species expected in squares and not yet found",
    description: `Taxa that no record of the latest period has from a 10 km square, and that covered squares within ${REACH_KM} km have: where to look, and no prediction that they are there. It tells of squares like those around, not of habitat; a taxon without a row may be there too. Only squares with land in at least five of their 25 tetrads and ${LEAST_COVERED} covered squares around, and chances of at least ${LEAST_CHANCE} in 1,000; groups stand only where none of their members does. Made from the copy of the records in which sensitive ones are shown coarser.`,
    fields: [
      TAXON,
      GRID,
      HECTAD,
      whole(
        "chance",
        "of 1,000: chance that it is there, given the squares around and that visits here did not find it",
      ),
      whole(
        "share",
        "of 1,000: share of the covered squares around that have it, near ones counting more, drawn towards the atlas's",
      ),
      whole("frequency", "of 1,000: share of the visits to squares around that have it which recorded it"),
      whole("squares_near", `covered squares within ${REACH_KM} km, by records of other taxa, in the latest period`),
      whole("squares_with", "of these, squares with an established record of it in the latest period"),
      whole("visits_here", "everyday visits to the square in the latest period, none of which recorded it"),
      year("last_year", "latest year of a record in the square before that; empty where there is none"),
    ],
    primaryKey: ["taxon_id", "grid", "square"],
    foreignKeys: [TAXON_KEY, SQUARE_KEY],
    query:
      "SELECT taxon_id, grid, square, chance, share, frequency, squares_near, squares_with, visits_here, last_year FROM expected_taxa",
    order: "grid, square, taxon_id",
  },
  {
    name: "wanted_squares",
    title: "Squares that want a visit",
    description: `How many taxa ${FURTHER_VISITS} further visits could be expected to add to each 10 km square that has a row in expected_taxa: the sum of chance × (1 − (1 − frequency)^${FURTHER_VISITS}). A rank for planning: a square without a row may want a visit just as much, and no figure here says what lives there.`,
    fields: [
      GRID,
      HECTAD,
      whole("gain", "thousandths of a taxon"),
      whole(
        "best_third",
        "third of a month in which one visit would add most: 0 for 1–10 January to 35 for 21–31 December; empty where no season is known",
      ),
      whole("rank", "1 for the largest gain; equals in the order of grid and reference"),
    ],
    primaryKey: ["grid", "square"],
    foreignKeys: [SQUARE_KEY],
    query: "SELECT grid, square, gain, best_third, rank FROM wanted_squares",
    order: "rank",
  },
];
