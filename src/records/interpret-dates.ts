import { dayNumber } from "../dates/calendar.ts";
import { beginsBefore, EARLIEST_LIKELY_DAY, isBeyond, isDateRefusal } from "../dates/interval.ts";
import { type DateNote, readDate } from "../dates/read-date.ts";
import type { Database } from "../engine/database.ts";
import { type DatingRules, otherwiseOf, placedInTime } from "./date-in-time.ts";
import { NoteRows } from "./note-rows.ts";

export type { DatingRules } from "./date-in-time.ts";

const COLUMNS = {
  date_id: "integer",
  refused: "text",
  first_day: "integer",
  last_day: "integer",
  first_year: "integer",
  last_year: "integer",
  period: "integer",
  third: "integer",
  otherwise: "text",
} as const;

const COLUMN_FIELDS = ["year", "month", "day", "startDayOfYear", "endDayOfYear"] as const;
const FIELDS = ["eventDate", "year", "month", "day", "startDayOfYear", "endDayOfYear", "verbatimEventDate"] as const;

/** What each note on a date means, in words, and how much it matters. */
const NOTES: Record<
  Exclude<DateNote["code"], "interval_end">,
  { severity: "ask" | "note"; message: string; wayOut: string }
> = {
  event_date_not_read: {
    severity: "ask",
    message: "eventDate cannot be read; the other columns were used",
    wayOut: "correct eventDate",
  },
  event_date_not_iso: {
    severity: "note",
    message: "eventDate is not written year-month-day, and was read all the same",
    wayOut: "nothing to do",
  },
  columns_disagree: {
    severity: "ask",
    message: "eventDate and the other date columns disagree; eventDate was used",
    wayOut: "correct the wrong one",
  },
  columns_not_read: {
    severity: "note",
    message: "year, month and day cannot be read; eventDate was used",
    wayOut: "correct or empty them",
  },
  day_without_month: {
    severity: "ask",
    message: "a day without a month; the year alone was used",
    wayOut: "give the month",
  },
  zero_is_unknown: { severity: "note", message: "zero was taken as not known", wayOut: "leave it empty" },
  verbatim_disagrees: {
    severity: "ask",
    message: "the date and its verbatim text disagree; the date was used",
    wayOut: "correct the wrong one",
  },
  finer_than_verbatim: {
    severity: "ask",
    message: "the date is finer than its verbatim text",
    wayOut: "check whether the day was made up",
  },
};

/** Interprets every distinct date of `date_texts` once and fills the tables `dates` and `date_notes`. */
export async function interpretDates(database: Database, rulesOf: ReadonlyMap<string, DatingRules>): Promise<void> {
  const filler = await database.fill("dates", COLUMNS);
  const notes = await NoteRows.open(database, "date_notes", "date_id");
  await database.batches(
    `SELECT date_id, source, ${FIELDS.map((field) => `"${field}"`).join(", ")} FROM date_texts ORDER BY date_id`,
    (columns, size) => {
      const rows: Record<keyof typeof COLUMNS, (string | number | null)[]> = {
        date_id: [],
        refused: [],
        first_day: [],
        last_day: [],
        first_year: [],
        last_year: [],
        period: [],
        third: [],
        otherwise: [],
      };
      for (let index = 0; index < size; index += 1) {
        const rules = rulesOf.get(String(columns["source"]?.[index]));
        if (rules === undefined) continue;
        const id = Number(columns["date_id"]?.[index]);
        const fields = Object.fromEntries(FIELDS.map((field) => [field, String(columns[field]?.[index] ?? "").trim()]));
        const row = dateRow(id, fields, rules, notes);
        for (const name of Object.keys(COLUMNS) as (keyof typeof COLUMNS)[]) rows[name].push(row[name]);
      }
      filler.add(rows);
    },
  );
  filler.done();
  notes.done();
}

function dateRow(
  id: number,
  fields: Record<string, string>,
  rules: DatingRules,
  notes: NoteRows,
): Record<keyof typeof COLUMNS, string | number | null> {
  const nothing = {
    date_id: id,
    first_day: null,
    last_day: null,
    first_year: null,
    last_year: null,
    period: null,
    third: null,
    otherwise: null,
  };
  const { field, value } = spokenOf(fields);
  const read = readDate(fields, rules);
  if (isDateRefusal(read)) {
    const check = value === "" ? "date_empty" : "date_unreadable";
    notes.add(id, [{ check, severity: "ask", field, value, message: read.refused, wayOut: read.wayOut }]);
    return { ...nothing, refused: check };
  }
  notes.add(
    id,
    read.notes.flatMap(({ code, found }) =>
      code === "interval_end" ? [] : [{ check: `date_${code}`, field, value: found, ...NOTES[code] }],
    ),
  );
  const { interval } = read;
  if (isBeyond(interval, rules.lastDay)) {
    notes.add(id, [
      {
        check: "date_in_future",
        severity: "ask",
        field,
        value,
        message: "is after the date of this edition",
        wayOut: "correct the date, or the edition's",
      },
    ]);
    return { ...nothing, refused: "date_in_future" };
  }
  if (beginsBefore(interval, EARLIEST_LIKELY_DAY))
    notes.add(id, [
      {
        check: "date_very_early",
        severity: "ask",
        field,
        value,
        message: "is before 15 November 1582",
        wayOut: "check the year",
      },
    ]);
  return { ...nothing, refused: null, ...placedInTime(interval, rules), otherwise: otherwiseOf(read, rules) };
}

/** The field a date is read from, and its text; year, month and day are one text. */
function spokenOf(fields: Record<string, string>): { field: (typeof FIELDS)[number]; value: string } {
  const field = FIELDS.find((name) => fields[name] !== "") ?? "eventDate";
  const joined = field === "eventDate" || field === "verbatimEventDate" ? [field] : COLUMN_FIELDS;
  return {
    field,
    value: joined
      .map((name) => fields[name])
      .filter(Boolean)
      .join(" "),
  };
}

/** Day number of a settings date such as "2025-03-01". */
export function dayOf(date: string): number {
  const [year = 0, month = 1, day = 1] = date.split("-").map(Number);
  return dayNumber(year, month, day);
}
