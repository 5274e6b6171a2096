import { type Database, sqlBeside, type TableFiller } from "../../engine/database.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import { expectedRichness, type Incidence, sampleCoverage, withoutSingles } from "./chao2.ts";

/** How complete the list of a square is; without numbers, and with the reason, where there are too few visits. */
export interface Richness {
  expected: number | null;
  low: number | null;
  high: number | null;
  completeness: number | null;
  sample_coverage: number | null;
  expected_without_single_records: number | null;
  completeness_without_single_records: number | null;
  judged: boolean;
  reason: string;
}

const COLUMNS = {
  territory: "text",
  grid: "text",
  resolution_m: "integer",
  square: "text",
  span: "integer",
  visits: "integer",
  observed: "integer",
  single_records: "integer",
  expected: "double",
  low: "double",
  high: "double",
  completeness: "double",
  sample_coverage: "double",
  expected_without_single_records: "double",
  completeness_without_single_records: "double",
  judged: "boolean",
  reason: "text",
} as const;

/**
 * Tells from a square's visits how many taxa they can find there and how many of these they found.
 *
 * @param sample counts of the visits of one square
 * @param singles taxa that rest on a single record in it
 * @param minimum visits below which nothing is told; at least 2
 * @returns numbers of taxa, shares of 0 to 1; without single records nothing is told where none is left
 * @example tellRichness({ visits: 4, observed: 3, once: 1, twice: 1, incidences: 6 }, 0, 5).reason // => "4 visits; 5 are needed"
 */
export function tellRichness(sample: Incidence, singles: number, minimum: number): Richness {
  const silent = {
    ...{ expected: null, low: null, high: null, completeness: null, sample_coverage: null },
    ...{ expected_without_single_records: null, completeness_without_single_records: null },
  };
  if (sample.visits < minimum) {
    const visits = sample.visits === 1 ? "1 visit" : `${sample.visits} visits`;
    return { ...silent, judged: false, reason: `${visits}; ${minimum} are needed` };
  }
  const { expected, low, high } = expectedRichness(sample);
  const sure = withoutSingles(sample, singles);
  const expectedSure = sure.observed === 0 ? null : expectedRichness(sure).expected;
  return {
    ...{ expected, low, high },
    completeness: sample.observed / expected,
    sample_coverage: sampleCoverage(sample),
    expected_without_single_records: expectedSure,
    completeness_without_single_records: expectedSure === null ? null : sure.observed / expectedSure,
    judged: true,
    reason: "",
  };
}

/**
 * Fills `square_richness`: for each square and period, and for all dates (span -1), the number of taxa observed and
 * expected on visits. Needs the sightings, `visit_lists` and `closure`.
 *
 * @example await fillSquareRichness(database, scheme) // SELECT observed, expected, completeness FROM square_richness
 */
export async function fillSquareRichness(database: Database, { settings }: Pick<Scheme, "settings">): Promise<void> {
  const { minimum_visits_for_richness: minimum } = settings.coverage;
  await database.run(`CREATE OR REPLACE TABLE richness_rule AS SELECT ${minimum} AS minimum_visits`);
  await database.run(sqlBeside(import.meta.url, "square-samples.sql"));
  const tables: Record<string, unknown[]>[] = [];
  await database.batches("SELECT * FROM square_samples ORDER BY ALL", (columns, size) => {
    tables.push(toldOf(columns, size, minimum));
  });
  const filler = await database.fill("square_richness", COLUMNS);
  for (const columns of tables) filler.add(columns as Parameters<TableFiller["add"]>[0]);
  filler.done();
}

function toldOf(columns: Record<string, unknown[]>, size: number, minimum: number): Record<string, unknown[]> {
  const at = (name: string, index: number) => Number(columns[name]?.[index]);
  const told = Array.from({ length: size }, (_, index) => {
    const [visits, observed, once] = [at("visits", index), at("observed", index), at("once", index)];
    const sample = { visits, observed, once, twice: at("twice", index), incidences: at("incidences", index) };
    return tellRichness(sample, at("singles", index), minimum);
  });
  const kept = ["territory", "grid", "resolution_m", "square", "span", "visits", "observed"] as const;
  const names = Object.keys(COLUMNS).filter((name) => name in (told[0] ?? {})) as (keyof Richness)[];
  return {
    ...Object.fromEntries(kept.map((name) => [name, columns[name]?.slice(0, size) ?? []])),
    single_records: columns["singles"]?.slice(0, size) ?? [],
    ...Object.fromEntries(names.map((name) => [name, told.map((one) => one[name])])),
  };
}
