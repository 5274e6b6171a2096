import type { ChangeRow, Period, SeasonRow, SquareFile, TaxonFile } from "../../../publishing/contracts.ts";
import { FEWEST_FOR_SEASON, quantileThird } from "../charts/season.ts";
import { inPeriod } from "./in-period.ts";
import { grouped, inWords, percentage, signed } from "./numbers.ts";
import { thirdDays, thirdLoosely } from "./thirds.ts";
import { capital, counted, countedInWords, listed, plural, small } from "./words.ts";

/** A sentence in which `**…**` marks the numbers that matter. */
export type Sentence = string;

/**
 * What a period is called after "since" or alone.
 *
 * @example since({ id: "p2", label: "2006–2024", from: 2006, to: 2024 }) // "since 2006"
 */
export function since(period: Period): string {
  return period.from === null ? `until ${period.to}` : `since ${period.from}`;
}

/**
 * In how many squares a taxon was recorded, and in how many of them in the latest period.
 *
 * @param periods of the atlas, in order; with one period only the total is given
 * @example rangeSentence({ records: 18826, hectads: 1379, hectads_latest: 1203, generalised_to: "none" }, periods) // "Recorded in **1,379** 10 km squares, **1,203** of them since 2006."
 */
export function rangeSentence(
  {
    records,
    hectads,
    hectads_latest,
    generalised_to,
  }: Pick<TaxonFile, "records" | "hectads" | "hectads_latest" | "generalised_to">,
  periods: readonly Period[],
): Sentence {
  if (records === 0) return "No record of it is used in this edition. That says nothing about where it lives.";
  if (generalised_to === "withheld") return "Where it was recorded is not shown.";
  if (hectads === 0) return "No record names a 10 km square.";
  const latest = periods.at(-1);
  const squares = `Recorded in **${inWords(hectads)}** 10 km ${hectads === 1 ? "square" : "squares"}`;
  if (latest === undefined || periods.length < 2) return `${squares}.`;
  return `${squares}, **${hectads_latest === 0 ? "none" : inWords(hectads_latest)}** of them ${since(latest)}.`;
}

/**
 * When each caste was recorded: the thirds between which eight in ten of its records lie, and the fullest third.
 * Castes of fewer than 30 dated records are named as too few.
 *
 * @param rows castes in their order; "not_stated" speaks only where no caste was stated
 * @example flightSentence(rows) // "Eight in ten queens were recorded from **11–20 March** to **1–10 June**, most in **21–30 April**. …"
 */
export function flightSentence(rows: readonly SeasonRow[]): Sentence {
  const named = rows.filter(({ caste, total }) => caste !== "not_stated" && total > 0);
  const speaking = named.length > 0 ? named : rows.filter(({ total }) => total > 0);
  const [first, ...later] = speaking.filter(({ total }) => total >= FEWEST_FOR_SEASON);
  if (first === undefined) {
    const dated = rows.reduce((sum, { total }) => sum + total, 0);
    return dated === 0
      ? "No used record has a date precise enough for a season."
      : `Too few dated records for a season: ${grouped(dated)}, where ${FEWEST_FOR_SEASON} are needed.`;
  }
  const subject = named.length > 0 ? plural(small(first.label)) : "records";
  const verb = named.length > 0 ? "were recorded" : "were made";
  const start = `Eight in ten ${subject} ${verb} from **${thirdAt(first, 0.1)}** to **${thirdAt(first, 0.9)}**, most in **${thirdDays(fullest(first.records))}**.`;
  const others = later.map((row) => `${plural(small(row.label))} from ${thirdAt(row, 0.1)}`);
  const few = named.filter(({ total }) => total < FEWEST_FOR_SEASON).map(({ label }) => plural(small(label)));
  return [
    start,
    others.length === 0 ? "" : `${capital(listed(others))}.`,
    few.length === 0 ? "" : `Too few dated records of ${listed(few)} to say.`,
  ]
    .filter(Boolean)
    .join(" ");
}

function thirdAt({ records }: SeasonRow, share: number): string {
  return thirdDays(quantileThird(records, share));
}

function fullest(records: readonly number[]): number {
  return records.indexOf(Math.max(...records));
}

/**
 * The season in four words, for lists.
 *
 * @param counts records by third of the month
 * @returns empty under 30 records
 * @example seasonWords(counts) // "mid March to mid October"
 */
export function seasonWords(counts: readonly number[]): string {
  if (counts.reduce((sum, count) => sum + count, 0) < FEWEST_FOR_SEASON) return "";
  const [from, to] = [quantileThird(counts, 0.1), quantileThird(counts, 0.9)];
  return from === to ? thirdLoosely(from) : `${thirdLoosely(from)} to ${thirdLoosely(to)}`;
}

/**
 * How the squares of a taxon changed between two periods, or why that cannot be judged.
 *
 * @example changeSentence(row) // "Of 910 comparable squares it was found in both periods in 631, **newly found in 189 and not refound in 90**: a net change of +99 squares (95 % interval 66 to 132)."
 */
export function changeSentence(row: ChangeRow): Sentence {
  const { comparable, retained, gained, lost, net, interval_low: low, interval_high: high } = row;
  if (!row.judged || low === null || high === null)
    return `Change **cannot be judged** at ${row.resolution_m / 1000} km: ${row.reason || "too few comparable squares"}.`;
  if (low <= 0 && high >= 0) {
    return `Of ${counted(comparable, "comparable square")} it was found in both periods in ${grouped(retained)}, newly found in ${grouped(gained)} and not refound in ${grouped(lost)}: **the interval includes no change** (95 % interval ${signed(low)} to ${signed(high)}).`;
  }
  return `Of ${counted(comparable, "comparable square")} it was found in both periods in ${grouped(retained)}, **newly found in ${grouped(gained)} and not refound in ${grouped(lost)}**: a net change of ${signed(net)} ${Math.abs(net) === 1 ? "square" : "squares"} (95 % interval ${grouped(low)} to ${grouped(high)}).`;
}

/** Direction of change in squares, for lists. @example changeWord(row) // "more" */
export function changeWord(row: ChangeRow | null): string {
  if (row === null || !row.judged || row.interval_low === null || row.interval_high === null) return "cannot be judged";
  if (row.interval_low > 0) return "more";
  if (row.interval_high < 0) return "fewer";
  return "no direction";
}

/**
 * Squares that hold the taxon and say nothing about change.
 *
 * @returns empty where there is none
 * @example notComparable(row) // "**442 more squares cannot be compared:** in one period too little else was recorded there, or it has no settled record. They say where it is, not how it has changed."
 */
export function notComparable({ not_comparable_since, not_comparable_before }: ChangeRow): Sentence {
  const number = not_comparable_since + not_comparable_before;
  if (number === 0) return "";
  return `**${counted(number, "more square")} cannot be compared:** in one period too little else was recorded there, or it has no settled record. ${number === 1 ? "It says" : "They say"} where it was recorded, not how it has changed.`;
}

/**
 * Records by period beside the visits that gave them.
 *
 * @param years records and visits of the taxon by year
 * @param effort visits to the whole group by year
 * @example yearsSentence(years, effort, periods) // "**18,826** records, 73 % of them since 2006. For each 100 visits there were 12 records in 1990–2005 and 14 in 2006–2024."
 */
export function yearsSentence(
  years: TaxonFile["years"],
  effort: readonly { year: number; visits: number }[],
  periods: readonly Period[],
): Sentence {
  const inside = (period: Period) => (row: { year: number }) =>
    row.year <= period.to && row.year >= (period.from ?? -Infinity);
  const sum = (numbers: number[]) => numbers.reduce((all, number) => all + number, 0);
  const records = sum(years.map((row) => row.records));
  if (records === 0) return "No record has a year.";
  const latest = periods.at(-1);
  if (latest === undefined || periods.length < 2)
    return `**${counted(records, "record")}** from ${spanOf(years.filter((row) => row.records > 0).map(({ year }) => year))}.`;
  const share = percentage(sum(years.filter(inside(latest)).map((row) => row.records)), records);
  const rates = periods.flatMap((period) => {
    const visits = sum(effort.filter(inside(period)).map((row) => row.visits));
    return visits < 100
      ? []
      : [
          `${perHundred(sum(years.filter(inside(period)).map((row) => row.records)), visits)} ${inPeriod(period.label)}`,
        ];
  });
  const start = `**${grouped(records)}** ${records === 1 ? "record" : "records"}${share === undefined ? "" : `, ${share} of them ${since(latest)}`}.`;
  return rates.length < 2 ? start : `${start} For each 100 visits there were ${listed(rates)}.`;
}

/** First and last of some years: "1990 to 2024", or the one year. */
function spanOf(years: readonly number[]): string {
  const [first, last] = [Math.min(...years), Math.max(...years)];
  return first === last ? String(first) : `${first} to ${last}`;
}

/**
 * How rich the richest squares are, and how many have no species recorded.
 *
 * @param squares how many are in the richest class
 * @param species of that class, as words
 * @param empty squares without a recorded species
 * @example richnessSentence(1, "4", 2) // "1 square has 4 species; 2 have none recorded."
 */
export function richnessSentence(squares: number, species: string, empty: number): Sentence {
  const rich = `${counted(squares, "square")} ${squares === 1 ? "has" : "have"} ${species} species`;
  return empty === 0 ? `${rich}.` : `${rich}; ${grouped(empty)} ${empty === 1 ? "has" : "have"} none recorded.`;
}

/** Records for each 100 visits: one decimal under ten, so that two scarce years do not look alike. */
function perHundred(records: number, visits: number): string {
  const rate = (100 * records) / visits;
  if (records > 0 && rate < 0.05) return "under 0.1";
  return rate < 9.95 && records > 0 ? rate.toFixed(1) : grouped(Math.round(rate));
}

/**
 * What is known of one 10 km square.
 *
 * @example squareSentence(square, periods, "bumblebee") // "Ten species, nine of them since 2006. Recorded on 312 visits, in 21 of its 25 tetrads."
 */
export function squareSentence(square: SquareFile, periods: readonly Period[]): Sentence {
  const visits = square.visits.reduce((sum, number) => sum + number, 0);
  if (square.records === 0 && visits === 0)
    return "Nobody has sent a record from this square. That says nothing about what lives here.";
  const latest = periods.at(-1);
  const recent = square.taxa.at(-1) ?? 0;
  const species = capital(countedInWords(square.taxa_all, "species"));
  const some = recent === 0 ? "none" : inWords(recent);
  const newer =
    latest === undefined || periods.length < 2 || square.taxa_all < 2
      ? ""
      : `, ${recent >= square.taxa_all ? "all" : some} of them ${since(latest)}`;
  const tetrads = square.tetrads.filter((tetrad) => tetrad.visits > 0).length;
  return `${species}${newer}. Recorded on ${counted(visits, "visit")}${tetrads === 0 ? "" : `, in ${tetrads} of its 25 tetrads`}.`;
}
