import { dayNumber, isLeapYear } from "./calendar.ts";
import { type DatePart, fullYear, type WrittenDateRules } from "./date-part.ts";
import { monthOfWord } from "./date-words.ts";
import { trimBlank } from "./event-date.ts";
import { between, type DateRefusal, isDateRefusal } from "./interval.ts";
import type { DateFields, DateNote, ReadDate } from "./read-date.ts";
import { intervalOfPart } from "./written-date.ts";

/** Characters no year, month or day has. */
const LONGEST = 30;

/**
 * Reads year, month and day, or year with the first and last day of the year. Undefined when all are empty. A month
 * may be a number, a Roman numeral or a name, a day may end in st, nd, rd or th. 0 stands for "not known" and a day
 * without a month is left out, both with a note; so is a first day of the year without a last.
 *
 * @example readDateColumns({ year: "2024", month: "2", day: "30" }, { format: "iso" }) // { refused: 'date of columns "2024" "2" "30" …', wayOut: … }
 */
export function readDateColumns(fields: DateFields, rules: WrittenDateRules): ReadDate | DateRefusal | undefined {
  const [year, month, day] = [fields.year, fields.month, fields.day].map((text) => trimBlank(text ?? "")) as [
    string,
    string,
    string,
  ];
  if (year === "" && month === "" && day === "") return undefined;
  const longest = Math.max(year.length, month.length, day.length);
  if (longest > LONGEST)
    return { refused: "year, month or day is too long to be one", wayOut: "look whether it belongs in another column" };
  const quoted = [year && `year "${year}"`, month && `month "${month}"`, day && `day "${day}"`]
    .filter(Boolean)
    .join(", ");
  const yearNumber = readYear(year, rules);
  if (isRefusal(yearNumber)) return { ...yearNumber, refused: `${quoted} ${yearNumber.refused}` };
  const monthNumber = readMonth(month, rules);
  if (monthNumber === undefined)
    return {
      refused: `${quoted} has no such month`,
      wayOut: "write the month as 1 to 12; with 13 or more, day and month may be exchanged",
    };
  const dayOfMonth = /^(\d{1,2})(st|nd|rd|th)?$/i.exec(day)?.[1];
  if (day !== "" && dayOfMonth === undefined)
    return { refused: `${quoted} has no such day`, wayOut: "write the day as 1 to 31, or leave it empty" };
  const byDays = monthNumber === 0 && day === "" ? readDaysOfYear(yearNumber, fields) : undefined;
  if (byDays !== undefined) return byDays;
  const { part, notes } = keepKnown(yearNumber, monthNumber, Number(dayOfMonth ?? 0), month, day);
  const interval = intervalOfPart(part);
  return isDateRefusal(interval) ? { ...interval, refused: `${quoted} ${interval.refused}` } : { interval, notes };
}

function readYear(text: string, { twoDigitPivot }: WrittenDateRules): number | DateRefusal {
  if (text === "") return { refused: "has no year", wayOut: "add the year" };
  if (/^[1-9]\d{3}(\.0)?$/.test(text)) return Number(text);
  if (/^\d{2}$/.test(text)) return fullYear(Number(text), twoDigitPivot);
  return { refused: "has no year of four digits", wayOut: "write the year in full" };
}

/** 0 when empty or zero, undefined when it is no month. */
function readMonth(text: string, { words }: WrittenDateRules): number | undefined {
  if (text === "") return 0;
  const number = /^\d{1,2}$/.test(text) ? Number(text) : monthOfWord(text.toLowerCase().replace(/\.$/, ""), words);
  return number !== undefined && number <= 12 ? number : undefined;
}

function keepKnown(
  year: number,
  month: number,
  day: number,
  monthText: string,
  dayText: string,
): { part: DatePart; notes: DateNote[] } {
  const notes: DateNote[] = [];
  const zeros = [
    monthText !== "" && month === 0 && `month "${monthText}"`,
    dayText !== "" && day === 0 && `day "${dayText}"`,
  ].filter(Boolean);
  if (zeros.length > 0) notes.push({ code: "zero_is_unknown", found: zeros.join(", ") });
  if (month === 0 && day > 0)
    notes.push({ code: "day_without_month", found: `day "${dayText}" of ${year} was left out` });
  if (month === 0) return { part: { year }, notes };
  return { part: day === 0 ? { year, month } : { year, month, day }, notes };
}

function readDaysOfYear(
  year: number,
  { startDayOfYear, endDayOfYear }: DateFields,
): ReadDate | DateRefusal | undefined {
  const [start, end] = [trimBlank(startDayOfYear ?? ""), trimBlank(endDayOfYear ?? "")];
  if (start === "" || end === "") return undefined;
  const [first, last] = [Number(start), Number(end)];
  const days = isLeapYear(year) ? 366 : 365;
  if (![first, last].every((day) => Number.isInteger(day) && day >= 1 && day <= days)) {
    return {
      refused: `days of the year "${start}" to "${end}" are not both 1 to ${days} in ${year}`,
      wayOut: "correct them, or give eventDate",
    };
  }
  if (last < first)
    return {
      refused: `days of the year "${start}" to "${end}" end before they begin`,
      wayOut: "give eventDate as an interval",
    };
  const newYear = dayNumber(year, 1, 1);
  const interval = between(newYear + first - 1, newYear + last - 1, first === last ? "day" : "range");
  return { interval, notes: [] };
}

function isRefusal(answer: number | DateRefusal): answer is DateRefusal {
  return typeof answer !== "number";
}
