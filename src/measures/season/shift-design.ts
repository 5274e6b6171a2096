import type { QuantileCells } from "../statistics/quantile-regression.ts";
import { solvePositive } from "../statistics/solve-positive.ts";
import type { RecordingWindow } from "./recording-window.ts";
import type { SettledRow } from "./shift.ts";

/** What the day is regressed on: a constant, the year in decades, then what is allowed for. */
export interface ShiftDesign {
  readonly cells: QuantileCells;
  /** Years in order; a cell's cluster is the place of its year. */
  readonly years: readonly number[];
  /** Visits in it. */
  readonly n: number;
  /** Share of the year's variance that what is allowed for goes along with, 0 to 1. */
  readonly entangled: number;
  /** How fast each covariate changes with the second, the year: 1 for itself, 0 for the constant. */
  readonly drift: readonly number[];
}

/** Visits that a caste or territory must have to be a level of its own; with fewer its rows are left out. */
const FEWEST_OF_LEVEL = 30;

/**
 * The design of a regression of the day of the season on the year, allowing for latitude, territory and caste. Rows without
 * a latitude or of weight 0 are left out.
 *
 * @param years those told of, in order
 * @example shiftDesign(rows, years, window).cells.size // => 3, with one caste and territory
 */
export function shiftDesign(
  rows: readonly SettledRow[],
  years: readonly number[],
  window: Pick<RecordingWindow, "weight">,
): ShiftDesign {
  const cluster = new Map(years.map((year, index) => [year, index]));
  const weighed = rows.flatMap((row) => {
    const weight =
      cluster.has(row.season_year) && row.band !== null ? window.weight(row.season_year, row.season_day) : 0;
    return weight > 0 ? [{ row, weight: weight * row.visits }] : [];
  });
  const castes = levelsOf(
    weighed.map(({ row }) => row),
    "caste",
    1,
  );
  const territories = levelsOf(
    weighed.map(({ row }) => row),
    "territory",
    1,
  );
  const middle = ((years[0] ?? 0) + (years.at(-1) ?? 0)) / 2;
  const bands = new Set(weighed.map(({ row }) => row.band));
  const [lowest, highest] = [Math.min(...(bands as Set<number>)), Math.max(...(bands as Set<number>))];
  const covariatesOf = ({ season_year, band, caste, territory }: SettledRow): number[] => [
    1,
    (season_year - middle) / 10,
    ...(bands.size > 1 ? [((band as number) - (lowest + highest) / 2) / 2] : []),
    ...castes.slice(1).map((level) => (level === caste ? 1 : 0)),
    ...territories.slice(1).map((level) => (level === territory ? 1 : 0)),
  ];
  const groups = Map.groupBy(weighed, ({ row }) => [row.season_year, row.band, row.caste, row.territory].join("\t"));
  const cells = [...groups.values()].map((own) => {
    const { row } = own[0] as (typeof weighed)[number];
    return { covariates: covariatesOf(row), cluster: cluster.get(row.season_year) as number, days: own };
  });
  return {
    cells: cellsOf(cells, years.length),
    years,
    n: weighed.reduce((sum, { row }) => sum + row.visits, 0),
    ...alongWithYears(
      cells.map(({ covariates, days }) => [covariates, days.reduce((sum, { weight }) => sum + weight, 0)]),
    ),
  };
}

/**
 * Rows of castes and territories that have visits enough to be levels of their own.
 *
 * @example ofEnoughLevels([{ caste: "queen", territory: "", visits: 29, … }]) // => []
 */
export function ofEnoughLevels(rows: readonly SettledRow[]): SettledRow[] {
  const castes = levelsOf(rows, "caste", FEWEST_OF_LEVEL);
  const territories = levelsOf(rows, "territory", FEWEST_OF_LEVEL);
  return rows.filter(({ caste, territory }) => castes.includes(caste) && territories.includes(territory));
}

/** Levels with visits enough, most visits first, for the others are set against the first. */
function levelsOf(rows: readonly SettledRow[], of: "caste" | "territory", fewest: number): string[] {
  const totals = new Map<string, number>();
  for (const row of rows) totals.set(row[of], (totals.get(row[of]) ?? 0) + row.visits);
  const levels = [...totals].filter(([, visits]) => visits >= fewest);
  return levels.sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1)).map(([level]) => level);
}

interface Cell {
  readonly covariates: readonly number[];
  readonly cluster: number;
  readonly days: readonly { row: SettledRow; weight: number }[];
}

function cellsOf(cells: readonly Cell[], clusters: number): QuantileCells {
  const size = cells[0]?.covariates.length ?? 2;
  const firsts = cells.map(({ days }) => Math.min(...days.map(({ row }) => row.season_day)));
  const lengths = cells.map(
    ({ days }, i) => Math.max(...days.map(({ row }) => row.season_day)) - (firsts[i] as number) + 1,
  );
  const start = new Int32Array(cells.length + 1);
  lengths.forEach((length, i) => (start[i + 1] = (start[i] as number) + length));
  const totals = new Float64Array(start[cells.length] as number);
  cells.forEach(({ days }, i) => {
    const [begin, end] = [start[i] as number, start[i + 1] as number];
    for (const { row, weight } of days) {
      const at = begin + row.season_day - (firsts[i] as number);
      totals[at] = (totals[at] as number) + weight;
    }
    for (let at = begin + 1; at < end; at += 1) totals[at] = (totals[at] as number) + (totals[at - 1] as number);
  });
  return {
    covariates: Float64Array.from(cells.flatMap(({ covariates }) => covariates)),
    ...{ size, first: Int32Array.from(firsts), start, totals },
    ...{ cluster: Int32Array.from(cells, ({ cluster }) => cluster), clusters },
  };
}

/** How covariates go along with the year: by least squares, each on the year, and the year on all others. */
function alongWithYears(
  rows: readonly (readonly [covariates: readonly number[], weight: number])[],
): Pick<ShiftDesign, "entangled" | "drift"> {
  const size = rows[0]?.[0].length ?? 2;
  const products = new Float64Array(size * size);
  for (const [covariates, weight] of rows)
    for (let j = 0; j < size; j += 1)
      for (let k = 0; k < size; k += 1)
        products[j * size + k] =
          (products[j * size + k] as number) + weight * (covariates[j] as number) * (covariates[k] as number);
  const of = (j: number, k: number) => products[j * size + k] as number;
  const together = (j: number) => of(1, j) - (of(0, 1) * of(0, j)) / of(0, 0);
  const drift = Array.from({ length: size }, (_, j) => (j === 0 ? 0 : together(j) / together(1)));
  const ofYear = together(1);
  const unit = Float64Array.from(drift, (_, j) => (j === 1 ? 1 : 0));
  const left = solvePositive(products.slice(), unit, size);
  return { drift, entangled: left === null || ofYear <= 0 ? 1 : 1 - 1 / ((left[1] as number) * ofYear) };
}
