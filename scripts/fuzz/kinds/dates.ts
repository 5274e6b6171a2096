import { formatInterval, isDateRefusal } from "../../../src/dates/interval.ts";
import { type DateFields, type DateRules, readDate } from "../../../src/dates/read-date.ts";
import type { Random } from "../../demonstration/random.ts";
import { type Days, daysOf } from "../oracle/days.ts";
import { cased, spoilt, wide } from "../spoil.ts";
import type { Kind, Outcome } from "../trial.ts";
import { FORMS } from "./date-forms.ts";

interface DateCase {
  fields: DateFields;
  rules: DateRules;
  /** The days meant, "refused" where no careful reader gives any, "any" for a spoilt text. */
  expected: Days | "refused" | "any";
}

/** Date texts and date columns under every declaration a source can make. */
export const dates: Kind<DateCase> = { name: "dates", share: 0.28, draw, judge };

function draw(random: Random): DateCase {
  const rules: DateRules = {
    format: random.pick(["iso", "day-first", "month-first", "spreadsheet"] as const),
    intervalEnd: random.pick(["inclusive", "exclusive"] as const),
    ...(random.chance(0.5) ? { twoDigitPivot: random.whole(0, 99) } : {}),
  };
  if (random.chance(0.1)) return drawColumns(random, rules);
  if (random.chance(0.05)) return drawSerial(random, rules);
  const [text, days] = random.pick(FORMS)(random, rules);
  const isMarked = days?.first === 0 && days.last === 0;
  const way = random.whole(0, 9);
  if (way > 6 || isMarked) return { fields: { eventDate: spoilt(random, text) }, rules, expected: "any" };
  const written = way < 4 ? text : way === 4 ? wide(text) : way === 5 ? ` ${text}\u0000 ` : cased(random, text);
  return { fields: { eventDate: written }, rules, expected: days ?? "refused" };
}

function drawColumns(random: Random, rules: DateRules): DateCase {
  const [y, m, d] = [random.whole(1000, 2100), random.whole(0, 14), random.whole(0, 32)];
  const expected = m === 0 ? daysOf(y) : d === 0 ? daysOf(y, m) : daysOf(y, m, d);
  const asText = (number: number) => random.pick([String(number), ` ${number} `, String(number).padStart(2, "0")]);
  const fields = { year: String(y), month: asText(m), day: asText(d) };
  return {
    fields,
    rules,
    expected: (d > 31 ? undefined : expected) ?? (m === 0 && d <= 99 ? (daysOf(y) as Days) : "refused"),
  };
}

/** Days counted from 1899-12-30 by spreadsheets, right from 1 March 1900 on. */
function drawSerial(random: Random, rules: DateRules): DateCase {
  const serial = random.whole(0, 99_999);
  const day = Date.UTC(1899, 11, 30) / 86_400_000 + serial;
  const text = String(serial).padStart(5, "0") + random.pick(["", ".0", ".75"]);
  const isRead = rules.format === "spreadsheet" && serial >= 61;
  return { fields: { eventDate: text }, rules, expected: isRead ? { first: day, last: day } : "refused" };
}

function judge({ fields, rules, expected }: DateCase): Outcome {
  const answer = readDate(fields, rules);
  if (isDateRefusal(answer)) {
    if (answer.refused.length > 600) return { answer: "refused", wrong: "the refusal quotes a text of any length" };
    return typeof expected === "string" ? { answer: "refused" } : { answer: "refused", wrong: answer.refused };
  }
  const { interval } = answer;
  const found = formatInterval(interval);
  if (expected === "any") return judgeSpoilt(fields, rules, found, interval.first, interval.last);
  const isRight = expected !== "refused" && interval.first === expected.first && interval.last === expected.last;
  return isRight
    ? { answer: "accepted" }
    : { answer: "accepted", wrong: `read as ${found}, not ${JSON.stringify(expected)}` };
}

/** Of a spoilt text all that can be said is that its days lie near a year that stands in it, in figures of any kind. */
function judgeSpoilt(
  { eventDate = "" }: DateFields,
  { format }: DateRules,
  found: string,
  first: number | null,
  last: number,
): Outcome {
  if (format === "spreadsheet" && /^\d{5}(\.\d*)?$/.test(eventDate.normalize("NFKC").replaceAll(/[\s\0]/g, "")))
    return { answer: "accepted" };
  const figures = eventDate.normalize("NFKC");
  const years = [...figures.matchAll(/(?=(\d{4}))/g)].map(([, year]) => Number(year));
  const [from, to] = [first ?? last, last].map((day) => new Date(day * 86_400_000).getUTCFullYear()) as [
    number,
    number,
  ];
  const isNear = years.some((year) => from <= year + 1 && to >= year - 1);
  const isShort = /\d{2}/.test(figures) && from >= 1900 && to <= 2099;
  return isNear || isShort ? { answer: "accepted" } : { answer: "accepted", wrong: `read as ${found}` };
}
