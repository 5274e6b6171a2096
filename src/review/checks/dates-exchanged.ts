import { sqlBeside } from "../../engine/database.ts";
import { addFindings, type Check, type CheckContext } from "../check.ts";
import { gapBetween } from "../distance.ts";
import { sqlWith } from "../sql-with.ts";

/** Day and month exchanged, as the row beside it tells. */
export const datesExchanged: Check = {
  name: "day_and_month_exchanged",
  severity: "ask",
  asks: "Does the row beside it, of the same recorder and place, have the same date with day and month exchanged?",
  find,
};

async function find({ database, scheme }: CheckContext): Promise<void> {
  const { together_m } = scheme.settings.checks.lists;
  await database.run(sqlBeside(import.meta.url, "list-neighbours.sql"));
  await addFindings(
    database,
    datesExchanged,
    sqlWith(import.meta.url, "dates-exchanged.sql", { gap: gapBetween("row", "mate"), together_m }),
  );
}
