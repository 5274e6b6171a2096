import type { FixtureTaxon } from "./fixture-taxa.ts";

/** What kind of atlas to invent. */
export interface FixtureShape {
  /** Number of taxa, at most 6. */
  readonly taxa?: number;
  /** Other taxa than the six of this folder. */
  readonly list?: readonly FixtureTaxon[];
  /** British hectad codes; six squares round one corner by default. */
  readonly hectads?: readonly string[];
  /** One or two periods. */
  readonly periods?: 1 | 2;
  /** Without accounts, characters, castes, body plan and base map, as a scheme that has only records. */
  readonly bare?: boolean;
  /** Further languages of the site. */
  readonly languages?: readonly string[];
  /** With two regions, and the pages of them. */
  readonly regions?: boolean;
  /** Folder of base map files to copy. */
  readonly basemap?: string;
}
