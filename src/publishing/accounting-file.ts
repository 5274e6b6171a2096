import type { Database } from "../engine/database.ts";
import { findingTitle } from "../records/finding-titles.ts";
import type { Scheme } from "../scheme/scheme.ts";
import type { AccountingFile } from "./contracts.ts";

/**
 * The accounting as published, checked: what was read is what was used, held and not used, for every source.
 *
 * @param read records each source's files hold
 * @throws {Error} where it does not add up, which is our bug and must stop the build
 */
export async function accountingFile(
  database: Database,
  scheme: Scheme,
  read: ReadonlyMap<string, number>,
): Promise<AccountingFile> {
  const rows = await database.rows<AccountingFile["rows"][number]>(
    "SELECT source, status, reason_in_words AS reason, records FROM accounting ORDER BY source, status DESC, records DESC, reason",
  );
  const [counts] = await database.rows<{ records_at_half: number }>("SELECT records_at_half FROM placing_counts");
  const total = [...read.values()].reduce((sum, records) => sum + records, 0);
  for (const [source, records] of read) {
    const told = rows.filter((row) => row.source === source).reduce((sum, row) => sum + row.records, 0);
    if (told !== records)
      throw new Error(`the accounting of source ${source} does not add up: ${records} read, ${told} accounted for`);
  }
  return {
    read: total,
    rows,
    sources: scheme.settings.sources.map((source) => ({
      source: source.id,
      title: source.title || source.id,
      kind: source.kind,
      licence: source.licence,
      read: read.get(source.id) ?? 0,
      used: rows
        .filter((row) => row.source === source.id && row.status === "used")
        .reduce((sum, row) => sum + row.records, 0),
    })),
    squares_by_reason: await database.rows(
      `SELECT 10000 AS resolution_m, hectad_reason AS reason, count(*) AS records FROM records WHERE status = 'used' AND present AND hectad IS NULL GROUP BY ALL
       UNION ALL SELECT 2000, tetrad_reason, count(*) FROM records WHERE status = 'used' AND present AND tetrad IS NULL GROUP BY ALL ORDER BY ALL`,
    ),
    tetrads_at_half_overlap: counts?.records_at_half ?? 0,
    findings: (
      await database.rows<{ check: string; severity: "blocks" | "ask" | "note"; records: number }>(
        'SELECT check_name AS "check", severity, count(*) AS records FROM all_findings GROUP BY ALL ORDER BY severity, records DESC, "check"',
      )
    ).map((finding) => ({ ...finding, title: findingTitle(finding.check) })),
  };
}
