import type { AtlasFile, Period, TaxonFile } from "../../../publishing/contracts.ts";
import type { NumberClass } from "../../maps/number-map.ts";
import { say } from "../../words/say.ts";
import { inWords } from "../text/numbers.ts";
import type { Sentence } from "../text/sentences.ts";

/** Most classes of years that one ink can tell apart. */
const CLASSES = 4;
const SIDES = [3.5, 2.7, 1.9, 1.1] as const;

/** One class of first years, both inclusive, with its squares. */
export interface FirstYearClass extends NumberClass {
  readonly words: string;
  readonly squares: number;
}

/**
 * Whether a taxon came only after the earlier of the compared periods: squares in the later one and none in the earlier.
 * Of such a taxon there is no change to tell, only when it was first recorded where.
 *
 * @example isNewcomer(taxon, periods, null) // => false
 */
export function isNewcomer(
  { squares }: Pick<TaxonFile, "squares">,
  periods: readonly Period[],
  compared: AtlasFile["compared"],
): boolean {
  if (compared === null) return false;
  const [from, to] = compared.map((wanted) => periods.findIndex(({ id }) => id === wanted)) as [number, number];
  const found = (period: number) => squares["10000"].some(({ records }) => (records[period] ?? 0) > 0);
  return found(to) && !found(from);
}

/**
 * Classes of the years in which squares were first recorded: up to four, of as equal numbers of squares as whole years
 * allow. The earliest has the largest square, for it has been there longest.
 *
 * @param years first year of each square
 * @returns earliest first; no class without years
 * @example firstYearClasses([2001, 2001, 2006]).map(({ words }) => words) // => ["2001", "2006"]
 */
export function firstYearClasses(years: readonly number[]): FirstYearClass[] {
  const sorted = [...years].sort((a, b) => a - b);
  const starts = new Set<number>();
  for (let part = 0; part < CLASSES; part += 1) {
    const year = sorted[Math.floor((part * sorted.length) / CLASSES)];
    if (year !== undefined) starts.add(year);
  }
  const bounds = [...starts];
  return bounds.map((least, index) => {
    const next = bounds[index + 1];
    const most = next === undefined ? (sorted.at(-1) ?? least) : next - 1;
    const last = sorted.findLast((year) => year <= most) ?? least;
    return {
      least,
      most,
      side: SIDES[index] ?? 1.1,
      words: least === last ? String(least) : `${least}–${last}`,
      squares: sorted.filter((year) => year >= least && year <= most).length,
    };
  });
}

/**
 * When a newcomer was first recorded, and in how many squares by now.
 *
 * @param years first year of each square
 * @example firstYearsSentence([2001, 2004, 2004]) // => "First recorded in **2001**, in one square; by 2004 in **three**."
 */
export function firstYearsSentence(years: readonly number[]): Sentence {
  if (years.length === 0) return say("ranges.first-years-none");
  const [first, last] = [Math.min(...years), Math.max(...years)];
  const n = years.filter((year) => year === first).length;
  const begun = { first: String(first), n, words: inWords(n) };
  return first === last
    ? say("ranges.first-years-one", begun)
    : say("ranges.first-years-more", { ...begun, last: String(last), all: inWords(years.length) });
}
