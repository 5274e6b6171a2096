import { sqlBeside } from "../../engine/database.ts";
import { addFindings, type Check, type CheckContext } from "../check.ts";
import { gapBetween } from "../distance.ts";
import { dropTables } from "../drop-tables.ts";
import { otherReadings } from "../place-readings.ts";
import { sqlWith } from "../sql-with.ts";
import { laySlips } from "./slips.ts";

const PASSING_TABLES = [
  "day_places",
  "walked_places",
  "walkers",
  "keyed_places",
  "usual_places",
  "odd_places",
  "slips",
];

/** A place that is one slip away from where the record would be looked for. */
export const placeSlip: Check = {
  name: "place_slip",
  severity: "ask",
  asks: "Would the place, with two figures exchanged or the letters of another 100 km square, lie where the same recorder was that day, or where the locality's other records are?",
  find,
};

async function find(context: CheckContext): Promise<void> {
  const { together_m, usual_records, usual_share, most_places } = context.scheme.settings.checks.lists;
  await context.database.run(
    sqlWith(import.meta.url, "odd-places.sql", {
      gap: gapBetween("odd", "mate"),
      together_m,
      usual_records,
      usual_share,
      most_places,
    }),
  );
  await laySlips(context, "odd_places", otherReadings, together_m);
  await addFindings(context.database, placeSlip, sqlBeside(import.meta.url, "place-slip.sql"));
  await dropTables(context.database, PASSING_TABLES);
}
