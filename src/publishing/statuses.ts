import type { Scheme } from "../scheme/scheme.ts";
import type { TaxonStatus } from "./contracts.ts";

/**
 * The lists a taxon is in, in the order of `statuses.csv`. Age is counted in whole years at the edition's date, since
 * a list gives only its year.
 *
 * @param taxonId of the checklist
 * @param scheme its statuses, edition and `status_years`
 * @returns none where no list names it
 * @example statusesOf("invented-ruderarius", scheme)[0]?.old // true, for a list of 2012 in an edition of 2025
 */
export function statusesOf(
  taxonId: string,
  { statuses, settings }: Pick<Scheme, "statuses" | "settings">,
): TaxonStatus[] {
  const edition = Number(settings.edition.date.slice(0, 4));
  return statuses
    .filter((row) => row.taxonID === taxonId)
    .map(({ list, category, year, jurisdiction, citation, url }) => {
      const old = edition - year > settings.status_years;
      return { list, category, year, jurisdiction, citation, url, old };
    });
}
