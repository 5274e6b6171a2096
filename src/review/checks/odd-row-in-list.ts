import { sqlBeside } from "../../engine/database.ts";
import { addFindings, type Check, type CheckContext } from "../check.ts";
import { gapBetween } from "../distance.ts";
import { sqlWith } from "../sql-with.ts";

/** A row of a list that differs from its neighbours where they agree. */
export const oddRowInList: Check = {
  name: "odd_row_in_list",
  severity: "ask",
  asks: "Do the rows before and after agree on recorder, day and place, and does this row differ from both in its day or its place?",
  find,
};

async function find({ database, scheme }: CheckContext): Promise<void> {
  const { together_m, far_m, usual_records, usual_share } = scheme.settings.checks.lists;
  await database.run(sqlBeside(import.meta.url, "list-neighbours.sql"));
  await addFindings(
    database,
    oddRowInList,
    sqlWith(import.meta.url, "odd-row-in-list.sql", {
      gap_before: gapBetween("row", "before"),
      gap_after: gapBetween("row", "after"),
      gap_around: gapBetween("before", "after"),
      together_m,
      far_m,
      usual_records,
      usual_share,
    }),
  );
}
