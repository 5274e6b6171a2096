import type { Database } from "../../engine/database.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import type { SeasonDatesRow, SeasonShiftRow } from "../contracts.ts";
import { rowsByTaxon } from "./rows-by-taxon.ts";

/** Dates of the season of every taxon: castes in the order of the settings, all together first and not stated last. */
export async function seasonDatesRows(database: Database, scheme: Scheme): Promise<Map<string, SeasonDatesRow[]>> {
  const found = await rowsByTaxon<Omit<SeasonDatesRow, "caste_label">>(
    database,
    `SELECT taxon_id, caste, territory, period, basis, n, vague, of_no_season, day_10, day_25, day_50, day_75, day_90, median_low, median_high, judged, reason
     FROM season_figures ORDER BY taxon_id, territory <> 'all', territory, period <> 'all', period, caste, basis`,
  );
  return inOrderOfCastes(found, scheme);
}

/** How the season of every taxon moved, castes in the same order. */
export async function seasonShiftRows(database: Database, scheme: Scheme): Promise<Map<string, SeasonShiftRow[]>> {
  const found = await rowsByTaxon<Omit<SeasonShiftRow, "caste_label">>(
    database,
    `SELECT taxon_id, caste, method, share, adjusted, first_year, last_year, years, n, shift, low, high, judged, reason
     FROM season_shifts ORDER BY taxon_id, caste, NOT adjusted, method, share`,
  );
  return inOrderOfCastes(found, scheme);
}

function inOrderOfCastes<Row extends { caste: string }>(
  found: ReadonlyMap<string, readonly Row[]>,
  { settings: { castes } }: Scheme,
): Map<string, (Row & { caste_label: string })[]> {
  const labels = new Map([
    ["all", castes.length === 0 ? "All records" : "All castes"],
    ...castes.map(({ id, label }) => [id, label] as const),
    ["not_stated", "Not stated"],
  ]);
  // Where nothing is told apart, what states nothing is everything.
  const shown = [...labels.keys()].filter((id) => castes.length > 0 || id !== "not_stated");
  return new Map(
    [...found].map(([taxon, rows]) => [
      taxon,
      rows
        .filter(({ caste }) => shown.includes(caste))
        .toSorted((a, b) => shown.indexOf(a.caste) - shown.indexOf(b.caste))
        .map((row) => ({ ...row, caste_label: labels.get(row.caste) ?? row.caste })),
    ]),
  );
}
