import type { ColumnType, Database } from "../../engine/database.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import { comparedPeriods } from "../../scheme/settings-agree.ts";
import { EVIDENCE_SETS, type EvidenceSet, laySet } from "./evidence-sets.ts";
import type { SeriesPoint, TellChange, Trend } from "./trend.ts";

/** The methods, in the order their lines are shown. */
const METHODS: readonly TellChange[] = [];

const TREND_COLUMNS: Readonly<Record<keyof Trend, ColumnType>> = {
  taxon_id: "text",
  method: "text",
  evidence_set: "text",
  from_period: "integer",
  to_period: "integer",
  n_from: "integer",
  n_to: "integer",
  n: "integer",
  estimate: "double",
  low: "double",
  high: "double",
  judged: "boolean",
  reason: "text",
};

const SERIES_COLUMNS: Readonly<Record<keyof SeriesPoint, ColumnType>> = {
  taxon_id: "text",
  method: "text",
  unit: "text",
  time: "integer",
  n: "integer",
  estimate: "double",
  low: "double",
  high: "double",
  provisional: "boolean",
};

/**
 * Fills `trends`, what each method says of each taxon between each two periods from each set of evidence, and `series`.
 * Both are empty in an atlas of one period.
 *
 * @param sets the sets to tell them from, the headline one first
 */
export async function tellTrends(
  database: Database,
  scheme: Scheme,
  sets: readonly EvidenceSet[] = EVIDENCE_SETS,
): Promise<void> {
  const pairs = pairsOfPeriods(scheme);
  const trends: Trend[][] = [];
  const series: SeriesPoint[][] = [];
  for (const set of pairs.length === 0 ? [] : sets) {
    await laySet(database, set);
    for (const method of METHODS) {
      const told = await method({ database, scheme, set, pairs });
      trends.push(told.trends);
      if (set === sets[0]) series.push(told.series);
    }
  }
  await fillRows(database, "trends", TREND_COLUMNS, trends.flat());
  await fillRows(database, "series", SERIES_COLUMNS, series.flat());
}

/** The compared pair first, then each period with the one after it. */
function pairsOfPeriods({ settings }: Scheme): [number, number][] {
  const compared = comparedPeriods(settings);
  if (compared === null) return [];
  const next = settings.periods.slice(1).map((_, index): [number, number] => [index, index + 1]);
  return [compared, ...next.filter(([from, to]) => from !== compared[0] || to !== compared[1])];
}

async function fillRows<Row extends object>(
  database: Database,
  table: string,
  columns: Readonly<Record<keyof Row & string, ColumnType>>,
  rows: readonly Row[],
): Promise<void> {
  const filler = await database.fill(table, columns);
  const names = Object.keys(columns) as (keyof Row & string)[];
  filler.add(Object.fromEntries(names.map((name) => [name, rows.map((row) => row[name] as string | number | null)])));
  filler.done();
}
