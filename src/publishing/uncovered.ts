import type { Database } from "../engine/database.ts";
import type { TaxonFile } from "./contracts.ts";

/**
 * For every taxon the hectads where it was never recorded and which are not covered for it in
 * one or both: what the maps hatch. Land squares nobody visited are covered in neither.
 *
 * @param onePeriod with one period a square is either covered or not
 */
export async function uncoveredSquares(
  database: Database,
  taxonIds: readonly string[],
  onePeriod: boolean,
): Promise<Map<string, TaxonFile["uncovered"]>> {
  const never = await database.rows<{ square: string }>(
    "SELECT square FROM square_places WHERE resolution_m = 10000 AND square NOT IN (SELECT square FROM visited_squares WHERE resolution_m = 10000) ORDER BY square",
  );
  const all = new Map<string, TaxonFile["uncovered"]>(
    taxonIds.map((id) => [id, { neither: never.map(({ square }) => square), later_only: [], earlier_only: [] }]),
  );
  await database.batches(
    `SELECT taxon_id, square, covered_from, covered_to FROM square_states
     WHERE resolution_m = 10000 AND NOT recorded_ever AND NOT (covered_from AND covered_to) ORDER BY taxon_id, square`,
    (columns, size) => {
      for (let index = 0; index < size; index += 1) {
        const uncovered = all.get(String(columns["taxon_id"]?.[index]));
        const square = String(columns["square"]?.[index]);
        const [from, to] = [columns["covered_from"]?.[index] === true, columns["covered_to"]?.[index] === true];
        if (uncovered === undefined || (onePeriod && to)) continue;
        if (from) uncovered.earlier_only.push(square);
        else if (to) uncovered.later_only.push(square);
        else uncovered.neither.push(square);
      }
    },
  );
  for (const { neither } of all.values()) neither.sort();
  return all;
}
