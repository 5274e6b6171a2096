import { dayNumber, daysInMonth, isCalendarDate } from "./calendar.ts";
import { type DatePart, hasMonthInWords, readDatePart, type WrittenDateRules } from "./date-part.ts";
import { SEASON_START, seasonOfWord } from "./date-words.ts";
import { readEventDate } from "./event-date.ts";
import { between, type DateInterval, type DateRefusal, intervalOf, isDateRefusal, upTo } from "./interval.ts";

/** Day 0 of spreadsheets that count from 1900. The count has a 29 February 1900 that never was, so it holds from 61 on. */
const SPREADSHEET_ZERO = dayNumber(1899, 12, 30);
const FIRST_SERIAL = 61;
/** Characters no date has; what is longer is a remark in the wrong column. */
const LONGEST = 100;

const GENERAL_WAY_OUT = "write it as an ISO 8601 date or interval, such as 1998-07-12 or 1965/1985";
const DOUBT =
  /^(?:c|ca|circa|approx|approximately|about|abt|around|probably|prob|possibly|perhaps)\b|^~|[\p{L}\d]\s?\?$|^\[.*\]$/u;
/** An end such as "02-05" is a month and a day here, whatever the source's order. */
const ISO_INTERVAL = /^\d{4}-\d{2}-\d{2}\s?\/\s?[\d-]+$/;
const OPEN_END = /^(?:after|since|post|from|>)[\s-]*\d|^(?:after|since|post|from)\s/;
const BEFORE = /^(?:before |prior to |pre[\s-]?|<\s?)(?=\S)(.+)$/;
const UNTIL = /^(?:until |till |up to )(.+)$/;
const PART_OF = /^(?:early|mid|late|(?:beginning|start|middle|end) of(?: the)?)[\s-]+(.+)$/;
const DECADE = /^(?:the )?([1-9]\d{2}0)'?s$/;
const SEASON = /^(\p{L}+)[\s,]+([1-9]\d{3})(?:\s?[-/–]\s?(\d{2}|\d{4}))?$|^([1-9]\d{3})[\s,]+(\p{L}+)$/u;
const SHORT_YEARS = /^([1-9]\d{3})\s?[-–/]\s?(\d{2})$/;
const STRONG_MARK = / to | until | till | and |\s?[–&+]\s?| - /;
const WEAK_MARK = /[-/]/;

/**
 * Reads a date as people write it: numbers in the declared order (12/07/1998, 12.7.98), months in words or Roman
 * (3-Jun-2004, 18/V/1981, 9.ii-10.iii.2000), vague dates (1980s, June 1975, summer 1975, before 1950, 1965–1985,
 * XX DEC 1932). ISO 8601 is read too, its intervals inclusively. "Early", "mid" and "late" give the whole month,
 * year or decade. "Before" gives an interval open at the left. Refused, each with its way out: an order of day and
 * month that is not declared and not plain from the numbers, a two-digit year without a pivot, "c. 1920" and other
 * doubt, an open right end, "1900s" (decade or century), "winter 1975" (two winters), a five-digit number unless
 * the format is "spreadsheet". Times of day and weekdays are set aside unchecked.
 *
 * @example readWrittenDate("18/V/1981", { format: "iso" }) // { first: 4155, last: 4155, precision: "day", openStart: false }
 */
export function readWrittenDate(text: string, rules: WrittenDateRules): DateInterval | DateRefusal {
  const plain = text
    .slice(0, 10 * LONGEST)
    .normalize("NFKC")
    .replaceAll(/[—―‒]/g, "–")
    .replaceAll(/[’‘`]/g, "'")
    .replaceAll(/\s+/g, " ")
    .trim();
  if (plain === "") return { refused: "no date", wayOut: "give eventDate, or year, month and day" };
  if (plain.length > LONGEST)
    return { refused: `date "${plain.slice(0, LONGEST)}…" is too long to be one`, wayOut: GENERAL_WAY_OUT };
  const answer = readPlain(plain.toLowerCase(), rules) ?? unfit("is not a date in a form that is read");
  return isDateRefusal(answer) ? { ...answer, refused: `date "${plain}" ${answer.refused}` } : answer;
}

function readPlain(text: string, rules: WrittenDateRules): DateInterval | DateRefusal | undefined {
  if (/^\d{5}(\.\d+)?$/.test(text)) return readSerial(text, rules);
  if (/^[1-9]\d{3}/.test(text)) {
    const iso = readEventDate(text.toUpperCase(), { intervalEnd: "inclusive" });
    if (!isDateRefusal(iso)) return iso;
    if (ISO_INTERVAL.test(text)) return unfit("is no interval whose end can be told", "write both dates in full");
  }
  return readVague(text, rules) ?? readCalendarText(text, rules);
}

function readSerial(text: string, rules: WrittenDateRules): DateInterval | DateRefusal {
  if (rules.format !== "spreadsheet") {
    return unfit(
      "looks like the serial number of a spreadsheet's day",
      "if it is, set date_format of the source to spreadsheet",
    );
  }
  if (Number(text) < FIRST_SERIAL)
    return unfit("is a spreadsheet's day of early 1900, which is no record's", "correct the date");
  const day = SPREADSHEET_ZERO + Math.floor(Number(text));
  return between(day, day, "day");
}

function readVague(text: string, rules: WrittenDateRules): DateInterval | DateRefusal | undefined {
  if (DOUBT.test(text)) return unfit("does not say how far it may be off", "write its bounds, such as 1915/1925");
  const partOf = PART_OF.exec(text)?.[1];
  if (partOf !== undefined) return readPlain(partOf, rules);
  const before = BEFORE.exec(text)?.[1];
  if (before !== undefined) return openAtLeft(readPlain(before, rules), ({ first, last }) => (first ?? last) - 1);
  const until = UNTIL.exec(text)?.[1];
  if (until !== undefined) return openAtLeft(readPlain(until, rules), ({ last }) => last);
  const decade = DECADE.exec(text)?.[1];
  if (decade !== undefined) return readDecade(Number(decade));
  return readSeason(text, rules) ?? readShortYears(text);
}

function openAtLeft(
  bound: DateInterval | DateRefusal | undefined,
  lastOf: (bound: DateInterval) => number,
): DateInterval | DateRefusal | undefined {
  return bound === undefined || isDateRefusal(bound) ? bound : upTo(lastOf(bound));
}

function readDecade(year: number): DateInterval | DateRefusal {
  if (year % 100 === 0) {
    return unfit("may be ten years or a hundred", `write ${year}/${year + 9} or ${year}/${year + 99}`);
  }
  return between(dayNumber(year, 1, 1), dayNumber(year + 9, 12, 31), "decade");
}

function readSeason(text: string, rules: WrittenDateRules): DateInterval | DateRefusal | undefined {
  const match = SEASON.exec(text);
  const season = seasonOfWord(match?.[1] ?? match?.[5] ?? "", rules.words);
  if (match === null || season === undefined) return undefined;
  const year = Number(match[2] ?? match[4]);
  const nextYear = match[3];
  if (season === "winter") {
    const follows =
      nextYear !== undefined && Number(nextYear) === (nextYear.length === 2 ? (year + 1) % 100 : year + 1);
    if (follows) return between(dayNumber(year, 12, 1), dayNumber(year + 1, 3, 1) - 1, "season");
    return unfit("does not say which winter", `write winter ${year - 1}/${year} or winter ${year}/${year + 1}`);
  }
  if (nextYear !== undefined) return undefined;
  const start = SEASON_START[season];
  return between(dayNumber(year, start, 1), dayNumber(year, start + 2, daysInMonth(year, start + 2)), "season");
}

/** "1965–85". With 12 or less ("2007/08") it may be a month. */
function readShortYears(text: string): DateInterval | DateRefusal | undefined {
  const match = SHORT_YEARS.exec(text);
  if (match === null) return undefined;
  const [from, digits] = [Number(match[1]), Number(match[2])];
  if (digits <= 12) return unfit("may be a month or two years", "write the years in full, or the month as 2007-08");
  const to = from - (from % 100) + digits;
  if (to <= from) return unfit("ends before it begins", "write both years in full");
  return between(dayNumber(from, 1, 1), dayNumber(to, 12, 31), "range");
}

function readCalendarText(lower: string, rules: WrittenDateRules): DateInterval | DateRefusal | undefined {
  if (OPEN_END.test(lower) && !STRONG_MARK.test(lower))
    return unfit("is open at its end", "give both ends of the interval");
  const text = tidy(lower);
  const monthInWords = hasMonthInWords(text, rules.words);
  const single = readDatePart(text, rules, monthInWords, true);
  if (single !== undefined) return "refused" in single ? single : intervalOfPart(single);
  const refusals: DateRefusal[] = [];
  const intervals = new Map<string, DateInterval>();
  for (const [left, right] of splits(text)) {
    const answer = readRange(left, right, rules, monthInWords);
    if (answer === undefined) continue;
    if (isDateRefusal(answer)) refusals.push(answer);
    else intervals.set(`${answer.first}/${answer.last}`, answer);
  }
  if (intervals.size > 1) return unfit("can be read as more than one interval");
  return intervals.values().next().value ?? refusals[0];
}

/** Sets aside times of day, the words around a range, and the Chinese and Japanese marks of year, month and day. */
function tidy(text: string): string {
  return text
    .replaceAll(/[ t]?\d{1,2}:\d{2}(:\d{2})?\s?([ap]m)?/g, " ")
    .replace(/^(between|from) /, "")
    .replaceAll(/[年月]/g, "-")
    .replaceAll("日", "")
    .replaceAll(/\s+/g, " ")
    .trim();
}

function splits(text: string): [left: string, right: string][] {
  const strong = [...text.matchAll(new RegExp(STRONG_MARK, "g"))];
  const marks = strong.length > 0 ? strong : [...text.matchAll(new RegExp(WEAK_MARK, "g"))];
  return marks.map((mark) => [text.slice(0, mark.index), text.slice(mark.index + mark[0].length)]);
}

function readRange(
  leftText: string,
  rightText: string,
  rules: WrittenDateRules,
  monthInWords: boolean,
): DateInterval | DateRefusal | undefined {
  const left = readDatePart(leftText, rules, monthInWords, false);
  const right = readDatePart(rightText, rules, monthInWords, false);
  if (left === undefined || right === undefined) return undefined;
  if ("refused" in left) return left;
  if ("refused" in right) return right;
  if (left.day !== undefined && right.day === undefined) return undefined;
  if (left.month !== undefined && right.month === undefined && right.day === undefined) return undefined;
  // "July 1998-12" and "June-8 1998": what is finer on the right must say its own month and year.
  const isWhole = right.year !== undefined && right.month !== undefined;
  if (left.day === undefined && right.day !== undefined && !isWhole) return undefined;
  const from = intervalOfPart(lend(right, left));
  const to = intervalOfPart(lend(left, right));
  if (isDateRefusal(from)) return from;
  if (isDateRefusal(to)) return to;
  if (from.openStart || to.openStart || from.first > to.first) return unfit("ends before it begins");
  return between(from.first, to.last, from.first === to.last ? "day" : "range");
}

/** Fills what one side of a range leaves to the other: the year, and the month of a bare day. */
function lend(from: DatePart, to: DatePart): DatePart {
  const month = to.day !== undefined && to.month === undefined ? from.month : to.month;
  const year = to.year ?? from.year;
  return { ...to, ...(month === undefined ? {} : { month }), ...(year === undefined ? {} : { year }) };
}

/**
 * The interval of a date of which the year, and perhaps the month and the day, are stated. A refusal says what is
 * wrong without naming the date, so that the caller can put its own words before it.
 *
 * @example intervalOfPart({ month: 2, day: 30 }) // { refused: "has no year", wayOut: "add the year" }
 */
export function intervalOfPart({ year, month, day }: DatePart): DateInterval | DateRefusal {
  if (year === undefined) return unfit("has no year", "add the year");
  if (month === undefined)
    return day === undefined ? intervalOf(year) : unfit("has a day without a month", "add the month");
  if (month < 1 || month > 12)
    return unfit(`has no month ${month}`, "check the order of day and month: date_format of the source");
  if (day !== undefined && !isCalendarDate(year, month, day)) {
    return unfit(
      `names a day that does not exist: day ${day} of ${year}-${String(month).padStart(2, "0")}`,
      "correct the day, or leave it out",
    );
  }
  return intervalOf(year, month, day);
}

/** A refusal without the date's own text, which `readWrittenDate` puts before it. */
function unfit(found: string, wayOut: string = GENERAL_WAY_OUT): DateRefusal {
  return { refused: found, wayOut };
}
