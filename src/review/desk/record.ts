import { findingTitle } from "../../records/finding-titles.ts";
import { reasonInWords } from "../../records/reasons.ts";
import { RECORD_FIELDS } from "../../scheme/settings.ts";
import type { Question, RecordAnswer } from "./answers.ts";
import type { Desk } from "./desk.ts";
import { historyOf } from "./history.ts";
import { isoDay, placeInWords, thirdOf } from "./record-words.ts";
import { settlingOf } from "./settling.ts";

/** A row of the records as interpreted, with its place. */
export interface InterpretedRow {
  record_no: number;
  file_id: number;
  source: string;
  recorder: string;
  kind_id: number;
  taxon_id: string | null;
  first_day: number | null;
  last_day: number | null;
  territory: string | null;
  grid: string | null;
  hectad: string | null;
  tetrad: string | null;
  visit_place: string | null;
  third: number | null;
  longitude: number | null;
  latitude: number | null;
  radius_m: number | null;
  size_m: number | null;
  read_from: string | null;
  radius_from: string | null;
  status: string;
  reason: string;
}

/**
 * One record as interpreted, from what was laid ready for the worklist, else from all records.
 *
 * @returns undefined where no record has this number
 */
export async function interpretedRow({ database }: Desk, record: number): Promise<InterpretedRow | undefined> {
  const [ready] = await database.rows<InterpretedRow>("SELECT * FROM desk_records WHERE record_no = $record", {
    record,
  });
  if (ready !== undefined) return ready;
  const [row] = await database.rows<InterpretedRow>(
    `SELECT r.*, p.longitude, p.latitude, p.radius_m, p.size_m, p.read_from, p.radius_from
     FROM records AS r JOIN places AS p USING (place_id) WHERE r.record_no = $record`,
    { record },
  );
  return row;
}

/** What a record says, all its fields and its key. */
export type SaidRow = Record<string, string> & { record_key: string };

/** One record's texts, from what was laid ready for the worklist, else from its file. */
export async function saidRow({ database }: Desk, record: number, file: number): Promise<SaidRow | undefined> {
  const [ready] = await database.rows<SaidRow>("SELECT * FROM desk_texts WHERE record_no = $record", { record });
  if (ready !== undefined) return ready;
  const [row] = await database.rows<SaidRow>(
    `SELECT * FROM record_texts WHERE file_id = ${file} AND record_no = $record`,
    { record },
  );
  return row;
}

/**
 * Everything the desk shows of one record beside the map, the season and other records.
 *
 * @returns null where no record has this number
 */
export async function recordOf(desk: Desk, record: number): Promise<RecordAnswer | null> {
  const row = await interpretedRow(desk, record);
  const said = row && (await saidRow(desk, record, row.file_id));
  if (row === undefined || said === undefined) return null;
  const { scheme } = desk;
  const castes = await castesOf(desk, row.kind_id);
  const taxon = scheme.taxa.find(({ taxonID }) => taxonID === row.taxon_id);
  const [file] = await desk.database.rows<{ file: string; first_number: number }>(
    "SELECT file, first_number FROM files WHERE file_id = $file",
    { file: row.file_id },
  );
  const source = scheme.settings.sources.find(({ id }) => id === row.source);
  return {
    record,
    key: said.record_key,
    source: source?.title || row.source,
    file: file?.file ?? "",
    row: record - (file?.first_number ?? 0),
    said: saidOf(said),
    taxon:
      taxon === undefined
        ? null
        : { id: taxon.taxonID, name: taxon.scientificName, vernacular: taxon.vernacularNames[0]?.name ?? "" },
    castes: castes.map((id) => scheme.settings.castes.find((caste) => caste.id === id)?.label ?? id),
    days: row.first_day === null ? null : [isoDay(row.first_day), isoDay(row.last_day ?? row.first_day)],
    thirds: row.first_day === null ? null : [thirdOf(row.first_day), thirdOf(row.last_day ?? row.first_day)],
    place: placeInWords(row),
    square:
      row.hectad === null || row.grid === null
        ? null
        : { grid: row.grid, hectad: row.hectad, tetrad: row.tetrad ?? "" },
    territory: scheme.settings.territories.find(({ id }) => id === row.territory)?.name ?? "",
    status: row.status,
    reason: reasonInWords(row.reason),
    questions: await questionsOf(desk, record),
    cells: cellsOf(said),
    history: historyOf(desk, said.record_key),
    settling: taxon === undefined ? null : settlingOf(scheme, taxon.taxonID, castes),
  };
}

/** The four sayings of a record. */
export function saidOf(said: SaidRow): RecordAnswer["said"] {
  return {
    name: said["said_name"] ?? "",
    date: said["said_date"] ?? "",
    place: said["said_place"] ?? "",
    kind: said["said_kind"] ?? "",
  };
}

/** Filled fields of a record with their texts as they stand in its file. */
export function cellsOf(said: SaidRow): [string, string][] {
  return RECORD_FIELDS.flatMap((field) => (said[field] ? [[field, said[field]] as [string, string]] : []));
}

async function castesOf({ database }: Desk, kind: number): Promise<string[]> {
  const rows = await database.rows<{ caste: string }>(
    "SELECT DISTINCT caste FROM kind_castes WHERE kind_id = $kind AND caste <> 'not_stated' ORDER BY caste",
    { kind },
  );
  return rows.map(({ caste }) => caste);
}

async function questionsOf({ database }: Desk, record: number): Promise<Question[]> {
  const [ready] = await database.rows("SELECT 1 FROM desk_records WHERE record_no = $record", { record });
  const rows = await database.rows<Omit<Question, "title">>(
    `SELECT * FROM (
       SELECT f.check_name AS "check", f.severity, f.field, f.value, f.message, f.way_out, f.proposal,
         coalesce(min(w.look_no), 0) AS look, coalesce(min(w.records_of_look), 1) AS records
       FROM ${ready ? "desk_questions" : "record_findings"} AS f
       LEFT JOIN worklist AS w ON w.record_no = f.record_no AND w.check_name = f.check_name AND w.message = f.message
       WHERE f.record_no = $record GROUP BY ALL)
     ORDER BY CASE severity WHEN 'blocks' THEN 0 WHEN 'ask' THEN 1 ELSE 2 END, "check", field, message`,
    { record },
  );
  return rows.map((row) => ({ ...row, title: findingTitle(row.check) }));
}
