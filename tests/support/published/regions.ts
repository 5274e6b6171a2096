import type { HectadSummary, RegionFile, RegionsFile, TaxonFile } from "../../../src/publishing/contracts.ts";
import { total } from "./numbers.ts";

const COUNTY = {
  field: "region",
  region_id: "north-county",
  slug: "north-county",
  name: "North County",
  code: "N",
  territory: "britain",
} as const;

/** The region that all squares of the fixture lie in, and what was recorded there. */
export function regionFile(hectads: readonly HectadSummary[], taxa: readonly TaxonFile[]): RegionFile {
  const records = total(hectads.map((square) => square.records));
  const square = hectads[0] as HectadSummary;
  return {
    ...COUNTY,
    ...{ records, records_stated: Math.floor(records / 2), taxa: taxa.length, hectads: hectads.length },
    ...{ tetrads: hectads.length * 12, first_year: 1990, last_year: 2024 },
    ...{ land_hectads_inside: hectads.length, land_hectads_boundary: 0 },
    taxa_list: taxa.slice(1).map(({ slug }, index) => ({
      ...{ slug, records: 90 - 10 * index, hectads: hectads.length, tetrads: 9, first_year: 1990, last_year: 2024 },
    })),
    expected: taxa.slice(0, 1).map(({ slug }) => ({
      ...{ slug, chance: 420, squares_near: 20, squares_with: 9, visits_here: 3, last_year: null },
      ...{ months: [10, 24] as [number, number], square: square.square, square_slug: square.slug },
    })),
  };
}

/** One layer with one region. */
export function regionsFile({ taxa_list: _taxa, expected: _expected, ...summary }: RegionFile): RegionsFile {
  const not_assigned = { records: 3, boundary: 1, outside: 1, no_square: 1 };
  return { land_known: true, layers: [{ field: COUNTY.field, regions: [summary], not_assigned }] };
}
