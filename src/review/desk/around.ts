import { reasonInWords } from "../../records/reasons.ts";
import type { AroundAnswer, OtherRecord } from "./answers.ts";
import type { Desk } from "./desk.ts";
import { interpretedRow } from "./record.ts";

const NEAR = 3;
const MOST = 40;

/** Rows before and after a record in its file, the others of its visit, and those of its name, day and 10 km square. */
export async function aroundOf(desk: Desk, record: number): Promise<AroundAnswer> {
  const row = await interpretedRow(desk, record);
  if (row === undefined) return { neighbours: [], visit: [], alike: [] };
  const neighbours = await othersWhere(
    desk,
    `r.file_id = ${row.file_id} AND r.record_no BETWEEN $record - ${NEAR} AND $record + ${NEAR}`,
    { record },
  );
  const { visit_place, first_day, last_day, recorder, taxon_id, hectad } = row;
  const visit =
    visit_place === null || first_day === null || last_day === null
      ? []
      : await othersWhere(
          desk,
          "r.visit_place = $visit_place AND r.first_day = $first_day AND r.last_day = $last_day AND r.recorder = $recorder AND r.record_no <> $record",
          { record, visit_place, first_day, last_day, recorder },
        );
  const alike =
    taxon_id === null || first_day === null || hectad === null
      ? []
      : await othersWhere(
          desk,
          "r.taxon_id = $taxon_id AND r.first_day = $first_day AND r.hectad = $hectad AND r.record_no <> $record",
          { record, taxon_id, first_day, hectad },
        );
  return { neighbours, visit, alike };
}

/** Records with what they say in short, by their number. */
export async function othersWhere(
  { database }: Desk,
  condition: string,
  values: Record<string, string | number>,
  most: number = MOST,
): Promise<OtherRecord[]> {
  const found = await database.rows<{ record_no: number; file_id: number; status: string; reason: string }>(
    `SELECT r.record_no, r.file_id, r.status, r.reason FROM records AS r WHERE ${condition} ORDER BY r.record_no LIMIT ${most}`,
    values,
  );
  if (found.length === 0) return [];
  const files = [...new Set(found.map(({ file_id }) => file_id))].join(", ");
  const texts = await database.rows<{
    record: number;
    key: string;
    source: string;
    row: number;
    name: string;
    date: string;
    place: string;
    kind: string;
  }>(
    `SELECT t.record_no AS record, t.record_key AS "key", t.source, t.record_no - f.first_number AS row, t.said_name AS name,
       t.said_date AS date, t.said_place AS place, t.said_kind AS kind
     FROM record_texts AS t JOIN files AS f USING (file_id)
     WHERE t.file_id IN (${files}) AND t.record_no IN (${found.map(({ record_no }) => record_no).join(", ")})
     ORDER BY t.record_no`,
  );
  const judged = new Map(found.map((row) => [row.record_no, row]));
  return texts.map((text) => {
    const { status = "", reason = "" } = judged.get(text.record) ?? {};
    return { ...text, status, reason: status === "used" ? "" : reasonInWords(reason) };
  });
}
