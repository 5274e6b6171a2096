import type { ShownCoarser, TaxonFile } from "../../../publishing/contracts.ts";
import type { Sentence } from "./sentences.ts";

/**
 * Which records of a taxon are shown coarser than they are known, and why, one sentence an entry of the scheme's list.
 *
 * @returns none where all are shown as they are known
 * @example shownCoarserSentences({ shown_coarser: [{ of: "", level: "10 km", whole: true, scope: "", reason: "Nests are dug out.", … }] }) // ["**Shown at 10 km.** Nests are dug out."]
 */
export function shownCoarserSentences({ shown_coarser }: Pick<TaxonFile, "shown_coarser">): Sentence[] {
  return shown_coarser.map((entry) => `**${headOf(entry)}** ${asSentence(entry.reason)}`);
}

function headOf({ of, level, whole, scope }: ShownCoarser): string {
  const records = of === "" ? "Records" : `Records of ${of}`;
  const which = scope === "" ? "" : ` (${scope})`;
  if (level === "withheld")
    return whole
      ? "Its places are withheld: it is on no map."
      : `${records} whose places are withheld${which} are on no map.`;
  return whole ? `Shown at ${level}.` : `${records}${which} are shown at ${level}.`;
}

function asSentence(text: string): string {
  const trimmed = text.trim();
  return `${trimmed.charAt(0).toUpperCase()}${trimmed.slice(1)}${/[.!?]$/.test(trimmed) ? "" : "."}`;
}
