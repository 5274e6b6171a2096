import type { WrittenDateRules } from "../../dates/date-part.ts";
import { monthOfWord } from "../../dates/date-words.ts";
import { readEventDate, trimBlank } from "../../dates/event-date.ts";
import { formatInterval, isDateRefusal } from "../../dates/interval.ts";
import { readWrittenDate } from "../../dates/written-date.ts";
import { isoInterval } from "./iso-text.ts";
import { lacks, proposes, type Response, unchanged } from "./response.ts";
import { integerIn, isEmpty, type StandardTest, standardTest } from "./standard-test.ts";

const TIME_OF_DAY = /\d[:h]\d\d|\d ?[ap]m\b/i;
const ORDINAL = /^(\d{1,2})(?:st|nd|rd|th)\.?$/i;
const YEAR_DAY_MONTH = /^(\d{4})([-/.])(\d{1,2})\2(\d{1,2})$/;

/** The amendments that put a date, a month or a day into its standard form. */
export const WRITTEN_AMENDMENTS: readonly StandardTest[] = [
  standardized("718dfc3c-cb52-4fca-b8e2-0e722f375da7", "AMENDMENT_EVENTDATE_STANDARDIZED", "eventDate", isoDate),
  standardized(
    "39bb2280-1215-447b-9221-fd13bc990641",
    "AMENDMENT_DATEIDENTIFIED_STANDARDIZED",
    "dateIdentified",
    isoDate,
  ),
  standardized("2e371d57-1eb3-4fe3-8a61-dff43ced50cf", "AMENDMENT_MONTH_STANDARDIZED", "month", (text) =>
    integerIn(text) === undefined
      ? numeralOf(monthOfWord(trimBlank(text).toLowerCase().replace(/\.$/, "")))
      : undefined,
  ),
  standardized("b129fa4d-b25b-43f7-9645-5ed4d44b357b", "AMENDMENT_DAY_STANDARDIZED", "day", (text) => {
    const day = Number(ORDINAL.exec(trimBlank(text))?.[1] ?? 0);
    return day >= 1 && day <= 31 ? String(day) : undefined;
  }),
];

function standardized(
  guid: string,
  label: string,
  term: string,
  standardForm: (text: string, rules: WrittenDateRules) => string | undefined,
): StandardTest {
  const run = (text: string, rules: WrittenDateRules): Response => {
    if (isEmpty(text)) return lacks(`${term} is empty`);
    const value = standardForm(text, rules);
    return value === undefined || value === text
      ? unchanged(`${term} is in its standard form, or cannot be told`)
      : proposes("AMENDED", { [term]: value }, `${term} in its standard form`);
  };
  return standardTest({
    guid,
    label,
    kind: "amendment",
    actsOn: [term],
    run: (record, { dates }) => run(record[term] ?? "", dates),
  });
}

/** Blanks are taken out of a date that is ISO 8601 but for them. Of other forms none is read that states a time: it would be lost. */
function isoDate(text: string, rules: WrittenDateRules): string | undefined {
  if (isoInterval(text) !== undefined) return undefined;
  const plain = trimBlank(text);
  if (!isDateRefusal(readEventDate(plain, { intervalEnd: "inclusive" }))) {
    const joined = plain.replaceAll(" ", "T");
    return isoInterval(joined) === undefined ? undefined : joined;
  }
  return TIME_OF_DAY.test(plain) ? undefined : writtenDate(plain, rules);
}

/**
 * ISO 8601 text of a date as people write it, or undefined where it is not plain: also for a season, of which the first
 * day is a convention, and for "before", which ISO 8601-1 cannot write.
 *
 * @example writtenDate("18/V/1981", { format: "iso" }) // "1981-05-18"
 */
export function writtenDate(text: string, rules: WrittenDateRules): string | undefined {
  const read = readWrittenDate(text, rules);
  const interval = isDateRefusal(read) ? readWrittenDate(monthLast(text), rules) : read;
  if (isDateRefusal(interval) || interval.openStart || interval.precision === "season") return undefined;
  const iso = formatInterval(interval);
  return isoInterval(iso) === undefined ? undefined : iso;
}

/** Year, day and month in that order are plain where the middle number can be no month: the order is then put right. */
function monthLast(text: string): string {
  const [, year, , day, month] = YEAR_DAY_MONTH.exec(text) ?? [];
  return Number(day) > 12 && Number(month) <= 12 ? `${year}-${month?.padStart(2, "0")}-${day}` : text;
}

function numeralOf(month: number | undefined): string | undefined {
  return month === undefined ? undefined : String(month);
}
