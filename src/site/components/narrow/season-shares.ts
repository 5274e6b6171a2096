import type { NarrowTaxon } from "./narrow-taxa.ts";

/** Thirds of the month in a year. */
const THIRDS = 36;
/** Records added to a taxon's season, spread as the visits are: none is impossible out of season. */
const PSEUDO_RECORDS = 1;
/** Records of stated caste added to those of a third of the month, shared as in the whole year. */
const PSEUDO_CASTES = 4;

/**
 * The third of the month of a date.
 *
 * @param date year-month-day
 * @returns 0 for 1–10 January to 35 for 21–31 December; undefined for any other text
 * @example thirdOf("2026-05-12") // 13
 */
export function thirdOf(date: string): number | undefined {
  const [, month, day] = date.match(/^\d{4}-(\d{2})-(\d{2})$/)?.map(Number) ?? [];
  if (month === undefined || day === undefined || month < 1 || month > 12 || day < 1 || day > 31) return undefined;
  return 3 * (month - 1) + Math.min(2, Math.floor((day - 1) / 10));
}

/**
 * How much oftener than on an average visit a taxon is recorded on a visit of a third of the month. The neighbouring
 * thirds count half, since years are early and late. Records of all castes, those that state none too.
 *
 * @param season records by third; all 0 where the atlas has none
 * @param visits of the group by third
 * @param third undefined where no date is told
 * @returns 1 without a date or without records; never 0
 * @example seasonFactor([...], visits, undefined) // 1
 */
export function seasonFactor(season: readonly number[], visits: readonly number[], third: number | undefined): number {
  const records = sum(season);
  if (third === undefined || records === 0) return 1;
  const visited = visits.map((count) => count + 1);
  const share = around(visited, third) / sum(visited);
  return (around(season, third) + PSEUDO_RECORDS * share) / (records + PSEUDO_RECORDS) / share;
}

/**
 * Shares of the castes of a taxon in a third of the month, from the records that state one.
 *
 * @param taxon its castes, and their seasons; castes without records share a record each
 * @param third undefined where no date is told: then over the whole year
 * @returns summing to 1 and never 0; one nameless caste where the taxon has none
 * @example casteShares({ castes: ["queen", "worker"], seasons: [] }, 13) // Map { "queen" => 0.5, "worker" => 0.5 }
 */
export function casteShares(
  { castes, seasons }: Pick<NarrowTaxon, "castes" | "seasons">,
  third: number | undefined,
): Map<string, number> {
  if (castes.length === 0) return new Map([["", 1]]);
  const records = castes.map((caste) => seasons.find((row) => row.caste === caste)?.records ?? []);
  const whole = records.map((own) => sum(own) + 1);
  const overall = whole.map((count) => count / sum(whole));
  if (third === undefined) return new Map(castes.map((caste, i) => [caste, overall[i] ?? 0]));
  const now = records.map((own) => (own.length === 0 ? 0 : around(own, third)));
  const all = sum(now) + PSEUDO_CASTES;
  return new Map(castes.map((caste, i) => [caste, ((now[i] ?? 0) + PSEUDO_CASTES * (overall[i] ?? 0)) / all]));
}

/** A third and, at half weight, those beside it; December is beside January. */
function around(counts: readonly number[], third: number): number {
  const at = (i: number) => counts[(i + THIRDS) % THIRDS] ?? 0;
  return (at(third - 1) + 2 * at(third) + at(third + 1)) / 4;
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, one) => total + one, 0);
}
