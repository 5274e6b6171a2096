import type { ChangeRow } from "../../../publishing/contracts.ts";
import { say } from "../../words/say.ts";
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
  const told = whereTold(more, fewer);
  const tetrads = rows.find(({ territory, resolution_m }) => territory === "all" && resolution_m === 2_000);
  const finer =
    tetrads === undefined || tetrads.judged ? "" : say("lines.finer-not-judged", { reason: tetrads.reason });
  const none = parts.some(({ judged }) => judged) ? say("lines.no-territory") : "";
  return [parts.length < 2 ? "" : told || none, finer].filter(Boolean).join(" ");
}

function whereTold(more: readonly string[], fewer: readonly string[]): Sentence {
  if (fewer.length === 0) return more.length === 0 ? "" : say("lines.more-in", { more: listed(more) });
  if (more.length === 0) return say("lines.fewer-in", { fewer: listed(fewer) });
  return say("lines.more-and-fewer-in", { more: listed(more), fewer: listed(fewer) });
}
