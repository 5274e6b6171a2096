import { dayOfYear, yearMonthDay } from "../../dates/calendar.ts";
import { readClockTime } from "../../dates/clock-time.ts";
import { readEventDate } from "../../dates/event-date.ts";
import { type DateInterval, isDateRefusal, yearOf } from "../../dates/interval.ts";

const SECONDS_IN_DAY = 86_400;
const SECONDS_IN_MINUTE = 60;

/** An interval with both ends, which is all that ISO 8601-1 can write. */
export type ClosedInterval = Extract<DateInterval, { openStart: false }>;

/**
 * Days of a text that is an ISO 8601 date or interval as it stands; undefined for any other, also for one that is only
 * wrapped in blanks or has a blank before its time. The end of an interval is inclusive, as in the draft tests' data.
 *
 * @example isoInterval("1880-05-08/10")?.precision // "range"
 */
export function isoInterval(text: string | undefined): ClosedInterval | undefined {
  if (text === undefined || /[\u0000-\u0020]/.test(text)) return undefined;
  const interval = readEventDate(text, { intervalEnd: "inclusive" });
  return isDateRefusal(interval) || interval.openStart ? undefined : interval;
}

/**
 * What an ISO 8601 text says in the terms year, month, day, startDayOfYear and endDayOfYear: each only where the text is
 * as precise and lies within one year, month or day. Days of the year need both ends stated to the day.
 *
 * @example eventParts("2007-03") // { year: "2007", month: "3" }
 */
export function eventParts(text: string): Readonly<Record<string, string>> {
  const interval = isoInterval(text);
  if (interval === undefined) return {};
  const [first, last] = [yearMonthDay(interval.first), yearMonthDay(interval.last)];
  const year = yearOf(interval);
  const isOneMonth = year !== undefined && first.month === last.month;
  return {
    ...(year === undefined ? {} : { year: String(year) }),
    ...(isOneMonth ? { month: String(first.month) } : {}),
    ...(interval.first === interval.last ? { day: String(first.day) } : {}),
    ...(isToTheDay(text)
      ? { startDayOfYear: String(dayOfYear(interval.first)), endDayOfYear: String(dayOfYear(interval.last)) }
      : {}),
  };
}

/** An abbreviated end, which is no date by itself, is as precise as its beginning. */
function isToTheDay(text: string): boolean {
  const [start, end] = text.split("/").map(isoInterval);
  return start?.precision === "day" && (end === undefined || end.precision === "day");
}

/**
 * Seconds an ISO 8601 text lasts, or undefined where it is none. Whole days unless both ends have a time of day; days
 * have 86,400 seconds and leap seconds are not counted. A single time lasts its day, since how long is not stated.
 *
 * @example durationInSeconds("1880-05-08/10") // 259200
 */
export function durationInSeconds(text: string | undefined): number | undefined {
  const interval = isoInterval(text);
  if (text === undefined || interval === undefined) return undefined;
  const [start = "", end = ""] = text.split("/");
  const [startTime, endTime] = [timeIn(start), timeIn(end)];
  if (startTime === undefined || endTime === undefined) return (interval.last - interval.first + 1) * SECONDS_IN_DAY;
  const from = startTime.minutes - zoneMinutes(startTime.zone || endTime.zone);
  const to = endTime.minutes - zoneMinutes(endTime.zone || startTime.zone);
  const days = interval.last - interval.first;
  return Math.max(0, Math.round(days * SECONDS_IN_DAY + (to - from) * SECONDS_IN_MINUTE));
}

/** An end may be a time alone, which its colon tells from a year. */
function timeIn(text: string): ReturnType<typeof readClockTime> {
  return /[T:]/.test(text) ? readClockTime(text.slice(text.indexOf("T") + 1)) : undefined;
}

function zoneMinutes(zone: string): number {
  const [, sign, hours, minutes] = /^([+-])(\d{2}):?(\d{2})?$/.exec(zone) ?? [];
  return hours === undefined ? 0 : (sign === "-" ? -1 : 1) * (Number(hours) * 60 + Number(minutes ?? 0));
}
