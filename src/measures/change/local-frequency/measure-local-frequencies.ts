import type { ColumnType, Database } from "../../../engine/database.ts";
import { fillColumns } from "../../../engine/fill-rows.ts";
import { generalisationsOf, hiddenAt } from "../../../scheme/generalisations.ts";
import type { Scheme } from "../../../scheme/scheme.ts";
import { EVIDENCE_SETS, laySet } from "../evidence-sets.ts";
import { type GroupEvidence, readGroup } from "../group-evidence.ts";
import { whyTooSmall } from "../group-trend.ts";
import { localFrequencies } from "./local-frequencies.ts";
import { neighbourhoods } from "./neighbourhoods.ts";
import { timeFactors } from "./time-factors.ts";

const EFFORT_COLUMNS = {
  grid: "text",
  square: "text",
  period: "integer",
  neighbourhood_frequency: "double",
  effort_multiplier: "double",
  benchmark_share: "double",
} as const satisfies Record<string, ColumnType>;

const FACTOR_COLUMNS = {
  taxon_id: "text",
  period: "integer",
  squares: "integer",
  time_factor: "double",
  time_factor_se: "double",
} as const satisfies Record<string, ColumnType>;

type Rows<Columns> = Record<keyof Columns, (string | number | null)[]>;

/**
 * Fills `square_recording_effort` and `taxon_time_factors`, the local frequencies as published, from the first set of
 * evidence; see `localFrequencies` and `timeFactors`. Both are empty where the group is too small. Of taxa whose places are
 * withheld no factor is given.
 */
export async function measureLocalFrequencies(database: Database, scheme: Scheme): Promise<void> {
  const { settings } = scheme;
  const minimums = settings.change.local_frequency;
  const [main] = EVIDENCE_SETS;
  if (main !== undefined) await laySet(database, main);
  const group = await readGroup(database, settings.periods.length);
  const isLarge = whyTooSmall(group.presence.taxa.length, minimums.minimum_taxa) === "";
  const isShown = (id: string) =>
    hiddenAt({ resolution_m: 10_000, territory: "all" }, generalisationsOf(scheme, id)) === "";
  const { effort, factors } = isLarge
    ? rowsOf(group, minimums, isShown)
    : { effort: emptyOf(EFFORT_COLUMNS), factors: emptyOf(FACTOR_COLUMNS) };
  await fillColumns(database, "square_recording_effort", EFFORT_COLUMNS, effort);
  await fillColumns(database, "taxon_time_factors", FACTOR_COLUMNS, factors);
  await database.run(
    "DROP TABLE group_taxa; DROP TABLE group_squares; DROP TABLE group_visits; DROP TABLE group_places",
  );
}

function rowsOf(
  { presence, positions }: GroupEvidence,
  options: Scheme["settings"]["change"]["local_frequency"],
  isShown: (id: string) => boolean,
): { effort: Rows<typeof EFFORT_COLUMNS>; factors: Rows<typeof FACTOR_COLUMNS> } {
  const local = localFrequencies(presence, neighbourhoods(positions, presence, options), options);
  const { benchmarkShares, squares, factors, errors } = timeFactors(presence, local);
  const rows = { effort: emptyOf(EFFORT_COLUMNS), factors: emptyOf(FACTOR_COLUMNS) };
  benchmarkShares.forEach((share, at) => {
    const square = at % presence.squares.length;
    const [grid, reference] = (presence.squares[square] as string).split(" ") as [string, string];
    rows.effort.grid.push(grid);
    rows.effort.square.push(reference);
    rows.effort.period.push(Math.floor(at / presence.squares.length));
    rows.effort.neighbourhood_frequency.push(local.neighbourhoodFrequency[square] as number);
    rows.effort.effort_multiplier.push(local.effortMultiplier[square] as number);
    rows.effort.benchmark_share.push(share);
  });
  factors.forEach((factor, at) => {
    const taxon = presence.taxa[at % presence.taxa.length] as string;
    if (!isShown(taxon)) return;
    rows.factors.taxon_id.push(taxon);
    rows.factors.period.push(Math.floor(at / presence.taxa.length));
    rows.factors.squares.push(squares[at] as number);
    rows.factors.time_factor.push(Number.isFinite(factor) ? factor : null);
    rows.factors.time_factor_se.push(Number.isFinite(errors[at]) ? (errors[at] as number) : null);
  });
  return rows;
}

function emptyOf<Columns extends object>(columns: Columns): Rows<Columns> {
  return Object.fromEntries(Object.keys(columns).map((name) => [name, []])) as unknown as Rows<Columns>;
}
