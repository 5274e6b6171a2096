import type { SeasonDatesRow, SeasonShiftRow } from "../../../publishing/contracts.ts";
import { language, say } from "../../words/say.ts";
import type { Sentence } from "../text/sentences.ts";
import { capital, listed, small } from "../text/words.ts";
import { change, figured, interval } from "./figure-words.ts";

/** Bases of a date, in the order they are shown. */
export const BASES = ["visits", "records", "even_visits"] as const;

/** What a basis of a date is called. @example basisWords("visits") // => "Visits, each once" */
export function basisWords(basis: SeasonDatesRow["basis"]): string {
  return say(`season-figures.basis-${basis}`);
}

/**
 * A day of the year in words, to the nearest whole day; days above 365 lie in the next year.
 *
 * @example dayInWords(114) // => "24 April"
 */
export function dayInWords(day: number): string {
  return dated(day, "long");
}

/** A day of the year in short, for tables. @example dayInShort(114) // => "24 Apr" */
export function dayInShort(day: number): string {
  return dated(day, "short");
}

/** The day in a year that has no 29 February, as the language writes it. */
function dated(day: number, month: "long" | "short"): string {
  const whole = Math.round(day);
  const date = Date.UTC(2023, 0, whole > 365 ? whole - 365 : whole);
  const words = new Date(date).toLocaleDateString(language(), { day: "numeric", month, timeZone: "UTC" });
  return words.replace(/ Sept$/, " Sep");
}

/**
 * The season in one or two sentences: by when half of the visits of the latest period were made, and how the median moved.
 *
 * @param period in words, with its preposition: "since 2006"
 * @param dates of the whole atlas in that period, all bases and castes
 * @example seasonSentence("since 2006", dates, shifts) // => "Since 2006 half of the visits with queens were made by **24 April**. …"
 */
export function seasonSentence(
  period: string,
  dates: readonly SeasonDatesRow[],
  shifts: readonly SeasonShiftRow[],
): Sentence {
  const row = headline(dates.filter(({ basis }) => basis === "visits"));
  if (row?.day_50 == null)
    return period === "" ? say("season-figures.none") : say("season-figures.too-few", { when: period });
  const whose = row.caste === "all" || row.caste === "not_stated" ? "half" : "half-caste";
  const values = { when: capital(period), caste: small(row.caste_label), day: dayInWords(row.day_50) };
  const start = say(period === "" ? `season-figures.${whose}-undated` : `season-figures.${whose}`, values);
  const shift = shifts.find(
    ({ caste, method, share }) => caste === row.caste && method === "regression" && share === 0.5,
  );
  return shift === undefined ? start : `${start} ${shiftSentence(shift)}`;
}

/** The first stated caste with a date, else all together. */
function headline(rows: readonly SeasonDatesRow[]): SeasonDatesRow | undefined {
  const stated = rows.filter(({ caste }) => caste !== "all" && caste !== "not_stated");
  return [...stated, ...rows].find(({ judged }) => judged);
}

/**
 * How the median moved, or that it cannot be told.
 *
 * @example shiftSentence(row) // => "The median came **2.1 days earlier per decade** (95 % interval 0.9 to 3.3 earlier; 31 years; …)."
 */
export function shiftSentence({
  judged,
  reason,
  shift,
  low,
  high,
  years,
  first_year,
  last_year,
}: SeasonShiftRow): Sentence {
  if (!judged || shift === null || low === null || high === null)
    return say("season-figures.shift-unknown", { reason });
  const rest = say("season-figures.shift-rest", {
    years,
    first: String(first_year ?? ""),
    last: String(last_year ?? ""),
  });
  if (low <= 0 && high >= 0)
    return say("season-figures.shift-none", {
      shift: change(shift, 1),
      interval: interval(low, high, (end) => change(end, 1)),
      rest,
    });
  const [near, far] = [low, high].map(Math.abs).sort((a, b) => a - b) as [number, number];
  return say("season-figures.shift", {
    days: figured(Math.abs(shift), 1),
    way: shift < 0 ? "earlier" : "later",
    near: figured(near, 1),
    far: figured(far, 1),
    rest,
  });
}

/**
 * What stands beside the dates: how many records they leave out.
 *
 * @example leftOut(row) // => "Left out: 4 records whose date is not one day and 7 records of specimens, literature or nests."
 */
export function leftOut({ vague, of_no_season }: Pick<SeasonDatesRow, "vague" | "of_no_season">): string {
  const parts = [
    ...(vague > 0 ? [say("season-figures.left-out-vague", { n: vague })] : []),
    ...(of_no_season > 0 ? [say("season-figures.left-out-kind", { n: of_no_season })] : []),
  ];
  return parts.length === 0 ? "" : say("season-figures.left-out", { parts: listed(parts) });
}

/** What a line of the shift follows. @example shiftName({ method: "regression", share: 0.1, adjusted: true }) // => "Day by which 10 % were made" */
export function shiftName({ method, share, adjusted }: Pick<SeasonShiftRow, "method" | "share" | "adjusted">): string {
  if (method === "regression")
    return share === 0.5
      ? say("season-figures.of-median")
      : say("season-figures.of-share", { percent: Math.round(100 * share) });
  return say(adjusted ? "season-figures.of-years" : "season-figures.of-years-raw");
}
