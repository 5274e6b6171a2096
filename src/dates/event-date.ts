import { dayNumber, daysInMonth, formatDay, isCalendarDate, isLeapYear } from "./calendar.ts";
import { type ClockTime, readClockTime } from "./clock-time.ts";
import { between, type DateInterval, type DatePrecision, type DateRefusal, isDateRefusal } from "./interval.ts";
import { dayOfIsoWeek, isoWeeksInYear } from "./iso-week.ts";

/**
 * What the end of an interval means. Darwin Core read "2007-11-13/15" as three days until June 2025 ("inclusive"),
 * and reads it as the two days before the 15th since ("exclusive"). Data are mostly written inclusively.
 */
export type IntervalEnd = "inclusive" | "exclusive";

/** One end of an interval as written: the days it names, and its clock time where it has one. */
interface Element {
  readonly first: number;
  readonly last: number;
  readonly precision: Exclude<DatePrecision, "before">;
  readonly time: ClockTime | undefined;
}

const ELEMENT_WAY_OUT =
  "write an ISO 8601 date such as 1998-07-12, 1998-07 or 1998, or declare the source's date_format";
const MONTH_OR_DAY_WAY_OUT = "correct the date, or leave out the part that is not known";
/** Characters no date or interval has. */
const LONGEST = 100;
const CALENDAR = /^(\d{4})(?:-(\d{2})(?:-(\d{2}))?)?$/;
const BASIC = /^(\d{4})(\d{2})(\d{2})$/;
const ORDINAL = /^(\d{4})-(\d{3})$/;
const WEEK = /^(\d{4})-W(\d{2})(?:-(\d))?$|^(\d{4})W(\d{2})(\d)?$/;

/**
 * Reads a Darwin Core eventDate: an ISO 8601-1 date (year, month, day, week, day of the year, basic form of a day),
 * with or without a time and zone, or an interval of two, the end abbreviated or not. Times are checked and set
 * aside: the local date as written counts. Characters up to U+0020 around the text are no part of it. Durations,
 * open ends, two-digit years and the year 0000 are refused. An exclusive end that would leave no day is read inclusively.
 * Source: Darwin Core term eventDate (tdwg/dwc, versions 2017-10-06 to 2026-05-26), ISO 8601-1:2019.
 *
 * @example readEventDate("2007-11-13/15", { intervalEnd: "inclusive" }) // { first: 13830, last: 13832, precision: "range", openStart: false }
 */
export function readEventDate(text: string, { intervalEnd }: { intervalEnd: IntervalEnd }): DateInterval | DateRefusal {
  const value = trimBlank(text);
  if (value === "") return { refused: "no date", wayOut: "give eventDate, or year, month and day" };
  if (value.length > LONGEST) return refuse(`${value.slice(0, LONGEST)}…`, "is too long to be one");
  const parts = value.split("/");
  if (parts.length === 1) return readSingle(value);
  const [startText = "", endText = ""] = parts;
  if (parts.length > 2) return refuse(value, "has more than one slash");
  if (startText === "" || endText === "" || startText === ".." || endText === "..") {
    return refuse(value, "has an end that is open", "give both ends of the interval");
  }
  if (/^P/i.test(startText) || /^P/i.test(endText))
    return refuse(value, "is a duration", "write both dates of the interval");
  return readInterval(value, startText, endText, intervalEnd);
}

/**
 * The text without the characters U+0000 to U+0020 at its ends: what the draft TDWG tests count as empty.
 *
 * @example trimBlank(" 1998\u0000") // "1998"
 */
export function trimBlank(text: string): string {
  let [from, to] = [0, text.length];
  while (from < to && text.charCodeAt(from) <= 0x20) from += 1;
  while (to > from && text.charCodeAt(to - 1) <= 0x20) to -= 1;
  return text.slice(from, to);
}

function readSingle(value: string): DateInterval | DateRefusal {
  const element = readElement(value);
  return isDateRefusal(element) ? element : between(element.first, element.last, element.precision);
}

function readInterval(
  value: string,
  startText: string,
  endText: string,
  intervalEnd: IntervalEnd,
): DateInterval | DateRefusal {
  const start = readElement(startText);
  if (isDateRefusal(start)) return start;
  const fullEnd = completeEnd(startText, endText);
  if (fullEnd === undefined)
    return refuse(value, `has an end "${endText}" that its beginning does not complete`, "write the end in full");
  const end = readElement(fullEnd);
  if (isDateRefusal(end)) return end;
  if (end.last < start.first || endsEarlierThatDay(start, end)) {
    return refuse(
      value,
      "ends before it begins",
      "write the earlier date first, and the end's own date where it is a later day",
    );
  }
  const last = lastDay(start, end, intervalEnd);
  if (last === start.first) return between(start.first, last, "day");
  return between(start.first, last, startText === fullEnd ? start.precision : "range");
}

function lastDay(start: Element, end: Element, intervalEnd: IntervalEnd): number {
  if (intervalEnd === "inclusive") return end.last;
  const exclusive = end.time !== undefined && end.time.minutes > 0 ? end.last : end.first - 1;
  return exclusive < start.first ? end.last : exclusive;
}

function endsEarlierThatDay(start: Element, end: Element): boolean {
  if (start.time === undefined || end.time === undefined || start.first !== end.first) return false;
  return start.time.zone === end.time.zone && end.time.minutes < start.time.minutes;
}

/** Fills an abbreviated end from the beginning: "15" after 2007-11-13 is 2007-11-15, "15:30" after …T13:00 the same day. */
function completeEnd(startText: string, endText: string): string | undefined {
  const [startDate = "", startTime] = splitTime(startText);
  const [endDate = "", endTime] = splitTime(endText);
  if (
    startTime !== undefined &&
    endTime === undefined &&
    /^\d{2}:?\d{2}/.test(endText) &&
    !/^\d{4}(-|$)/.test(endText)
  ) {
    return `${startDate}T${endText}`;
  }
  const date = completeDate(startDate, endDate);
  return date === undefined ? undefined : endTime === undefined ? date : `${date}T${endTime}`;
}

function completeDate(start: string, end: string): string | undefined {
  if (/^\d{4}/.test(end)) return end;
  const day = /^(\d{4}-)(\d{2}-)\d{2}$/.exec(start);
  if (day && /^\d{2}$/.test(end)) return `${day[1]}${day[2]}${end}`;
  if (day && /^\d{2}-\d{2}$/.test(end)) return `${day[1]}${end}`;
  if (/^\d{4}-\d{2}$/.test(start) && /^\d{2}$/.test(end)) return `${start.slice(0, 5)}${end}`;
  if (/^\d{4}-\d{3}$/.test(start) && /^\d{3}$/.test(end)) return `${start.slice(0, 5)}${end}`;
  if (/^\d{4}-W\d{2}(-\d)?$/.test(start) && /^W\d{2}(-\d)?$/.test(end)) return `${start.slice(0, 5)}${end}`;
  if (/^\d{4}-W\d{2}-\d$/.test(start) && /^\d$/.test(end)) return `${start.slice(0, 9)}${end}`;
  return undefined;
}

function splitTime(text: string): [date: string, time: string | undefined] {
  const at = text.search(/[T ]/);
  return at < 0 ? [text, undefined] : [text.slice(0, at), text.slice(at + 1)];
}

function readElement(text: string): Element | DateRefusal {
  const [dateText, timeText] = splitTime(text);
  const date = readDateText(dateText, text);
  if (isDateRefusal(date) || timeText === undefined) return date;
  if (date.precision !== "day") return refuse(text, "has a time without a day");
  const time = readClockTime(timeText);
  return time === undefined
    ? refuse(text, `has a time "${timeText}" that is not hours and minutes`)
    : { ...date, time };
}

function readDateText(text: string, whole: string): Element | DateRefusal {
  const calendar = CALENDAR.exec(text) ?? BASIC.exec(text);
  if (calendar) return readCalendarDate(calendar, whole);
  const ordinal = ORDINAL.exec(text);
  if (ordinal) return readOrdinal(Number(ordinal[1]), Number(ordinal[2]), whole);
  const week = WEEK.exec(text);
  if (week) return readWeek(Number(week[1] ?? week[4]), Number(week[2] ?? week[5]), week[3] ?? week[6], whole);
  return refuse(whole, "is not an ISO 8601 date");
}

function readCalendarDate([, yearText, monthText, dayText]: RegExpExecArray, whole: string): Element | DateRefusal {
  const [year, month, day] = [Number(yearText), Number(monthText), Number(dayText)];
  if (year === 0) return refuse(whole, "has the year 0000", "leave the date empty where none is known");
  if (monthText === undefined) return element(dayNumber(year, 1, 1), dayNumber(year, 12, 31), "year");
  if (month < 1 || month > 12) return refuse(whole, `has no month ${monthText}`, MONTH_OR_DAY_WAY_OUT);
  if (dayText === undefined)
    return element(dayNumber(year, month, 1), dayNumber(year, month, daysInMonth(year, month)), "month");
  if (!isCalendarDate(year, month, day)) {
    const monthEnd = formatDay(dayNumber(year, month, daysInMonth(year, month)));
    return refuse(whole, `has no day ${dayText}: the month ends with ${monthEnd}`, MONTH_OR_DAY_WAY_OUT);
  }
  return element(dayNumber(year, month, day), dayNumber(year, month, day), "day");
}

function readOrdinal(year: number, ordinal: number, whole: string): Element | DateRefusal {
  const days = isLeapYear(year) ? 366 : 365;
  if (year === 0 || ordinal < 1 || ordinal > days)
    return refuse(whole, `has no day ${ordinal} of ${days}`, MONTH_OR_DAY_WAY_OUT);
  const day = dayNumber(year, 1, 1) + ordinal - 1;
  return element(day, day, "day");
}

function readWeek(year: number, week: number, weekdayText: string | undefined, whole: string): Element | DateRefusal {
  if (year === 0) return refuse(whole, "has the year 0000", "leave the date empty where none is known");
  const first = dayOfIsoWeek(year, week, Number(weekdayText ?? 1));
  if (first === undefined) {
    return refuse(
      whole,
      `is not one of the ${isoWeeksInYear(year)} weeks of seven days of ${year}`,
      MONTH_OR_DAY_WAY_OUT,
    );
  }
  return weekdayText === undefined ? element(first, first + 6, "week") : element(first, first, "day");
}

function element(first: number, last: number, precision: Element["precision"]): Element {
  return { first, last, precision, time: undefined };
}

function refuse(value: string, found: string, wayOut: string = ELEMENT_WAY_OUT): DateRefusal {
  return { refused: `date "${value}" ${found}`, wayOut };
}
