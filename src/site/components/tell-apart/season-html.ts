import { season } from "../charts/season.ts";
import type { IdentifyTaxon } from "../identify/identify-taxa.ts";
import { monthNames } from "../text/month-names.ts";

/**
 * The records of some castes in thirds of the month; of all castes where none of them has records of its own.
 *
 * @example recordsOf(redTailed, ["male"]).length // 36
 */
export function recordsOf({ season: all, seasons }: IdentifyTaxon, castes: readonly string[]): readonly number[] {
  const own = seasons.filter(({ caste }) => castes.includes(caste));
  if (own.length === 0) return all;
  return all.map((_, third) => own.reduce((sum, { records }) => sum + (records[third] ?? 0), 0));
}

/**
 * A year in one line, as the strips of lists draw it, with its first and last month in words.
 *
 * @param counts records in thirds of the month
 * @param tag language of the page
 * @returns undefined under 30 records
 * @example seasonOf(counts, "en-GB")?.words // "Apr–Sep"
 */
export function seasonOf(counts: readonly number[], tag: string): { svg: string; words: string } | undefined {
  const found = season(counts);
  if (found === undefined) return undefined;
  const place = (number: number) => String(Math.round(number * 10) / 10);
  const stroke = ({ from, to }: { from: number; to: number }) => `M${place(from)} 7H${place(to)}`;
  const month = (position: number) => monthNames(tag).alone[Math.min(11, Math.floor(position / 3))] ?? "";
  const [first, last] = [month(found.thin.from), month(Math.max(found.thin.from, found.thin.to - 0.001))];
  return {
    svg: `<svg class="strip" viewBox="0 0 36 14" preserveAspectRatio="none" aria-hidden="true"><path class="quarters" d="M0 7H36M9 3.5v7M18 3.5v7M27 3.5v7"/><path class="thin" d="${stroke(found.thin)}"/><path class="thick" d="${found.thick.map(stroke).join("")}"/><path class="median" d="M${place(found.median)} 0v14"/></svg>`,
    words: first === last ? first : `${first}–${last}`,
  };
}
