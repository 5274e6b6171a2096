import { sqlBeside } from "../../engine/database.ts";
import { addFindings, type Check, type CheckContext } from "../check.ts";
import { gapBetween } from "../distance.ts";
import { dropTables } from "../drop-tables.ts";
import { projectionReadings } from "../place-readings.ts";
import { sqlWith } from "../sql-with.ts";
import { laySlips } from "./slips.ts";

/** How far apart two readings of one pair of numbers in different national systems lie at least, in metres: some 250 km. */
const FAR_M = 50_000;

/** Easting and northing that look like those of another coordinate system. */
export const projectionOffset: Check = {
  name: "projection_offset",
  severity: "ask",
  asks: "Do easting and northing, read in another national coordinate system, lie with the rows beside them that share recorder and locality or day?",
  find,
};

async function find(context: CheckContext): Promise<void> {
  await context.database.run(
    sqlWith(import.meta.url, "projection-mates.sql", { gap: gapBetween("odd", "mate"), far_m: FAR_M }),
  );
  await laySlips(context, "projection_mates", projectionReadings, context.scheme.settings.checks.lists.far_m);
  await addFindings(context.database, projectionOffset, sqlBeside(import.meta.url, "projection-offset.sql"));
  await dropTables(context.database, ["projection_mates", "slips"]);
}
