import type { Database } from "../engine/database.ts";
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

export interface ChangeCounts {
  resolution_m: 10_000 | 2_000;
  territory: string;
  retained: number;
  gained: number;
  lost: number;
  recorded_both_not_covered: number;
  not_comparable_since: number;
  not_comparable_before: number;
  covered_both_no_record: number;
  covered_one_no_record: number;
  covered_neither: number;
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
  await each<ChangeCounts & { taxon_id: string }>(
    "SELECT * FROM change_counts ORDER BY taxon_id, resolution_m DESC, territory",
    (measured, { taxon_id: _, ...row }) => measured.changes.push(row),
  );
  await each<Measured["offMap"][number] & { taxon_id: string }>(
    "SELECT * FROM off_map ORDER BY ALL",
    (measured, { taxon_id: _, ...row }) => measured.offMap.push(row),
  );
  await gatherSquares(database, all, periods);
  return all;
}

async function gatherSquares(database: Database, all: Map<string, Measured>, periods: number): Promise<void> {
  let current: TaxonSquare | undefined;
  let key = "";
  await database.batches(
    `SELECT t.taxon_id, t.resolution_m, t.square, t.period, t.records::INTEGER AS records, t.visits::INTEGER AS visits, t.first_year, t.last_year, s.state, c.covered
     FROM taxon_squares AS t
     LEFT JOIN square_states AS s ON s.taxon_id = t.taxon_id AND s.grid = t.grid AND s.resolution_m = t.resolution_m AND s.square = t.square
     LEFT JOIN (SELECT taxon_id, grid, resolution_m, square, string_agg(period, ' ') AS covered FROM taxon_coverage GROUP BY ALL) AS c
       ON c.taxon_id = t.taxon_id AND c.grid = t.grid AND c.resolution_m = t.resolution_m AND c.square = t.square
     ORDER BY t.taxon_id, t.resolution_m, t.square, t.period NULLS LAST`,
    (columns, size) => {
      for (let index = 0; index < size; index += 1) {
        const at = (name: string) => columns[name]?.[index];
        const taxon = String(at("taxon_id"));
        const square = String(at("square"));
        const measured = all.get(taxon);
        if (measured === undefined) continue;
        if (key !== `${taxon} ${square}`) {
          key = `${taxon} ${square}`;
          current = newSquare(square, periods, at);
          measured.squares[at("resolution_m") === 10_000 ? "10000" : "2000"].push(current);
        }
        if (current === undefined) continue;
        addPeriod(current, at);
        if (at("resolution_m") === 10_000 && at("period") === periods - 1) measured.latestHectads.push(square);
      }
    },
  );
}

function newSquare(square: string, periods: number, at: (name: string) => unknown): TaxonSquare {
  const covered = Array<boolean>(periods).fill(false);
  for (const period of String(at("covered") ?? "")
    .split(" ")
    .filter(Boolean))
    covered[Number(period)] = true;
  const state = (at("state") ?? "recorded") as SquareState;
  return {
    square,
    state,
    covered,
    records: Array<number>(periods).fill(0),
    visits: Array<number>(periods).fill(0),
    first_year: null,
    last_year: null,
  };
}

function addPeriod(square: TaxonSquare, at: (name: string) => unknown): void {
  const period = at("period") as number | null;
  if (period !== null) {
    square.records[period] = Number(at("records"));
    square.visits[period] = Number(at("visits"));
  }
  const first = at("first_year") as number | null;
  const last = at("last_year") as number | null;
  if (first !== null) square.first_year = Math.min(square.first_year ?? first, first);
  if (last !== null) square.last_year = Math.max(square.last_year ?? last, last);
}
