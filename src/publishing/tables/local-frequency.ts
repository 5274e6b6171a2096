/** Local frequencies as published by their author: recording effort of squares, time factors of taxa. */
import { number, ofPeriod, PERIOD, type PublishedTable, SQUARE_KEY, TAXON, TAXON_KEY, text, whole } from "./fields.ts";

const CAUTION =
  "From established records of no provisional year. Effort here is the share of benchmark taxa recorded, which cannot exceed 1 while other taxa go on being found: time factors rise with recording, and trends are therefore told at equal effort instead (table trends, method local_frequency).";

export const LOCAL_FREQUENCY_TABLES: readonly PublishedTable[] = [
  {
    name: "square_recording_effort",
    title: "Recording effort of 10 km squares",
    description: `How well each 10 km square and its neighbourhood are recorded, by local frequencies (Hill 2012, Methods in Ecology and Evolution 3: 195–205). ${CAUTION}`,
    fields: [
      text("grid", "grid system: british, irish, channel-islands, laea or mgrs"),
      text("square", "reference of the square; NA… is a hectad, not a missing value"),
      PERIOD,
      number(
        "neighbourhood_frequency",
        "mean frequency of the taxa of the neighbourhood weighted by frequency, 0 to 1, from all periods; higher where recording is thorough",
      ),
      number(
        "effort_multiplier",
        "how many times the recording there was the neighbourhood would need to be well recorded, above 0; from all periods",
      ),
      number("benchmark_share", "share of the square's benchmark taxa recorded there in the period, 0 to 1"),
    ],
    needs: "large group",
    primaryKey: ["grid", "square", "period"],
    foreignKeys: [SQUARE_KEY],
    query: `SELECT e.grid, e.square, p.id AS period, e.neighbourhood_frequency, e.effort_multiplier, e.benchmark_share
      FROM square_recording_effort AS e ${ofPeriod("e")}`,
  },
  {
    name: "taxon_time_factors",
    title: "Time factors by period",
    description: `How the frequency of each taxon in each period stands to that expected of the neighbourhoods of squares, by local frequencies (Hill 2012, Methods in Ecology and Evolution 3: 195–205). ${CAUTION}`,
    fields: [
      TAXON,
      PERIOD,
      whole("squares", "10 km squares with the taxon in the period, of those with a benchmark taxon recorded"),
      number("time_factor", "1 where as frequent as expected; empty where recorded in every square that could tell"),
      number(
        "time_factor_se",
        "its standard error by the delta method, effort taken as known, which is too small; empty where the factor is 0 or empty",
      ),
    ],
    needs: "large group",
    primaryKey: ["taxon_id", "period"],
    foreignKeys: [TAXON_KEY],
    query: `SELECT f.taxon_id, p.id AS period, f.squares, f.time_factor, f.time_factor_se
      FROM taxon_time_factors AS f ${ofPeriod("f")}`,
  },
];
