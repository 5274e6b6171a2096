import type { RangeRow } from "../../../publishing/contracts.ts";
import type { Sentence } from "../text/sentences.ts";
import { counted, listed } from "../text/words.ts";
import { figured } from "./figure-words.ts";

/**
 * An area in whole square kilometres, with a decimal below 100.
 *
 * @example area(41200.5) // => "41,201 km²"
 * @example area(12.4) // => "12.4 km²"
 */
export function area(km2: number): string {
  return `${figured(km2, km2 < 100 && !Number.isInteger(km2) ? 1 : 0)} km²`;
}

/**
 * How far a taxon reaches, from its row for the latest period and the whole atlas.
 *
 * @param where of the period, such as "in 2006–2024"
 * @example rangeSentence(row, "in 2006–2024") // "Recorded in **540 squares of 2 km** in 2006–2024, an area of occupancy of **2,160 km²** or more, within an extent of **41,201 km²**."
 */
export function rangeSentence(row: RangeRow | undefined, where: string): Sentence {
  if (row === undefined || row.records === 0) return `No established record ${where}.`;
  const extent = row.extent_km2 === null ? "" : `an extent of **${area(row.extent_km2)}**`;
  if (row.occupancy_km2 === null)
    return `Its area of occupancy **is not given** ${where}: ${row.occupancy_reason}.${extent === "" ? "" : ` Its records lie within ${extent}.`}`;
  return `Recorded in **${counted(row.tetrads, "square")} of 2 km** ${where}, an area of occupancy of **${area(row.occupancy_km2)}** or more${extent === "" ? "" : `, within ${extent}`}.`;
}

/**
 * The threshold of criterion B a figure is below; empty for none.
 *
 * @example below(20_000) // => "below 20,000 km²"
 */
export function below(threshold: number | null): string {
  return threshold === null ? "" : `below ${area(threshold)}`;
}

/**
 * Small words under a territory's name: what the figures lack, and that an extent was raised.
 *
 * @example rangeNote({ ...row, records_left_out: 1 }) // => "1 record not established left out"
 */
export function rangeNote(row: RangeRow): string {
  const parts = [
    row.records_not_shown > 0 && row.occupancy_km2 !== null
      ? `${counted(row.records_not_shown, "record")} shown coarser on purpose fill no 2 km square`
      : "",
    row.records_left_out > 0 ? `${counted(row.records_left_out, "record")} not established left out` : "",
    row.extent_raised ? "the polygon is smaller than the area of occupancy, and set equal to it" : "",
  ];
  return parts.filter(Boolean).join("; ");
}

/** Names of the grids of a row, in words. @example gridsInWords(["british"], new Map([["british", "British National Grid"]])) // => "British National Grid" */
export function gridsInWords(grids: readonly string[], names: ReadonlyMap<string, string>): string {
  return listed(grids.map((grid) => names.get(grid) ?? grid));
}
