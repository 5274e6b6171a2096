import { sqlBeside } from "../../engine/database.ts";
import { addFindings, type Check, type CheckContext } from "../check.ts";
import { sqlWith } from "../sql-with.ts";
import { MONTH_NAME } from "./date-heaping.ts";
import { FILLED_IN, heapedDays, layHeapedDays } from "./heaped-days.ts";

/** A day that a form or a program writes where none is known. */
export const defaultDate: Check = {
  name: "default_date",
  severity: "ask",
  asks: "Has a source far more records on 1 January or 31 December than on the days around it, or is the date the first day of a spreadsheet's or program's calendar?",
  find,
};

async function find(context: CheckContext): Promise<void> {
  const days = await heapedDays(context);
  await layHeapedDays(
    context,
    days.filter(({ day }) => FILLED_IN.includes(day)),
  );
  await addFindings(context.database, defaultDate, sqlWith(import.meta.url, "heaped-days.sql", { month: MONTH_NAME }));
  await addFindings(context.database, defaultDate, sqlBeside(import.meta.url, "default-date.sql"));
}
