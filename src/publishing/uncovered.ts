import type { Database } from "../engine/database.ts";
import type { TaxonFile } from "./contracts.ts";

interface Covered {
  square: string;
  covered_from: boolean;
  covered_to: boolean;
}

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
  const squares = await database.rows<Covered>(
    `SELECT p.square, coalesce(v.covered_from, false) AS covered_from, coalesce(v.covered_to, false) AS covered_to
     FROM square_places AS p LEFT JOIN visited_squares AS v USING (grid, resolution_m, square)
     WHERE p.resolution_m = 10000 ORDER BY p.square`,
  );
  const exceptions = await exceptionsOf(database);
  return new Map(taxonIds.map((id) => [id, uncoveredOf(squares, exceptions.get(id) ?? new Map(), onePeriod)]));
}

/** Hectads where coverage for a taxon is not what it is for others; null where the taxon was recorded. */
async function exceptionsOf(database: Database): Promise<Map<string, Map<string, Covered | null>>> {
  const all = new Map<string, Map<string, Covered | null>>();
  const query =
    "SELECT taxon_id, square, recorded_ever, covered_from, covered_to FROM square_states WHERE resolution_m = 10000";
  await database.batches(query, (columns, size) => {
    for (let index = 0; index < size; index += 1) {
      const at = (name: string) => columns[name]?.[index];
      const [taxon, square] = [String(at("taxon_id")), String(at("square"))];
      const own = all.get(taxon) ?? new Map<string, Covered | null>();
      all.set(taxon, own);
      const covered = { square, covered_from: at("covered_from") === true, covered_to: at("covered_to") === true };
      own.set(square, at("recorded_ever") === true ? null : covered);
    }
  });
  return all;
}

function uncoveredOf(
  squares: readonly Covered[],
  exceptions: ReadonlyMap<string, Covered | null>,
  onePeriod: boolean,
): TaxonFile["uncovered"] {
  const uncovered: TaxonFile["uncovered"] = { neither: [], later_only: [], earlier_only: [] };
  for (const usual of squares) {
    const exception = exceptions.get(usual.square);
    if (exception === null) continue;
    const { square, covered_from, covered_to } = exception ?? usual;
    if (covered_to && (covered_from || onePeriod)) continue;
    if (covered_from) uncovered.earlier_only.push(square);
    else if (covered_to) uncovered.later_only.push(square);
    else uncovered.neither.push(square);
  }
  return uncovered;
}
