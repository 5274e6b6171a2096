import type { RecordedSquare, TaxonOnMap } from "./map-data.ts";
import type { MapWords } from "./map-words.ts";
import type { View } from "./square-paint.ts";

/** What a sentence about a square needs to know: the words, and the atlas's periods. */
export interface WordsContext extends Pick<MapWords, "say" | "group"> {
  readonly periods: readonly { readonly label: string }[];
}

const STATES: Readonly<Record<RecordedSquare["state"], string>> = Object.freeze({
  retained: "zoom.state.retained",
  gained: "zoom.state.gained",
  lost: "zoom.state.lost",
  not_comparable_since: "zoom.state.not-comparable",
  not_comparable_before: "zoom.state.not-comparable",
  recorded: "zoom.state.recorded",
});

/**
 * What was recorded of a taxon in one square.
 *
 * @param code of the square
 * @param square its record, or undefined
 * @param taxon on the map
 * @param size of the square; words of change at 2 km only where change is judged there
 * @param context words, periods and the group's name
 * @returns plain sentences
 * @example squareWords("NZ27", { state: "gained", covered: [true, true], records: [0, 4] }, taxon, 10_000, context) // "NZ27: Red bee newly found. 1990–2005 no record; 2006–2024 4 records."
 */
export function squareWords(
  code: string,
  square: RecordedSquare | undefined,
  taxon: TaxonOnMap,
  size: 10_000 | 2_000,
  { periods, group, say }: WordsContext,
): string {
  const { name } = taxon;
  if (size === 2_000 && taxon.shownAt10km) return say("zoom.coarse", { code, name });
  if (!square) return say(size === 2_000 ? "zoom.no-record-2km" : "zoom.no-record", { code, name });
  const state = say(size === 2_000 && !taxon.judgedAt2km ? STATES.recorded : STATES[square.state]);
  const numbers = periods.map(({ label: period }, i) => {
    const n = square.records[i] ?? 0;
    if (n > 0) return say("zoom.period-records", { period, n });
    return square.covered[i] === false
      ? say("zoom.period-unknown", { period, group })
      : say("zoom.period-none", { period });
  });
  return say("zoom.square-state", { code, name, state, numbers: numbers.join(say("zoom.between")) });
}

/** What is known of a hectad without a record. @example uncoveredWords("NZ27", "neither", taxon, context, [0, 1]) // "NZ27: no record of Red bee, and too little else recorded to say." */
export function uncoveredWords(
  code: string,
  cover: "neither" | "later_only" | "earlier_only" | undefined,
  { name }: TaxonOnMap,
  { periods, say }: WordsContext,
  compared: readonly [number, number] | null,
): string {
  if (cover === undefined) return say(compared ? "zoom.covered-both" : "zoom.covered", { code, name });
  if (cover === "neither") return say("zoom.covered-neither", { code, name });
  const [earlier, later] = [0, 1].map((i) => inPeriod((compared && periods[compared[i] ?? 0]?.label) ?? "", say));
  const [known = "", unknown = ""] = cover === "later_only" ? [later, earlier] : [earlier, later];
  return say("zoom.covered-one", { code, name, known, unknown });
}

/** What the map shows now. @example viewWords(taxon, view, 214, "10 km", context) // "Red-tailed bumblebee, 1990–2005 and 2006–2024: recorded in 214 squares of 10 km in view." */
export function viewWords(
  { name, shownAt10km }: TaxonOnMap,
  view: View,
  n: number,
  size: string,
  { periods, say }: WordsContext,
): string {
  const years =
    view.kind === "single"
      ? periods[view.period]?.label
      : view.kind === "compared"
        ? say("zoom.two-periods", {
            earlier: periods[view.earlier]?.label ?? "",
            later: periods[view.later]?.label ?? "",
          })
        : undefined;
  const said =
    years === undefined ? say("zoom.view", { name, n, size }) : say("zoom.view-years", { name, years, n, size });
  return shownAt10km ? `${said} ${say("zoom.shown-coarse")}` : said;
}

/** How often a square was visited, by period. @example visitWords("NZ27", [12, 44], context) // "NZ27: 56 visits (1990–2005 12; 2006–2024 44)." */
export function visitWords(code: string, visits: readonly number[], { periods, say }: WordsContext): string {
  const n = visits.reduce((sum, number) => sum + number, 0);
  const numbers =
    n === 0 || visits.length < 2
      ? "none"
      : visits
          .map((number, i) => say("zoom.period-visits", { period: periods[i]?.label ?? "", n: number }))
          .join(say("zoom.between"));
  return say("zoom.visits-square", { code, n, numbers });
}

/** "in 1990–2005", and "until 1989" for a period open at the left. */
function inPeriod(label: string, say: WordsContext["say"]): string {
  const open = /^\D.*?(\d+)\D*$/.exec(label);
  return open === null ? say("zoom.in-years", { years: label }) : say("zoom.until", { year: open[1] ?? "" });
}
