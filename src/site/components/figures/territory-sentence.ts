import type { ChangeRow } from "../../../publishing/contracts.ts";
import type { Sentence } from "../text/sentences.ts";
import { listed } from "../text/words.ts";

/**
 * In which territories squares became more or fewer, and whether 2 km squares can be judged.
 *
 * @param name of a row's territory
 * @example territorySentence([], () => "") // => ""
 */
export function territorySentence(rows: readonly ChangeRow[], name: (row: ChangeRow) => string): Sentence {
  const parts = rows.filter(({ territory, resolution_m }) => territory !== "all" && resolution_m === 10_000);
  const where = (is: (low: number, high: number) => boolean) =>
    parts
      .filter(
        ({ judged, interval_low: low, interval_high: high }) =>
          judged && low !== null && high !== null && is(low, high),
      )
      .map((row) => `**${name(row)}**`);
  const [more, fewer] = [where((low) => low > 0), where((_, high) => high < 0)];
  const told = [
    more.length > 0 ? `More squares in ${listed(more)}` : "",
    fewer.length > 0 ? `${more.length > 0 ? "fewer" : "Fewer squares"} in ${listed(fewer)}` : "",
  ].filter(Boolean);
  const tetrads = rows.find(({ territory, resolution_m }) => territory === "all" && resolution_m === 2_000);
  const finer =
    tetrads === undefined || tetrads.judged ? "" : `At 2 km change **cannot be judged**: ${tetrads.reason}.`;
  const of = parts.some(({ judged }) => judged) ? "No territory shows a direction." : "";
  return [parts.length < 2 ? "" : told.length > 0 ? `${told.join(", ")}.` : of, finer].filter(Boolean).join(" ");
}
