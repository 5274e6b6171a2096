import type { Database } from "../../engine/database.ts";
import type { Scheme } from "../../scheme/scheme.ts";
import { type SettlingEvidence, settlingEvidence } from "../settling-evidence.ts";
import { reasonsInWords, type UnexpectedRecord, wayOut } from "./unexpected-words.ts";

/** One row of `unexpected_records` with its texts. */
interface Row extends UnexpectedRecord {
  record_no: number;
  taxon_id: string;
  all_year: boolean;
  stated_caste: string;
  square: string | null;
  said_name: string;
  said_date: string;
}

/** Puts every unexpected record's reasons into words: table `unexpected_findings`, one question a record. */
export async function writeUnexpected(database: Database, scheme: Scheme): Promise<void> {
  const { rings_km, years } = scheme.settings.checks.unexpected;
  const ringKm = Math.max(...rings_km);
  const names = new Map(scheme.taxa.map(({ taxonID, scientificName }) => [taxonID, scientificName]));
  const settlingOf = remembered(scheme);
  const filler = await database.fill("unexpected_findings", {
    record_no: "integer",
    severity: "text",
    field: "text",
    value: "text",
    subject: "text",
    message: "text",
    way_out: "text",
  });
  await database.batches(unexpectedQuery(scheme, years), (columns, size) => {
    const rows = rowsOf(columns, size);
    const settling = rows.map(({ taxon_id, stated_caste }) => settlingOf(taxon_id, stated_caste));
    filler.add({
      record_no: rows.map(({ record_no }) => record_no),
      severity: rows.map(({ far, first, all_year }) => (all_year && !far && !first ? "note" : "ask")),
      field: rows.map((row) => (onlyDate(row) ? "eventDate" : "scientificName")),
      value: rows.map((row) => (onlyDate(row) ? row.said_date : row.said_name)),
      subject: rows.map((row) =>
        onlyDate(row) ? "" : `${names.get(row.taxon_id) ?? row.taxon_id} in ${row.square ?? row.region}`,
      ),
      message: rows.map((row, index) => reasonsInWords(row, ringKm, settling[index])),
      way_out: rows.map((row, index) => wayOut(row, settling[index])),
    });
  });
  filler.done();
}

function onlyDate({ far, first }: Row): boolean {
  return !far && !first;
}

function unexpectedQuery({ settings }: Scheme, years: number): string {
  const regions = settings.territories.map(
    ({ id, name }) => `WHEN '${id.replaceAll("'", "''")}' THEN '${name.replaceAll("'", "''")}'`,
  );
  return `SELECT u.record_no, u.taxon_id, u.all_year, u.stated_caste, u.far, u.off_season, coalesce(u.first, false) AS first,
      u.share * coalesce(u.factor, 1) AS expected, u.visits, u.reports, coalesce(u.nowhere, false) AS nowhere, n.km AS nearest_km,
      (u.slab - 1) * ${years} AS from_year, (u.slab + 2) * ${years} - 1 AS to_year,
      CASE u.territory ${regions.join(" ")} ELSE '' END AS region, u.region_visits::INTEGER AS region_visits,
      u.outside, u.bound, u.beyond, u.records, u.season_caste, u.level, u.part_seen, q.hectad AS square, t.said_name, t.said_date
    FROM unexpected_records AS u
    JOIN (SELECT record_no, said_name, said_date FROM record_texts) AS t USING (record_no)
    LEFT JOIN nearest_squares AS n USING (place_no)
    LEFT JOIN review_squares AS q USING (square_id)
    ORDER BY u.record_no`;
}

/** A batch's columns as rows; the engine's big integers as numbers. */
function rowsOf(columns: Record<string, unknown[]>, size: number): Row[] {
  return Array.from({ length: size }, (_, index) =>
    Object.fromEntries(
      Object.entries(columns).map(([name, values]) => {
        const value = values[index];
        return [name, typeof value === "bigint" ? Number(value) : value];
      }),
    ),
  ) as unknown as Row[];
}

function remembered(scheme: Scheme): (taxonID: string, caste: string) => SettlingEvidence | undefined {
  const known = new Map<string, SettlingEvidence | undefined>();
  return (taxonID, caste) => {
    const key = `${taxonID} ${caste}`;
    if (!known.has(key)) known.set(key, settlingEvidence(scheme, taxonID, caste));
    return known.get(key);
  };
}
