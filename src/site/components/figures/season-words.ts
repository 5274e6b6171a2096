import type { SeasonDatesRow, SeasonShiftRow } from "../../../publishing/contracts.ts";
import type { Sentence } from "../text/sentences.ts";
import { monthName } from "../text/thirds.ts";
import { listed, small } from "../text/words.ts";
import { change, figured, interval } from "./figure-words.ts";

const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** What each basis of a date is called, in the order they are shown. */
export const BASIS_WORDS = {
  visits: "Visits, each once",
  records: "Records",
  even_visits: "Visits, recording evened out over the year",
} as const;

/**
 * A day of the year in words, to the nearest whole day; days above 365 lie in the next year.
 *
 * @example dayInWords(114) // => "24 April"
 */
export function dayInWords(day: number): string {
  const whole = Math.round(day);
  let left = whole > 365 ? whole - 365 : whole;
  for (const [month, days] of MONTH_DAYS.entries()) {
    if (left <= days) return `${left} ${monthName(month)}`;
    left -= days;
  }
  return "";
}

/** A day of the year in short, for tables. @example dayInShort(114) // => "24 Apr" */
export function dayInShort(day: number): string {
  const [number = "", month = ""] = dayInWords(day).split(" ");
  return `${number} ${month.slice(0, 3)}`;
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
    return `${period === "" ? "No" : `Too few visits ${period}: no`} date of its season can be given.`;
  const whose = row.caste === "all" || row.caste === "not_stated" ? "with it" : `with a ${small(row.caste_label)}`;
  const start = `${period === "" ? "Half" : `${period.charAt(0).toUpperCase()}${period.slice(1)} half`} of the visits ${whose} were made by **${dayInWords(row.day_50)}**.`;
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
    return `Whether it moved **cannot be told**: ${reason}.`;
  const rest = `${years} years from ${first_year ?? ""} to ${last_year ?? ""}; latitude, territory, caste and the season of recording allowed for`;
  if (low <= 0 && high >= 0)
    return `Its median shows **no clear shift**: ${change(shift, 1)} days per decade (95 % interval ${interval(low, high, (end) => change(end, 1))}; ${rest}).`;
  const way = shift < 0 ? "earlier" : "later";
  const [near, far] = [low, high].map(Math.abs).sort((a, b) => a - b) as [number, number];
  return `The median came **${figured(Math.abs(shift), 1)} days ${way} per decade** (95 % interval ${figured(near, 1)} to ${figured(far, 1)} ${way}; ${rest}).`;
}

/**
 * What stands beside the dates: how many records they leave out.
 *
 * @example leftOut(row) // => "Left out: 4 records whose date is not one day and 7 records of specimens, literature or nests."
 */
export function leftOut({ vague, of_no_season }: Pick<SeasonDatesRow, "vague" | "of_no_season">): string {
  const parts = [
    ...(vague > 0 ? [`${figured(vague)} ${vague === 1 ? "record" : "records"} whose date is not one day`] : []),
    ...(of_no_season > 0
      ? [`${figured(of_no_season)} ${of_no_season === 1 ? "record" : "records"} of specimens, literature or nests`]
      : []),
  ];
  return parts.length === 0 ? "" : `Left out: ${listed(parts)}.`;
}

/** What a line of the shift follows. @example shiftName({ method: "regression", share: 0.1, adjusted: true }) // => "Day by which 10 % were made" */
export function shiftName({ method, share, adjusted }: Pick<SeasonShiftRow, "method" | "share" | "adjusted">): string {
  if (method === "regression")
    return share === 0.5 ? "Median of all visits" : `Day by which ${Math.round(100 * share)} % were made`;
  return adjusted ? "Medians of the years" : "Medians of the years, as recorded";
}
