import type { ColumnType, Database } from "../../engine/database.ts";
import { fillRows } from "../../engine/fill-rows.ts";
import { generalisationsOf, hiddenAt } from "../../scheme/generalisations.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import { EVIDENCE_SETS, type EvidenceSet, laySet } from "./evidence-sets.ts";
import { tellLocalFrequency } from "./local-frequency/tell-local-frequency.ts";
import { pairsOfPeriods } from "./pairs-of-periods.ts";
import { tellRelativeChange } from "./relative-change/tell-relative-change.ts";
import { reportingRate } from "./reporting-rate.ts";
import { squaresCompared } from "./squares-compared.ts";
import type { SeriesPoint, TellChange, Trend } from "./trend.ts";

/** The methods, in the order their lines are shown. */
const METHODS: readonly TellChange[] = [squaresCompared, tellLocalFrequency, reportingRate, tellRelativeChange];

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
 * Both are empty in an atlas of one period. Of taxa whose places are withheld nothing is told.
 *
 * @param sets the sets to tell them from, the headline one first
 */
export async function tellTrends(
  database: Database,
  scheme: Scheme,
  sets: readonly EvidenceSet[] = EVIDENCE_SETS,
): Promise<void> {
  const pairs = pairsOfPeriods(scheme);
  const hidden = hiddenTaxa(scheme);
  const reasonOf = (taxon: string, set: EvidenceSet) =>
    hidden.get(taxon) ?? (set.id === "complete_lists" ? listlessReason(scheme, taxon) : undefined);
  const trends: Trend[][] = [];
  const series: SeriesPoint[][] = [];
  for (const set of pairs.length === 0 ? [] : sets) {
    await laySet(database, set);
    for (const method of METHODS) {
      const told = await method({ database, scheme, set, pairs });
      trends.push(told.trends.map((trend) => silenced(trend, reasonOf(trend.taxon_id, set))));
      if (set === sets[0]) series.push(told.series.filter(({ taxon_id }) => !hidden.has(taxon_id)));
    }
  }
  await fillRows(database, "trends", TREND_COLUMNS, trends.flat());
  await fillRows(database, "series", SERIES_COLUMNS, series.flat());
}

/** Why nothing can be told of the squares of a taxon: those whose places, or some of them, are withheld. */
function hiddenTaxa(scheme: Scheme): Map<string, string> {
  const reason = (id: string) => hiddenAt({ resolution_m: 10_000, territory: "all" }, generalisationsOf(scheme, id));
  return new Map(scheme.taxa.map(({ taxonID }) => [taxonID, reason(taxonID)] as const).filter(([, why]) => why !== ""));
}

/** Why nothing can be told of a taxon from complete lists alone: records shown coarser are part of no list here. */
function listlessReason(scheme: Scheme, taxonId: string): string | undefined {
  const coarser = generalisationsOf(scheme, taxonId).length > 0;
  return coarser ? "its records are shown coarser than they are known, and are part of no list here" : undefined;
}

/** A trend of hidden places is none, whatever the method made of what is left. */
function silenced(trend: Trend, reason: string | undefined): Trend {
  return reason === undefined ? trend : { ...trend, estimate: null, low: null, high: null, judged: false, reason };
}
