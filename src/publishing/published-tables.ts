/** The tables researchers download: their columns with type and meaning, and the query that fills each from the measures. */
import { ACCOUNTING_TABLES } from "./tables/accounting.ts";
import { COVERAGE_TABLES } from "./tables/coverage.ts";
import { EXPECTED_TABLES } from "./tables/expected.ts";
import type { PublishedTable } from "./tables/fields.ts";
import { LOCAL_FREQUENCY_TABLES } from "./tables/local-frequency.ts";
import { RANGES_TABLES } from "./tables/ranges.ts";
import { REGIONS_TABLES } from "./tables/regions.ts";
import { SEASONS_TABLES } from "./tables/seasons.ts";
import { SQUARES_TABLES } from "./tables/squares.ts";
import { SURROUNDINGS_TABLES } from "./tables/surroundings.ts";
import { TAXA_TABLES } from "./tables/taxa.ts";
import { TRENDS_TABLES } from "./tables/trends.ts";

export type { Field, PublishedTable } from "./tables/fields.ts";

/** Every table, a table after those its keys point to. */
export const PUBLISHED_TABLES: readonly PublishedTable[] = [
  ...TAXA_TABLES,
  ...SQUARES_TABLES,
  ...COVERAGE_TABLES,
  ...EXPECTED_TABLES,
  ...TRENDS_TABLES,
  ...LOCAL_FREQUENCY_TABLES,
  ...SEASONS_TABLES,
  ...SURROUNDINGS_TABLES,
  ...RANGES_TABLES,
  ...REGIONS_TABLES,
  ...ACCOUNTING_TABLES,
];

/** A table by name; throws for a name that is not there, which is our bug. */
export function publishedTable(name: string): PublishedTable {
  const table = PUBLISHED_TABLES.find((one) => one.name === name);
  if (table === undefined) throw new Error(`no published table ${name}`);
  return table;
}
