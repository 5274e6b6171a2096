import { grouped } from "../components/text/grouped.ts";
import { counted } from "../components/text/words.ts";
import type { RecordedSquare, TaxonOnMap } from "./map-data.ts";
import type { View } from "./square-paint.ts";

/** What a sentence about a square needs to know of the atlas. */
export interface WordsContext {
  readonly periods: readonly { readonly label: string }[];
  readonly group: string;
}

const WORDS: Readonly<Record<RecordedSquare["state"], string>> = Object.freeze({
  retained: "found in both periods",
  gained: "newly found",
  lost: "not refound",
  not_comparable_since: "recorded, but cannot be compared",
  not_comparable_before: "recorded, but cannot be compared",
  recorded: "recorded",
});

/**
 * What was recorded of a taxon in one square.
 *
 * @param code of the square
 * @param square its record, or undefined
 * @param taxon on the map
 * @param size of the square; words of change at 2 km only where change is judged there
 * @param context periods and the group's name
 * @returns plain sentences
 * @example squareWords("NZ27", { state: "gained", covered: [true, true], records: [0, 4] }, taxon, 10_000, context) // "NZ27: newly found. 1990–2005 no record, 2006–2024 4 records."
 */
export function squareWords(
  code: string,
  square: RecordedSquare | undefined,
  taxon: TaxonOnMap,
  size: 10_000 | 2_000,
  { periods, group }: WordsContext,
): string {
  if (size === 2_000 && taxon.shownAt10km) return `${code}: ${taxon.name} is shown at 10 km.`;
  if (!square) return `${code}: no record of ${taxon.name}${size === 2_000 ? " precise to 2 km" : ""}.`;
  const state = size === 2_000 && !taxon.judgedAt2km ? "recorded" : WORDS[square.state];
  const numbers = periods.map(({ label }, i) => {
    const records = square.records[i] ?? 0;
    if (records > 0) return `${label} ${counted(records, "record")}`;
    return `${label} no record${square.covered[i] === false ? `, and too little else of the ${group} to say` : ""}`;
  });
  return `${code}: ${taxon.name} ${state}. ${numbers.join("; ")}.`;
}

/** What is known of a hectad without a record. @example uncoveredWords("NZ27", "neither", taxon, context) // "NZ27: no record of …; too little recorded in both periods to say." */
export function uncoveredWords(
  code: string,
  cover: "neither" | "later_only" | "earlier_only" | undefined,
  taxon: TaxonOnMap,
  { periods }: WordsContext,
  compared: readonly [number, number] | null,
): string {
  const label = (i: 0 | 1) => (compared && periods[compared[i]]?.label) ?? "";
  if (cover === undefined)
    return `${code}: no record of ${taxon.name}, though others were recorded${compared ? " in both periods" : ""}.`;
  if (cover === "neither") return `${code}: no record of ${taxon.name}, and too little else recorded to say.`;
  const [known, unknown] = cover === "later_only" ? [label(1), label(0)] : [label(0), label(1)];
  return `${code}: no record of ${taxon.name}, though others were recorded ${inPeriod(known)}; too little was recorded ${inPeriod(unknown)} to say.`;
}

/** What the map shows now. @example viewWords(taxon, view, 214, "10 km", context) // "Red-tailed bumblebee, 1990–2005 and 2006–2024: 214 squares of 10 km in view." */
export function viewWords(
  taxon: TaxonOnMap,
  view: View,
  squares: number,
  size: string,
  { periods }: WordsContext,
): string {
  const years =
    view.kind === "single"
      ? periods[view.period]?.label
      : view.kind === "compared"
        ? [periods[view.earlier]?.label, periods[view.later]?.label].join(" and ")
        : "";
  return `${taxon.name}${years ? `, ${years}` : ""}: recorded in ${grouped(squares)} ${squares === 1 ? "square" : "squares"} of ${size} in view.${taxon.shownAt10km ? " Shown at 10 km, and no finer." : ""}`;
}

/** "in 1990–2005", and "until 1989" for a period open at the left. The map's own, so that no catalogue comes with its script. */
function inPeriod(label: string): string {
  const open = /^to (\d+)$/.exec(label);
  return open === null ? `in ${label}` : `until ${open[1]}`;
}
