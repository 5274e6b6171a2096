import type { ColumnType, Database } from "../../engine/database.ts";
import { fillRows } from "../../engine/fill-rows.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import { type SettledRow, type Shift, silentShift } from "./shift.ts";
import { shiftAsRecorded } from "./shift-as-recorded.ts";
import { tellShift } from "./tell-shift.ts";

type ShiftRow = Shift & { taxon_id: string; caste: string };

/** Share of its visits that must state a caste before castes together can be told. */
const FEWEST_STATED = 0.5;

const COLUMNS: Readonly<Record<keyof ShiftRow, ColumnType>> = {
  taxon_id: "text",
  caste: "text",
  method: "text",
  share: "double",
  adjusted: "boolean",
  first_year: "integer",
  last_year: "integer",
  years: "integer",
  n: "integer",
  shift: "double",
  low: "double",
  high: "double",
  judged: "boolean",
  reason: "text",
};

/**
 * Fills `season_shifts`: for each taxon and caste, and for all castes together, how many days a decade its season moved, by
 * each method with its interval or the reason it is silent. Everyday recording of settled years alone, for a survey or a
 * week of counting moves with its organisers.
 */
export async function fillSeasonShifts(database: Database, scheme: Scheme): Promise<void> {
  const noCastes = scheme.settings.castes.length === 0;
  // Some recorders and sources state castes and others do not, and they go out at different times of the year.
  const groupVisits = await everydayVisits(database, noCastes ? "everyday" : "stating");
  const rows: ShiftRow[] = [];
  for (const [taxon_id, own] of await settledRows(database)) {
    const byCaste = Map.groupBy(own, ({ caste }) => caste);
    const told = (caste: string, shifts: readonly Shift[]) =>
      rows.push(...shifts.map((shift) => ({ taxon_id, caste, ...shift })));
    const { season: rules } = scheme.settings;
    const input = { groupVisits, rules };
    for (const caste of ["all", ...scheme.settings.castes.map(({ id }) => id)]) {
      const recorded = byCaste.get(caste);
      if (recorded === undefined) continue;
      const stated =
        caste === "all" ? own.filter((row) => row.caste !== "all" && row.caste !== "not_stated") : recorded;
      const reason = caste === "all" && !noCastes ? tooFewStated(recorded, byCaste.get("not_stated") ?? []) : "";
      const name = `season/${taxon_id}/${caste}`;
      const shifts = tellShift({ ...input, rows: reason !== "" ? [] : noCastes ? recorded : stated, name });
      const n = recorded.reduce((sum, { visits }) => sum + visits, 0);
      told(caste, [
        shiftAsRecorded({ rows: recorded, rules }),
        ...shifts.map((one) => (reason === "" ? one : silentShift(one, reason, [], n))),
      ]);
    }
  }
  await fillRows(database, "season_shifts", COLUMNS, rows);
}

/** Why castes together cannot be told: castes are about at different times, and what states none may be of any. */
function tooFewStated(all: readonly SettledRow[], notStated: readonly SettledRow[]): string {
  const sum = (rows: readonly SettledRow[]) => rows.reduce((total, { visits }) => total + visits, 0);
  const [visits, without] = [sum(all), sum(notStated)];
  return visits - without >= FEWEST_STATED * visits
    ? ""
    : `${without} of ${visits} visits state no caste, and castes are about at different times`;
}

/** Everyday visits to the whole group, or those that state the caste of anything, by year and third of the month. */
async function everydayVisits(database: Database, which: "everyday" | "stating"): Promise<Map<number, Float64Array>> {
  const rows = await database.rows<{ season_year: number; third: number; visits: number }>(
    `SELECT season_year, third, sum(${which})::BIGINT AS visits FROM season_visits
     GROUP BY season_year, third ORDER BY season_year, third`,
  );
  const visits = new Map<number, Float64Array>();
  for (const { season_year, third, visits: count } of rows) {
    const own = visits.get(season_year) ?? new Float64Array(36);
    own[third] = count;
    visits.set(season_year, own);
  }
  return visits;
}

/** Settled rows by taxon, in one order whatever made them. */
async function settledRows(database: Database): Promise<Map<string, SettledRow[]>> {
  const taxa = new Map<string, SettledRow[]>();
  await database.batches(
    `SELECT taxon_id, caste, season_year, season_day, territory, band, visits FROM season_settled
     ORDER BY taxon_id, caste, season_year, territory, band, season_day`,
    (columns, size) => {
      const column = <T>(name: string) => columns[name] as T[];
      for (let i = 0; i < size; i += 1) {
        const taxon = column<string>("taxon_id")[i] as string;
        const own = taxa.get(taxon) ?? [];
        if (own.length === 0) taxa.set(taxon, own);
        own.push({
          caste: column<string>("caste")[i] as string,
          season_year: column<number>("season_year")[i] as number,
          season_day: column<number>("season_day")[i] as number,
          territory: column<string>("territory")[i] as string,
          band: column<number | null>("band")[i] as number | null,
          visits: Number(column<bigint>("visits")[i]),
        });
      }
    },
  );
  return taxa;
}
