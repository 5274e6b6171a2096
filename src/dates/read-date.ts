import { dayOfYear, yearMonthDay } from "./calendar.ts";
import { readDateColumns } from "./date-columns.ts";
import type { WrittenDateRules } from "./date-part.ts";
import { type IntervalEnd, readEventDate, trimBlank } from "./event-date.ts";
import {
  contains,
  type DateInterval,
  type DateRefusal,
  formatInterval,
  isDateRefusal,
  lengthInDays,
} from "./interval.ts";
import { readWrittenDate } from "./written-date.ts";

/** The date terms of a record as text, as they stand in the source; missing and empty mean the same. */
export interface DateFields {
  readonly eventDate?: string | undefined;
  readonly year?: string | undefined;
  readonly month?: string | undefined;
  readonly day?: string | undefined;
  readonly startDayOfYear?: string | undefined;
  readonly endDayOfYear?: string | undefined;
  readonly verbatimEventDate?: string | undefined;
}

/** What a source declares of its dates. */
export interface DateRules extends WrittenDateRules {
  readonly intervalEnd: IntervalEnd;
}

/**
 * Something to report of a date that was read.
 * - `event_date_not_read`: eventDate was refused and other terms were used
 * - `event_date_not_iso`: eventDate was read, but not as ISO 8601
 * - `columns_disagree`: year, month and day or the days of the year do not hold eventDate (TDWG draft test EVENT_CONSISTENT)
 * - `columns_not_read`: they cannot be read, and eventDate was used
 * - `day_without_month`, `zero_is_unknown`: part of the columns was left out
 * - `verbatim_disagrees`: the verbatim text names other days
 * - `finer_than_verbatim`: the verbatim text is vaguer than eventDate, as when a month became its first day
 * - `interval_end`: the other reading of the interval's end gives other days
 */
export interface DateNote {
  readonly code:
    | "event_date_not_read"
    | "event_date_not_iso"
    | "columns_disagree"
    | "columns_not_read"
    | "day_without_month"
    | "zero_is_unknown"
    | "verbatim_disagrees"
    | "finer_than_verbatim"
    | "interval_end";
  readonly found: string;
  /** With `interval_end`: the interval under the other reading. */
  readonly otherwise?: DateInterval;
}

/** A date as read, with what there is to report of it. */
export interface ReadDate {
  readonly interval: DateInterval;
  readonly notes: readonly DateNote[];
}

/**
 * Reads a record's date: eventDate first (ISO 8601, else as written under the source's format), then year with month
 * and day or days of the year, then the verbatim text. A term that is refused gives way to the next, with a note;
 * disagreement between terms is a note too, and the earlier term in this order counts. Dates in the future or before
 * 1582-11-15 are read like any other: see `isBeyond` and `beginsBefore`.
 *
 * @example readDate({ year: "2021", day: "29" }, { intervalEnd: "inclusive", format: "iso" }) // { interval: <2021>, notes: [{ code: "day_without_month", … }] }
 */
export function readDate(fields: DateFields, rules: DateRules): ReadDate | DateRefusal {
  const eventDate = trimBlank(fields.eventDate ?? "");
  const verbatim = trimBlank(fields.verbatimEventDate ?? "");
  const stated = eventDate === "" ? undefined : readStated(eventDate, rules);
  if (stated !== undefined && !isDateRefusal(stated)) {
    const { interval } = stated;
    const notes = [...compareColumns(interval, fields, rules), ...compareVerbatim(interval, verbatim, rules)];
    return { interval, notes: [...stated.notes, ...notes] };
  }
  const columns = readDateColumns(fields, rules);
  const notes: DateNote[] = stated === undefined ? [] : [{ code: "event_date_not_read", found: stated.refused }];
  if (columns !== undefined && !isDateRefusal(columns)) {
    return {
      interval: columns.interval,
      notes: [...notes, ...columns.notes, ...compareVerbatim(columns.interval, verbatim, rules)],
    };
  }
  if (columns !== undefined) return stated ?? columns;
  if (verbatim === "") return stated ?? { refused: "no date", wayOut: "give eventDate, or year, month and day" };
  const written = readWrittenDate(verbatim, rules);
  return isDateRefusal(written) ? (stated ?? written) : { interval: written, notes };
}

function readStated(eventDate: string, rules: DateRules): ReadDate | DateRefusal {
  const strict = readEventDate(eventDate, rules);
  // Full-width figures and spaces beside the slash change nothing of what an interval's end means.
  const iso = isDateRefusal(strict) ? readEventDate(plainInterval(eventDate), rules) : strict;
  if (!isDateRefusal(iso)) return { interval: iso, notes: noteIntervalEnd(eventDate, iso, rules.intervalEnd) };
  const written = readWrittenDate(eventDate, rules);
  if (!isDateRefusal(written)) {
    const notes: DateNote[] = rules.format === "iso" ? [{ code: "event_date_not_iso", found: eventDate }] : [];
    return { interval: written, notes };
  }
  return /^\d{4}-/.test(eventDate) ? iso : written;
}

function plainInterval(eventDate: string): string {
  return eventDate.normalize("NFKC").replaceAll(/ ?\/ ?/g, "/");
}

function noteIntervalEnd(eventDate: string, interval: DateInterval, intervalEnd: IntervalEnd): DateNote[] {
  if (!eventDate.includes("/")) return [];
  const other = readEventDate(plainInterval(eventDate), {
    intervalEnd: intervalEnd === "inclusive" ? "exclusive" : "inclusive",
  });
  if (isDateRefusal(other) || other.last === interval.last) return [];
  return [
    {
      code: "interval_end",
      found: `${eventDate} is read as ${formatInterval(interval)}, otherwise ${formatInterval(other)}`,
      otherwise: other,
    },
  ];
}

function compareColumns(interval: DateInterval, fields: DateFields, rules: DateRules): DateNote[] {
  const found = `eventDate says ${formatInterval(interval)}`;
  if (!daysOfYearFit(interval, fields)) {
    return [
      {
        code: "columns_disagree",
        found: `${found}, the days of the year ${fields.startDayOfYear || "?"} to ${fields.endDayOfYear || "?"}`,
      },
    ];
  }
  const columns = readDateColumns({ year: fields.year, month: fields.month, day: fields.day }, rules);
  if (columns === undefined) return [];
  if (isDateRefusal(columns)) return [{ code: "columns_not_read", found: columns.refused }];
  if (contains(columns.interval, interval)) return [];
  return [{ code: "columns_disagree", found: `${found}, the columns ${formatInterval(columns.interval)}` }];
}

/** Days of the year fit only an interval of days: against a month or a year they claim more than eventDate does. */
function daysOfYearFit(interval: DateInterval, { startDayOfYear, endDayOfYear }: DateFields): boolean {
  const [start, end] = [trimBlank(startDayOfYear ?? ""), trimBlank(endDayOfYear ?? "")];
  if (start === "" && end === "") return true;
  if (interval.openStart || (interval.precision !== "day" && interval.precision !== "range")) return false;
  return (
    (start === "" || Number(start) === dayOfYear(interval.first)) &&
    (end === "" || Number(end) === dayOfYear(interval.last))
  );
}

/** A two-digit year of the verbatim text is one of the date's own hundred years, where the source says nothing else. */
function compareVerbatim(interval: DateInterval, verbatim: string, rules: DateRules): DateNote[] {
  if (verbatim === "") return [];
  const { year } = yearMonthDay(interval.last);
  const pivot = year < 1900 ? undefined : Math.max(-1, year - 2000);
  const written = readWrittenDate(verbatim, pivot === undefined ? rules : { twoDigitPivot: pivot, ...rules });
  if (isDateRefusal(written)) return [];
  if (contains(interval, written)) return [];
  const found = `the date says ${formatInterval(interval)}, the verbatim text "${verbatim}" ${formatInterval(written)}`;
  if (!contains(written, interval)) return [{ code: "verbatim_disagrees", found }];
  return lengthInDays(written) > lengthInDays(interval) ? [{ code: "finer_than_verbatim", found }] : [];
}
