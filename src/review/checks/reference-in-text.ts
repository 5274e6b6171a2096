import { sqlText } from "../../engine/database.ts";
import { addFindings, type Check, type CheckContext } from "../check.ts";
import { sqlWith } from "../sql-with.ts";

/** One or two capital letters and an even number of figures, in one group or two alike, that stand by themselves. */
const REFERENCE =
  "(?:^|[^A-Za-z0-9])([A-Z]{1,2} ?(?:[0-9]{2} [0-9]{2}|[0-9]{3} [0-9]{3}|[0-9]{4} [0-9]{4}|[0-9]{2}[A-NP-Z]?|[0-9]{4}|[0-9]{6}|[0-9]{8}|[0-9]{10}))(?:$|[^A-Za-z0-9])";

/** A grid reference in free text where no place is given. */
export const referenceInText: Check = {
  name: "reference_in_text",
  severity: "ask",
  asks: "Is no place given, while locality or remarks hold what looks like a grid reference? It is never used as one.",
  find,
};

function find({ database }: CheckContext): Promise<void> {
  const query = sqlWith(import.meta.url, "reference-in-text.sql", { pattern: sqlText(REFERENCE) });
  return addFindings(database, referenceInText, query);
}
