import type { Database } from "../../engine/database.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import type { FiguresFile } from "../contracts.ts";
import { rangeRows } from "./range-figures.ts";
import { regionRows } from "./region-figures.ts";
import { seasonDatesRows, seasonShiftRows } from "./season-figures.ts";
import { useRows } from "./surroundings-figures.ts";
import { seriesRows, spreadRows, trendRows } from "./trend-figures.ts";

type Part = Exclude<keyof FiguresFile, "taxon_id" | "slug">;

/** The figures of all taxa, by part and taxon. */
export type Figures = { [Name in Part]: ReadonlyMap<string, FiguresFile[Name]> };

/** Gathers the figures of all taxa from the measure tables, each table read once. */
export async function gatherFigures(database: Database, scheme: Scheme): Promise<Figures> {
  return {
    trends: await trendRows(database, scheme),
    series: await seriesRows(database, scheme),
    spread: await spreadRows(database),
    surroundings: await useRows(database, scheme),
    seasons: await seasonDatesRows(database, scheme),
    shifts: await seasonShiftRows(database, scheme),
    ranges: await rangeRows(database),
    regions: await regionRows(database, scheme),
  };
}

/** The figures of one taxon; a part without rows is empty. */
export function figuresOf(figures: Figures, taxonId: string): Omit<FiguresFile, "taxon_id" | "slug"> {
  const parts = Object.entries(figures).map(([name, rows]) => [name, rows.get(taxonId) ?? []]);
  return Object.fromEntries(parts) as Omit<FiguresFile, "taxon_id" | "slug">;
}
