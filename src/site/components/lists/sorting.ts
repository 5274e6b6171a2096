import type { TaxonSummary } from "../../../publishing/contracts.ts";
import { withoutMarks } from "../../words/fallback.ts";
import { language } from "../../words/language.ts";
import { season } from "../charts/season.ts";

/** The orders of the species table; each is a page of its own. */
export const ORDERS = ["squares", "season", "name", "change"] as const;
export type Order = (typeof ORDERS)[number];

/**
 * Taxa in one order: by squares of the latest period, by the date by which half of the dated records had been made, by
 * shown name, or by net change; what has too few records for a season, or cannot be judged, stands last.
 *
 * @param taxa is not changed
 * @param order of the table
 * @example inOrder(taxa, "name").map(({ short_name }) => short_name) // ["Buff-tailed", "Red-tailed"]
 */
export function inOrder(taxa: readonly TaxonSummary[], order: Order): TaxonSummary[] {
  const inLanguage = new Intl.Collator(language()).compare;
  const byName = (one: TaxonSummary, other: TaxonSummary) =>
    inLanguage(withoutMarks(one.vernacular_name), withoutMarks(other.vernacular_name));
  const bySquares = (one: TaxonSummary, other: TaxonSummary) =>
    other.hectads_latest - one.hectads_latest || byName(one, other);
  const change = ({ change: row }: TaxonSummary) => (row?.judged === true ? (row.net_percent ?? -Infinity) : -Infinity);
  const byChange = (one: TaxonSummary, other: TaxonSummary) => change(other) - change(one) || bySquares(one, other);
  const median = new Map(taxa.map((taxon) => [taxon, season(taxon.season)?.median ?? Infinity]));
  const bySeason = (one: TaxonSummary, other: TaxonSummary) => {
    const [first = Infinity, second = Infinity] = [median.get(one), median.get(other)];
    return first === second ? bySquares(one, other) : first - second;
  };
  return [...taxa].sort({ name: byName, change: byChange, season: bySeason, squares: bySquares }[order]);
}

/**
 * A scientific name with its genus cut to a letter, where the whole list is of one genus.
 *
 * @example shortScientific("Bombus lapidarius", ["Bombus lapidarius", "Bombus terrestris"]) // "B. lapidarius"
 */
export function shortScientific(name: string, all: readonly string[]): string {
  const [genus = "", ...rest] = name.split(" ");
  const one = all.every((other) => other.startsWith(`${genus} `));
  return one && rest.length > 0 && all.length > 1 ? `${genus.charAt(0)}. ${rest.join(" ")}` : name;
}
