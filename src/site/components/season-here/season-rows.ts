import type { Say } from "../../words/client.ts";
import type { Nearby } from "../narrow/reasons.ts";
import type { SeasonTaxon } from "./in-season.ts";
import { drawStrip } from "./season-strip.ts";

/** How far a nearest square is looked for, in kilometres; further is said to be none. */
const REACH_KM = 150;

/**
 * Where a taxon was recorded, in words: in this square and when last, or how far the nearest square is.
 *
 * @param nearby undefined where nothing is told of it
 * @example nearWords({ here: 3, lastYear: 2021, nearestKm: 0 }, say) // "recorded in this 10 km square in 2021"
 */
export function nearWords(nearby: Nearby | undefined, say: Say): string {
  if (nearby !== undefined && nearby.here > 0)
    return nearby.lastYear === undefined
      ? say("in-season.here")
      : say("in-season.here-year", { year: String(nearby.lastYear) });
  if (nearby?.nearestKm === undefined) return say("in-season.none-near", { km: REACH_KM });
  return say("in-season.nearest", { km: nearby.nearestKm });
}

/** One row of the list: name, season with a line at the date, and words: where it was recorded, or when. */
export function seasonRow(
  { slug, name, language, season }: SeasonTaxon,
  { third, words, isNear, top }: { third: number; words: string; isNear: boolean; top: string },
): HTMLTableRowElement {
  const row = document.createElement("tr");
  const head = document.createElement("th");
  head.scope = "row";
  const link = document.createElement("a");
  link.href = `${top}species/${slug}/`;
  link.textContent = name;
  if (language !== undefined) link.lang = language;
  head.append(link);
  const strip = document.createElement("td");
  strip.className = "season-cell";
  strip.append(drawStrip(season, third));
  const last = document.createElement("td");
  last.className = isNear ? "season-near" : "season-words";
  last.textContent = words;
  row.append(head, strip, last);
  return row;
}
