import type { Period, TaxonFile } from "../../../publishing/contracts.ts";
import { say } from "../../words/say.ts";
import { inPeriod, since } from "./in-period.ts";
import { grouped, oneDecimal, percentage } from "./numbers.ts";
import type { Sentence } from "./sentence.ts";
import { listed } from "./words.ts";

/** Visits of a period under which no rate is given. */
const FEWEST_VISITS = 100;

/**
 * Records by period beside the visits that gave them.
 *
 * @param years records and visits of the taxon by year
 * @param effort visits to the whole group by year
 * @example yearsSentence(years, effort, periods) // "**18,826** records, 73 % of them since 2006. For each 100 visits there were 12 in 1990–2005 and 14 in 2006–2024."
 */
export function yearsSentence(
  years: TaxonFile["years"],
  effort: readonly { year: number; visits: number }[],
  periods: readonly Period[],
): Sentence {
  const recordsOf = (rows: TaxonFile["years"]) => rows.reduce((sum, row) => sum + row.records, 0);
  const n = recordsOf(years);
  if (n === 0) return say("text.years-none");
  const latest = periods.at(-1);
  if (latest === undefined || periods.length < 2) return say("text.years-one-period", { n, span: spanOf(years) });
  const share = percentage(recordsOf(years.filter(inside(latest))), n);
  const rates = periods.flatMap((period) => {
    const visits = effort.filter(inside(period)).reduce((sum, row) => sum + row.visits, 0);
    if (visits < FEWEST_VISITS) return [];
    const rate = perHundred(recordsOf(years.filter(inside(period))), visits);
    return [say("text.years-rate", { rate, when: inPeriod(period.label) })];
  });
  const start =
    share === undefined ? say("text.years", { n }) : say("text.years-share", { n, share, since: since(latest) });
  return rates.length < 2 ? start : `${start} ${say("text.years-rates", { rates: listed(rates) })}`;
}

function inside(period: Period): (row: { year: number }) => boolean {
  return ({ year }) => year <= period.to && year >= (period.from ?? -Infinity);
}

/** First and last year with a record: "1990 to 2024", or the one year. */
function spanOf(years: TaxonFile["years"]): string {
  const recorded = years.filter(({ records }) => records > 0).map(({ year }) => year);
  const [first, last] = [Math.min(...recorded), Math.max(...recorded)];
  return first === last ? String(first) : say("text.span", { from: String(first), to: String(last) });
}

/** Records for each 100 visits: one decimal under ten, so that two scarce years do not look alike. */
function perHundred(records: number, visits: number): string {
  const rate = (100 * records) / visits;
  if (records > 0 && rate < 0.05) return say("text.years-rate-under", { number: oneDecimal(0.1) });
  return rate < 9.95 && records > 0 ? oneDecimal(rate) : grouped(Math.round(rate));
}
