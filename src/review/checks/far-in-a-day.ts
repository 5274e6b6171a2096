import { addFindings, type Check, type CheckContext } from "../check.ts";
import { gapBetween } from "../distance.ts";
import { sqlWith } from "../sql-with.ts";

/** One recorder on one day further apart than can be travelled. */
export const farInADay: Check = {
  name: "far_in_a_day",
  severity: "ask",
  asks: "Does one record of a recorder's day lie further from the others, which lie together, than a day's travel?",
  find,
};

async function find({ database, scheme }: CheckContext): Promise<void> {
  const { lists, travel } = scheme.settings.checks;
  await addFindings(
    database,
    farInADay,
    sqlWith(import.meta.url, "far-in-a-day.sql", {
      gap: gapBetween("odd", "mate"),
      far_m: travel.far_km * 1000,
      others: travel.others,
      most_places: lists.most_places,
    }),
  );
}
