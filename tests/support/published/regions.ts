import type { HectadSummary, RegionFile, RegionsFile, TaxonFile } from "../../../src/publishing/contracts.ts";
import { total } from "./numbers.ts";

const COUNTIES = [
  { region_id: "north-hills", slug: "north-hills", name: "North Hills", code: "N" },
  { region_id: "south-downs", slug: "south-downs", name: "South Downs", code: "" },
] as const;

/** Two regions of one layer, of the names that the figures of a taxon have, and what was recorded in each. */
export function regionFiles(hectads: readonly HectadSummary[], taxa: readonly TaxonFile[]): RegionFile[] {
  const half = Math.ceil(hectads.length / 2);
  return COUNTIES.map((county, index) => regionFile(county, hectads.slice(index * half, (index + 1) * half), taxa));
}

function regionFile(
  county: (typeof COUNTIES)[number],
  hectads: readonly HectadSummary[],
  taxa: readonly TaxonFile[],
): RegionFile {
  const records = total(hectads.map((square) => square.records));
  const [square] = hectads;
  return {
    ...{ field: "county", territory: "britain", ...county },
    ...{ records, records_stated: Math.floor(records / 2), taxa: taxa.length, hectads: hectads.length },
    ...{ tetrads: hectads.length * 12, first_year: 1990, last_year: 2024 },
    ...{ land_hectads_inside: hectads.length, land_hectads_boundary: 0 },
    taxa_list: taxa.slice(1).map(({ slug }, index) => ({
      ...{ slug, records: 90 - 10 * index, hectads: hectads.length, tetrads: 9, first_year: 1990, last_year: 2024 },
    })),
    expected: taxa.slice(0, 1).map(({ slug }) => ({
      ...{ slug, chance: 420, squares_near: 20, squares_with: 9, visits_here: 3, last_year: null },
      ...{ months: [10, 24] as [number, number], square: square?.square ?? "", square_slug: square?.slug ?? "" },
    })),
  };
}

/** The one layer of the fixture's regions. */
export function regionsFile(files: readonly RegionFile[]): RegionsFile {
  const regions = files.map(({ taxa_list: _taxa, expected: _expected, ...summary }) => summary);
  const not_assigned = { records: 3, boundary: 1, outside: 1, no_square: 1 };
  return { land_known: true, layers: [{ field: "county", regions, not_assigned }] };
}
