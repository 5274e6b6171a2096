import type { Database } from "../engine/database.ts";
import { type ChangeCounts, changeCounts } from "./change-counts.ts";
import type { SquareState, TaxonSquare } from "./contracts.ts";

/** Everything measured about one taxon, gathered from the measure tables. */
export interface Measured {
  totals: {
    records: number;
    visits: number;
    first_year: number | null;
    last_year: number | null;
    hectads: number;
    hectads_latest: number;
    tetrads: number;
    tetrads_latest: number;
  };
  seasonAll: number[];
  season: { caste: string; third: number; records: number; visits: number }[];
  leftOut: { caste: string; records: number }[];
  years: { year: number; records: number; visits: number }[];
  changes: ChangeCounts[];
  offMap: { resolution_m: number; reason: string; records: number }[];
  squares: { "10000": TaxonSquare[]; "2000": TaxonSquare[] };
  latestHectads: string[];
}

const NOTHING = {
  records: 0,
  visits: 0,
  first_year: null,
  last_year: null,
  hectads: 0,
  hectads_latest: 0,
  tetrads: 0,
  tetrads_latest: 0,
};

/**
 * Gathers the measures of all taxa, each table read once.
 *
 * @param periods how many the atlas has
 */
export async function gatherMeasured(
  database: Database,
  taxonIds: readonly string[],
  periods: number,
): Promise<Map<string, Measured>> {
  const all = new Map<string, Measured>(
    taxonIds.map((id) => [
      id,
      {
        totals: NOTHING,
        seasonAll: Array<number>(36).fill(0),
        season: [],
        leftOut: [],
        years: [],
        changes: [],
        offMap: [],
        squares: { "10000": [], "2000": [] },
        latestHectads: [],
      },
    ]),
  );
  const each = async <Row extends { taxon_id: string }>(sql: string, add: (measured: Measured, row: Row) => void) => {
    for (const row of await database.rows<Row>(sql)) {
      const measured = all.get(row.taxon_id);
      if (measured !== undefined) add(measured, row);
    }
  };
  await each<Measured["totals"] & { taxon_id: string }>(
    "SELECT * FROM taxon_totals",
    (measured, { taxon_id: _, ...totals }) => (measured.totals = totals),
  );
  await each<{ taxon_id: string; third: number; records: number }>(
    "SELECT * FROM season_all",
    (measured, { third, records }) => (measured.seasonAll[third] = records),
  );
  await each<Measured["season"][number] & { taxon_id: string }>(
    "SELECT * FROM taxon_season ORDER BY ALL",
    (measured, { taxon_id: _, ...row }) => measured.season.push(row),
  );
  await each<Measured["leftOut"][number] & { taxon_id: string }>(
    "SELECT * FROM season_left_out ORDER BY ALL",
    (measured, { taxon_id: _, ...row }) => measured.leftOut.push(row),
  );
  await each<Measured["years"][number] & { taxon_id: string }>(
    "SELECT * FROM taxon_years WHERE year IS NOT NULL ORDER BY ALL",
    (measured, { taxon_id: _, ...row }) => measured.years.push(row),
  );
  for (const [id, counts] of await changeCounts(database)) {
    const measured = all.get(id);
    if (measured !== undefined) measured.changes = counts;
  }
  await each<Measured["offMap"][number] & { taxon_id: string }>(
    "SELECT * FROM off_map ORDER BY ALL",
    (measured, { taxon_id: _, ...row }) => measured.offMap.push(row),
  );
  await gatherSquares(database, taxonIds, all, periods);
  return all;
}

/** States as the query numbers them; 0 is a square without one. */
const STATES: readonly SquareState[] = [
  "recorded",
  "retained",
  "gained",
  "lost",
  "not_comparable_since",
  "not_comparable_before",
];

/** Rows of squares by period, in order; taxa, states and covered periods as numbers, which are cheaper to read than texts. */
const SQUARES = `
  SELECT n.number AS taxon, t.resolution_m, t.square, t.period, t.records::INTEGER AS records, t.visits::INTEGER AS visits,
    t.first_year, t.last_year, coalesce(list_position([${STATES.slice(1)
      .map((state) => `'${state}'`)
      .join(", ")}], s.state), 0) AS state,
    coalesce(c.covered, 0) AS covered
  FROM taxon_squares AS t
  JOIN taxon_numbers AS n USING (taxon_id)
  LEFT JOIN square_states AS s ON s.taxon_id = t.taxon_id AND s.grid = t.grid AND s.resolution_m = t.resolution_m AND s.square = t.square
  LEFT JOIN (SELECT taxon_id, grid, resolution_m, square, sum(1 << period)::INTEGER AS covered FROM taxon_coverage GROUP BY ALL) AS c
    ON c.taxon_id = t.taxon_id AND c.grid = t.grid AND c.resolution_m = t.resolution_m AND c.square = t.square
  ORDER BY n.number, t.resolution_m, t.square, t.period NULLS LAST`;

async function gatherSquares(
  database: Database,
  taxonIds: readonly string[],
  all: ReadonlyMap<string, Measured>,
  periods: number,
): Promise<void> {
  const filler = await database.fill("taxon_numbers", { taxon_id: "text", number: "integer" });
  filler.add({ taxon_id: [...taxonIds], number: taxonIds.map((_, number) => number) });
  filler.done();
  let current: TaxonSquare | undefined;
  let taxon = -1;
  await database.batches(SQUARES, (columns, size) => {
    const numbers = (name: string) => (columns[name] ?? []) as (number | null)[];
    const squares = (columns["square"] ?? []) as string[];
    const [taxa, resolutions, states, covered] = ["taxon", "resolution_m", "state", "covered"].map(numbers);
    const counts = {
      period: numbers("period"),
      records: numbers("records"),
      visits: numbers("visits"),
      first: numbers("first_year"),
      last: numbers("last_year"),
    };
    for (let index = 0; index < size; index += 1) {
      const square = squares[index] ?? "";
      const measured = all.get(taxonIds[taxa?.[index] ?? -1] ?? "");
      if (measured === undefined) continue;
      const isHectad = resolutions?.[index] === 10_000;
      if (current === undefined || taxon !== taxa?.[index] || current.square !== square) {
        taxon = taxa?.[index] ?? -1;
        current = newSquare(square, periods, { state: Number(states?.[index]), covered: Number(covered?.[index]) });
        measured.squares[isHectad ? "10000" : "2000"].push(current);
      }
      addPeriod(current, counts, index);
      if (isHectad && counts.period[index] === periods - 1) measured.latestHectads.push(square);
    }
  });
}

/** A square without records yet; bit n of `covered` says whether it is covered in period n. */
function newSquare(
  square: string,
  periods: number,
  { state, covered }: { state: number; covered: number },
): TaxonSquare {
  return {
    square,
    state: STATES[state] ?? "recorded",
    covered: Array.from({ length: periods }, (_, period) => Math.floor(covered / 2 ** period) % 2 === 1),
    records: Array<number>(periods).fill(0),
    visits: Array<number>(periods).fill(0),
    first_year: null,
    last_year: null,
  };
}

function addPeriod(
  square: TaxonSquare,
  {
    period,
    records,
    visits,
    first,
    last,
  }: Record<"period" | "records" | "visits" | "first" | "last", (number | null)[]>,
  index: number,
): void {
  const at = period[index] ?? null;
  if (at !== null) {
    square.records[at] = records[index] ?? 0;
    square.visits[at] = visits[index] ?? 0;
  }
  const [from, to] = [first[index] ?? null, last[index] ?? null];
  if (from !== null) square.first_year = Math.min(square.first_year ?? from, from);
  if (to !== null) square.last_year = Math.max(square.last_year ?? to, to);
}
