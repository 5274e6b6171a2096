/** What the list of sensitive taxa means for what is published, in words and for the tables. */
import { generalisationsOf, levelOf, scopeInWords } from "../scheme/generalisations.ts";
import type { Scheme } from "../scheme/scheme.ts";
import type { GeneralisedTo, ShownCoarser } from "./contracts.ts";
import { escapeHtml } from "./markdown.ts";
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

/** What a page says of one entry. @example saidOf({ of: "", level: "10 km", scope: "", … }) // => "Shown at 10 km" */
function levelInWords(level: ShownCoarser["level"]): string {
  return level === "withheld" ? "place withheld" : `shown at ${level}`;
}

/** The sentences of the methods page: the rule, then every entry of the list in its own words. */
export function sensitiveStatements(scheme: Scheme, names: ReadonlyMap<string, TaxonNames>): string[] {
  if (scheme.sensitive.length === 0) return [];
  const entries = scheme.sensitive.map((entry) => {
    const name = escapeHtml(names.get(entry.taxonID)?.vernacularName ?? entry.taxonID);
    const scope = scopeInWords(entry, scheme.settings);
    return `<li><b>${name}</b>${scope === "" ? "" : ` (${escapeHtml(scope)})`}: ${levelInWords(entry.level)}. ${escapeHtml(sentence(entry.reason))} To be looked at again by ${dayInWords(entry.reviewDate)}.</li>`;
  });
  return [
    "Records that could do harm are shown no finer than the scheme’s list allows: the square is cut off at that size, never moved. A record whose place is withheld is on no map and still counts in seasons, years and totals. Every map, count, sentence and table is made from the records as they are shown.",
    scheme.landSquares !== null && scheme.sensitive.some(({ level }) => level === "10 km")
      ? "Where a 10 km square has land in a single 2 km square it would tell as much as that one, and the place is withheld."
      : "",
    "A record shown coarser than it is known makes a visit of its own and covers no square for another species; so what else is told of a square does not lead to it.",
    `<ul>${entries.join("")}</ul>`,
  ];
}

function dayInWords(date: string): string {
  const options = { day: "numeric", month: "long", year: "numeric", timeZone: "UTC" } as const;
  return new Date(`${date}T00:00:00Z`).toLocaleDateString("en-GB", options).replaceAll(" ", "\u00a0");
}

/** A text of the list as a sentence, with its full stop. */
function sentence(text: string): string {
  const trimmed = text.trim();
  return `${trimmed.charAt(0).toUpperCase()}${trimmed.slice(1)}${/[.!?]$/.test(trimmed) ? "" : "."}`;
}
