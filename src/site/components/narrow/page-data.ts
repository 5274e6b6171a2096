/** What the page carries for its script, beside its words. */
import type { MapGrid } from "./map-grids.ts";

/** Data of the page, in an element with the id `narrow-data`. */
export interface PageData {
  /** Visits to the group in thirds of the month. */
  readonly visits: readonly number[];
  readonly castes: readonly { readonly id: string; readonly label: string }[];
  /** Name of the group, many of it. */
  readonly group: string;
  readonly mapGrids: readonly MapGrid[];
  /** A code to show as an example. */
  readonly example: string;
  /** Visits added to those of a neighbourhood are told on the methods page; this is where the tables are. */
  readonly addresses: {
    readonly identify: string;
    readonly places: string;
    readonly species: string;
    readonly tellApart: string;
    readonly outside: string;
  };
}

/** Reads the data of the page. @throws where the page has none */
export function pageData(): PageData {
  return JSON.parse(document.getElementById("narrow-data")?.textContent ?? "") as PageData;
}
