import type { OtherRecord, TraceAnswer, TracePeriod } from "./answers.ts";
import { othersWhere } from "./around.ts";
import type { Desk } from "./desk.ts";
import { cellsOf, type SaidRow } from "./record.ts";

/** Records told of one square at once. */
const MOST = 1000;

/**
 * Traces a published square back to its records: for each taxon and period the records in use that support the square,
 * with their keys and what their files say.
 *
 * @param grid id of a grid system, such as "british"
 * @param square code of a hectad or tetrad
 */
export async function traceOf(desk: Desk, grid: string, square: string): Promise<TraceAnswer> {
  const here = "r.status = 'used' AND r.present AND r.grid = $grid AND (r.hectad = $square OR r.tetrad = $square)";
  const values = { grid, square };
  const [counted] = await desk.database.rows<{ records: number }>(
    `SELECT count(*) AS records FROM records AS r WHERE ${here}`,
    values,
  );
  const others = await othersWhere(desk, here, values, MOST);
  const texts = await textsOf(desk, others);
  const placed = await desk.database.rows<{ record_no: number; taxon_id: string; period: number | null }>(
    `SELECT r.record_no, r.taxon_id, r.period FROM records AS r WHERE ${here} ORDER BY r.record_no LIMIT ${MOST}`,
    values,
  );
  const byRecord = new Map(others.map((other) => [other.record, other]));
  const taxa = new Map<string, Map<number, TracePeriod["records"]>>();
  for (const { record_no, taxon_id, period } of placed) {
    const other = byRecord.get(record_no);
    if (other === undefined) continue;
    const periods = taxa.get(taxon_id) ?? new Map<number, TracePeriod["records"]>();
    const list = periods.get(period ?? -1) ?? [];
    list.push({ ...other, cells: texts.get(record_no) ?? [] });
    taxa.set(taxon_id, periods.set(period ?? -1, list));
  }
  return {
    grid,
    square,
    taxa: [...taxa]
      .map(([id, periods]) => named(desk, id, periods))
      .toSorted((a, b) => a.name.localeCompare(b.name, "en")),
    left_off: Math.max(0, (counted?.records ?? 0) - others.length),
  };
}

async function textsOf({ database }: Desk, others: readonly OtherRecord[]): Promise<Map<number, [string, string][]>> {
  if (others.length === 0) return new Map();
  const rows = await database.rows<SaidRow & { record_no: number }>(
    `SELECT * FROM record_texts WHERE record_no IN (${others.map(({ record }) => record).join(", ")})`,
  );
  return new Map(rows.map((row) => [Number(row.record_no), cellsOf(row)]));
}

function named(
  { scheme }: Desk,
  id: string,
  periods: Map<number, TracePeriod["records"]>,
): TraceAnswer["taxa"][number] {
  const taxon = scheme.taxa.find(({ taxonID }) => taxonID === id);
  return {
    id,
    name: taxon?.scientificName ?? id,
    vernacular: taxon?.vernacularNames[0]?.name ?? "",
    periods: [...periods]
      .toSorted(([a], [b]) => a - b)
      .map(([index, records]) => {
        const period = scheme.settings.periods[index];
        return { period: period === undefined ? "in no period" : spanOf(period), records };
      }),
  };
}

function spanOf({ from, to }: { from: number | null; to: number }): string {
  if (from === null) return `until ${to}`;
  return from === to ? String(to) : `${from}–${to}`;
}
