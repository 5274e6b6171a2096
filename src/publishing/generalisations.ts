/** What the list of sensitive taxa means for what is published, in words and for the tables. */
import { generalisationsOf, levelOf, scopeInWords } from "../scheme/generalisations.ts";
import type { Scheme } from "../scheme/scheme.ts";
import type { GeneralisedTo, ShownCoarser } from "./contracts.ts";
import { type Told, told } from "./methods/statement.ts";
import type { TaxonNames } from "./taxon-names.ts";

/** The entries that bear on a taxon, as its page tells them. */
export function shownCoarser(taxonId: string, scheme: Scheme, names: ReadonlyMap<string, TaxonNames>): ShownCoarser[] {
  return generalisationsOf(scheme, taxonId).map(({ entry, own, whole }) => ({
    of: own ? "" : (names.get(entry.taxonID)?.vernacularName ?? entry.taxonID),
    level: entry.level,
    whole,
    scope: scopeInWords(entry, scheme.settings),
    reason: entry.reason,
    review_date: entry.reviewDate,
  }));
}

/** How coarse a taxon's records are shown on purpose: a level for all of them, `in part`, or `none`. */
export function generalisedTo(taxonId: string, scheme: Scheme): GeneralisedTo {
  const all = generalisationsOf(scheme, taxonId);
  return levelOf(all) ?? (all.length === 0 ? "none" : "in part");
}

/** What the methods page says of the list: the rule, then every entry in its own words. */
export function sensitiveStatements(scheme: Scheme, names: ReadonlyMap<string, TaxonNames>): (Told | null)[] {
  if (scheme.sensitive.length === 0) return [];
  const hasLand = scheme.landSquares !== null && scheme.sensitive.some(({ level }) => level === "10 km");
  return [
    told("coarser"),
    hasLand ? told("coarser-land") : null,
    told("coarser-visits"),
    ...scheme.sensitive.map((entry) =>
      told("coarser-entry", {
        taxon: names.get(entry.taxonID)?.vernacularName ?? entry.taxonID,
        scope: scopeInWords(entry, scheme.settings) || "none",
        level: entry.level,
        reason: sentence(entry.reason),
        date: entry.reviewDate,
      }),
    ),
  ];
}

/** A text of the list as a sentence, with its full stop. */
function sentence(text: string): string {
  const trimmed = text.trim();
  return `${trimmed.charAt(0).toUpperCase()}${trimmed.slice(1)}${/[.!?]$/.test(trimmed) ? "" : "."}`;
}
