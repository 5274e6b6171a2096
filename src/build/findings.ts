import type { Database } from "../engine/database.ts";
import { sqlText } from "../engine/database.ts";
import { defused } from "../engine/defused.ts";
import type { ReadFile } from "../records/raw-records.ts";

/** Lays findings about files and rows beside those about records: view `all_findings`, one row a finding. */
export async function gatherFindings(database: Database, files: readonly ReadFile[]): Promise<void> {
  const rows = files.flatMap(({ source, result }) =>
    result.findings.map((finding) => ({ source: source.id, ...finding })),
  );
  const filler = await database.fill("file_findings", {
    source: "text",
    file: "text",
    row: "integer",
    field: "text",
    value: "text",
    check_name: "text",
    severity: "text",
    message: "text",
    way_out: "text",
  });
  filler.add({
    source: rows.map(({ source }) => source),
    file: rows.map(({ file }) => file),
    row: rows.map(({ row }) => row),
    field: rows.map(({ field }) => field),
    value: rows.map(({ value }) => value),
    check_name: rows.map(({ check }) => check),
    severity: rows.map(({ severity }) => severity),
    message: rows.map(({ message }) => message),
    way_out: rows.map(({ wayOut }) => wayOut),
  });
  filler.done();
  await database.run(
    `CREATE OR REPLACE VIEW all_findings AS
     SELECT NULL AS record_no, source, file, row, field, value, check_name, severity, '' AS subject, message, way_out, '' AS proposal, false AS settled FROM file_findings
     UNION ALL SELECT NULL, '', 'decisions.csv', NULL, 'recordKey', record_key, 'decision_without_record', 'ask', '', 'is on a record that was not read: ' || said, 'see whether the record was taken out or has another id now', '', false FROM decisions_without_record
     UNION ALL SELECT record_no, source, file, row, field, value, check_name, severity, subject, message, way_out, proposal, settled FROM record_findings`,
  );
}

/**
 * Writes every finding as a CSV for the scheme's own eyes: it quotes its records, so it is never published. No cell
 * begins like a formula.
 *
 * @returns how many findings there are
 */
export async function writeFindings(database: Database, file: string): Promise<number> {
  const safe = ["source", "file", "field", "value", "message", "way_out"];
  const columns = safe.map((name) => `${defused(name)} AS ${name}`);
  columns.splice(2, 0, "row");
  await database.run(
    `COPY (SELECT severity, check_name AS "check", ${columns.join(", ")} FROM all_findings
     ORDER BY CASE severity WHEN 'blocks' THEN 0 WHEN 'ask' THEN 1 ELSE 2 END, check_name, source, file, all_findings.row, field, value, message) TO ${sqlText(file)} (FORMAT csv, HEADER)`,
  );
  const [counted] = await database.rows<{ findings: number }>("SELECT count(*) AS findings FROM all_findings");
  return counted?.findings ?? 0;
}
