import type { ShownCoarser, TaxonFile } from "../../../publishing/contracts.ts";
import { withoutMarks } from "../../words/fallback.ts";
import { say } from "../../words/say.ts";
import type { Sentence } from "./sentence.ts";
import { capital } from "./words.ts";

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
  if (whole) return level === "withheld" ? say("text.coarser-withheld") : say("text.coarser", { level });
  const named = (scoped: string) =>
    say("text.coarser-records", { of: of === "" ? "none" : "some", name: of, scoped, scope });
  if (level !== "withheld") return say("text.coarser-some", { records: named(scope === "" ? "" : "yes"), level });
  return scope === ""
    ? say("text.coarser-some-withheld", { records: named("") })
    : say("text.coarser-some-withheld-scope", { records: named(""), scope });
}

function asSentence(text: string): string {
  const trimmed = text.trim();
  return `${capital(trimmed)}${/[.!?]$/.test(withoutMarks(trimmed)) ? "" : "."}`;
}
