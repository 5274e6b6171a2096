import type { Database } from "../../src/engine/database.ts";
import { EVIDENCE_SETS } from "../../src/measures/change/evidence-sets.ts";
import { measure } from "../../src/measures/measure-stage.ts";
import { partsOf } from "../demonstration/calendar.ts";
import { TETRAD, type Tetrad } from "../demonstration/land.ts";
import type { Country } from "./country.ts";
import { PERIODS, type VisitKind } from "./recording.ts";
import type { InventedRecord } from "./records.ts";
import { schemeOf } from "./scheme.ts";

/** Source of the records of each kind of visit. */
const SOURCES: Readonly<Record<VisitKind, string>> = {
  complete: "walks",
  partial: "walks",
  photograph: "pictures",
  count_week: "week",
  specimen: "museum",
};

const COLUMNS = {
  record_no: "integer",
  taxon_id: "text",
  present: "boolean",
  kind_id: "integer",
  recorder: "text",
  status: "text",
  reason: "text",
  source: "text",
  territory: "text",
  grid: "text",
  hectad: "text",
  hectad_reason: "text",
  tetrad: "text",
  tetrad_reason: "text",
  tetrad_at_half: "text",
  visit_place: "text",
  in_disguise: "boolean",
  near_line: "boolean",
  first_day: "integer",
  last_day: "integer",
  first_year: "integer",
  last_year: "integer",
  period: "integer",
  third: "integer",
  complete: "boolean",
  established: "boolean",
} as const;

/**
 * Measures invented records as the program does, trends from the headline evidence alone: the other sets show how much
 * hangs on a part of the records.
 *
 * @param taxa ids of the group
 * @param changed settings other than their defaults
 * @example await measureInvented(database, country, records, ["s001"]) // SELECT * FROM trends
 */
export async function measureInvented(
  database: Database,
  country: Country,
  records: readonly InventedRecord[],
  taxa: readonly string[],
  changed: object = {},
): Promise<void> {
  await layInvented(database, country, records, taxa);
  await measure(database, schemeOf(taxa, PERIODS, changed), new Map(), EVIDENCE_SETS.slice(0, 1));
}

/**
 * Lays invented records in the tables that the stages before the measures leave.
 *
 * @param taxa ids of the group
 * @example await layInvented(database, country, records, ["s001"]) // SELECT * FROM records
 */
export async function layInvented(
  database: Database,
  country: Country,
  records: readonly InventedRecord[],
  taxa: readonly string[],
): Promise<void> {
  const names = Object.keys(COLUMNS) as (keyof typeof COLUMNS)[];
  const rows = records.map((record, index) => judgedRow(record, index, country, taxa));
  const filler = await database.fill("records", COLUMNS);
  filler.add(Object.fromEntries(names.map((name) => [name, rows.map((row) => row[name])])));
  filler.done();
  const kinds = await database.fill("kind_castes", { kind_id: "integer", caste: "text", individuals: "integer" });
  kinds.add({ kind_id: [0], caste: ["not_stated"], individuals: [null] });
  kinds.done();
  (await database.fill("record_surroundings", { record_no: "integer", kind: "text", term: "text" })).done();
}

function judgedRow({ species, visit }: InventedRecord, index: number, { tetrads }: Country, taxa: readonly string[]) {
  const tetrad = tetrads[visit.square] as Tetrad;
  const { month, date } = partsOf(visit.day);
  const named = visit.coarse ? null : tetrad.hectad + tetrad.letter;
  return {
    record_no: index + 2,
    taxon_id: taxa[species] ?? "",
    present: true,
    kind_id: 0,
    recorder: visit.recorder,
    status: "used",
    reason: "used",
    source: SOURCES[visit.kind],
    territory: tetrad.territory,
    grid: tetrad.grid,
    hectad: tetrad.hectad,
    hectad_reason: null,
    tetrad: named,
    tetrad_reason: visit.coarse ? "too imprecise" : null,
    tetrad_at_half: named,
    visit_place: visit.coarse ? tetrad.hectad : kilometreSquare(tetrad, visit.quarter),
    in_disguise: false,
    near_line: false,
    first_day: visit.day,
    last_day: visit.day,
    first_year: visit.year,
    last_year: visit.year,
    period: visit.period,
    third: (month - 1) * 3 + Math.min(2, Math.floor((date - 1) / 10)),
    complete: visit.kind === "complete",
    established: true,
  };
}

/** The 1 km square of a quarter of a 2 km square, such as "SK1121". */
function kilometreSquare({ hectad, easting, northing }: Tetrad, quarter: number): string {
  const east = Math.floor((easting % 10_000) / 1000) + (quarter % 2) * (TETRAD / 2000);
  const north = Math.floor((northing % 10_000) / 1000) + Math.floor(quarter / 2) * (TETRAD / 2000);
  return `${hectad.slice(0, -1)}${east}${hectad.slice(-1)}${north}`;
}
