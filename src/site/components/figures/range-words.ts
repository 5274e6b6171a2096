import type { RangeRow } from "../../../publishing/contracts.ts";
import { say } from "../../words/say.ts";
import type { Sentence } from "../text/sentences.ts";
import { listed } from "../text/words.ts";
import { figured, inClauses } from "./figure-words.ts";

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
  if (row === undefined || row.records === 0) return say("ranges.none", { where });
  const extent = row.extent_km2 === null ? "" : area(row.extent_km2);
  if (row.occupancy_km2 === null) {
    const silent = say("ranges.no-area", { where, reason: row.occupancy_reason });
    return extent === "" ? silent : `${silent} ${say("ranges.within", { extent })}`;
  }
  const values = { n: row.tetrads, where, area: area(row.occupancy_km2) };
  return extent === "" ? say("ranges.recorded", values) : say("ranges.recorded-within", { ...values, extent });
}

/**
 * The threshold of criterion B a figure is below; empty for none.
 *
 * @example below(20_000) // => "below 20,000 km²"
 */
export function below(threshold: number | null): string {
  return threshold === null ? "" : say("ranges.below", { area: area(threshold) });
}

/**
 * Small words under a territory's name: what the figures lack, and that an extent was raised.
 *
 * @example rangeNote({ ...row, records_left_out: 1 }) // => "1 record not established left out"
 */
export function rangeNote(row: RangeRow): string {
  const parts = [
    row.records_not_shown > 0 && row.occupancy_km2 !== null ? say("ranges.coarser", { n: row.records_not_shown }) : "",
    row.records_left_out > 0 ? say("ranges.not-established", { n: row.records_left_out }) : "",
    row.extent_raised ? say("ranges.raised") : "",
  ];
  return inClauses(parts.filter(Boolean));
}

/** Names of the grids of a row, in words. @example gridsInWords(["british"], new Map([["british", "British National Grid"]])) // => "British National Grid" */
export function gridsInWords(grids: readonly string[], names: ReadonlyMap<string, string>): string {
  return listed(grids.map((grid) => names.get(grid) ?? grid));
}
