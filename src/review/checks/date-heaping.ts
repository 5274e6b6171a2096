import { addFindings, type Check, type CheckContext } from "../check.ts";
import { sqlWith } from "../sql-with.ts";
import { FILLED_IN, heapedDays, layHeapedDays } from "./heaped-days.ts";

/** SQL for the month's name of a heaped day. */
export const MONTH_NAME = "strftime(CAST('2000-' || h.day AS DATE), '%B')";

/** A day of the year with far more lists of a source, year after year, than the days around it. */
export const dateHeaping: Check = {
  name: "date_heaping",
  severity: "ask",
  asks: "Has a source, year after year, far more lists on one day of the year than on the days around it, such as the first of a month? Sources of a declared survey or campaign are not asked.",
  find,
};

async function find(context: CheckContext): Promise<void> {
  const days = await heapedDays(context);
  await layHeapedDays(
    context,
    days.filter(({ day }) => !FILLED_IN.includes(day)),
  );
  await addFindings(context.database, dateHeaping, sqlWith(import.meta.url, "heaped-days.sql", { month: MONTH_NAME }));
}
