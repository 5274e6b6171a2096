import { sqlBeside } from "../../engine/database.ts";
import { addFindings, type Check, type CheckContext } from "../check.ts";

/** A record that was identified before it was made. */
export const recordedAfterIdentified: Check = {
  name: "recorded_after_identified",
  severity: "ask",
  asks: "Is the date of the identification, where it is written year first, before the record's own?",
  find,
};

function find({ database }: CheckContext): Promise<void> {
  return addFindings(database, recordedAfterIdentified, sqlBeside(import.meta.url, "recorded-after-identified.sql"));
}
