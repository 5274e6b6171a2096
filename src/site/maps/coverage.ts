import type { AtlasFile, HectadSummary } from "../../publishing/contracts.ts";

/** Hectads of one territory, or of all, by how well they were visited. */
export interface CoverageRow {
  readonly territory: string;
  readonly name: string;
  readonly land: number;
  /** Squares that reach the atlas's number of visits, one number a period. */
  readonly covered: readonly number[];
  readonly coveredInAll: number;
  readonly neverVisited: number;
}

/**
 * How the land squares of each territory were visited, by the atlas's number of visits in each period. For one
 * species a little less is covered, because there its own records do not count.
 *
 * @param hectads squares of the atlas; those not on land are left out
 * @param atlas territories, periods and the number of visits that covers a square
 * @returns a row for each territory in the atlas's order, and one for all where there are several
 * @example coverageRows(hectads, atlas).at(-1).land // 3904
 */
export function coverageRows(
  hectads: readonly HectadSummary[],
  {
    territories,
    periods,
    coverage_minimum_visits,
  }: Pick<AtlasFile, "territories" | "periods" | "coverage_minimum_visits">,
): CoverageRow[] {
  const land = hectads.filter((hectad) => hectad.on_land);
  const reaches = (hectad: HectadSummary, period: number) => (hectad.visits[period] ?? 0) >= coverage_minimum_visits;
  const row = (territory: string, name: string, of: readonly HectadSummary[]): CoverageRow => ({
    territory,
    name,
    land: of.length,
    covered: periods.map((_, period) => of.filter((hectad) => reaches(hectad, period)).length),
    coveredInAll: of.filter((hectad) => periods.every((_, period) => reaches(hectad, period))).length,
    neverVisited: of.filter((hectad) => hectad.visits.every((visits) => visits === 0)).length,
  });
  const rows = territories.map(({ id, name }) =>
    row(
      id,
      name,
      land.filter((hectad) => hectad.territory === id),
    ),
  );
  return territories.length > 1 ? [...rows, row("all", "All", land)] : rows;
}
