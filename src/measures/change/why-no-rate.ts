import type { Settings } from "../../scheme/settings.ts";
import type { ComparedLists } from "./reporting-rate-outcomes.ts";

interface Rules {
  settings: Pick<Settings, "periods" | "change">;
  pair: readonly [from: number, to: number];
  /** Complete lists of each period, wherever they are. */
  listed: readonly [from: number, to: number];
  /** Whether some of the taxon's records are shown coarser than they are known. */
  isHidden: boolean;
}

/**
 * Why the reporting rates of two periods are not compared, in words that end a sentence after a colon.
 *
 * @returns empty where they are
 * @example whyNoRate(compared, rules) // => "12 complete lists name it; 20 are needed"
 */
export function whyNoRate(
  { lists, found, allSquares }: Pick<ComparedLists, "lists" | "found" | "allSquares">,
  { settings, pair, listed, isHidden }: Rules,
): string {
  if (isHidden) return "its records are shown coarser than they are known, so that its lists are not complete here";
  const { minimum_visits, minimum_detections, minimum_squares } = settings.change.reporting_rate;
  const years = pair.map((period) => yearsOf(settings.periods[period]));
  const none = listed.indexOf(0);
  if (none >= 0) return `no lists declared complete in ${years[none]}`;
  const few = lists.findIndex((count) => count < minimum_visits);
  if (few >= 0)
    return `${counted(lists[few] as number, "complete list")} in ${years[few]} where it was ever recorded; ${minimum_visits} are needed`;
  const named = (found[0] as number) + (found[1] as number);
  if (named < minimum_detections)
    return `${counted(named, "complete list")} ${named === 1 ? "names" : "name"} it; ${minimum_detections} are needed`;
  if (allSquares < minimum_squares)
    return `${counted(allSquares, "square")} with complete lists in both periods; ${minimum_squares} are needed`;
  const unnamed = found.indexOf(0);
  return unnamed < 0
    ? ""
    : `none of the ${counted(lists[unnamed] as number, "complete list")} in ${years[unnamed]} names it`;
}

function counted(count: number, what: string): string {
  return `${count} ${what}${count === 1 ? "" : "s"}`;
}

/** The years of a period in words. */
function yearsOf(period: Settings["periods"][number] | undefined): string {
  if (period === undefined) return "no period";
  return period.from === null ? `the years until ${period.to}` : `${period.from}–${period.to}`;
}
