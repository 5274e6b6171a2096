import type { Database } from "../engine/database.ts";
import { findingTitle } from "../records/finding-titles.ts";
import type { Scheme } from "../scheme/scheme.ts";
import type { AccountingFile } from "./contracts.ts";

interface FindingCount {
  check: string;
  severity: "blocks" | "ask" | "note";
  records: number;
}

const ALL_FINDINGS = `SELECT check_name AS "check", severity, count(*) AS records FROM all_findings
  GROUP BY ALL ORDER BY severity, records DESC, "check"`;

/** What a check asks of a record can tell where it was: those shown coarser are not counted. */
const PUBLIC_FINDINGS = `SELECT a.check_name AS "check", a.severity, count(*) AS records
  FROM all_findings AS a LEFT JOIN generalised AS g USING (record_no)
  WHERE g.record_no IS NULL GROUP BY ALL ORDER BY a.severity, records DESC, "check"`;

/**
 * The accounting as published, checked: what was read is what was used, held and not used, for every source.
 *
 * @param read records each source's files hold
 * @param options `forOfficer` counts the findings about records that are shown coarser too: not to be published
 * @throws {Error} where it does not add up, which is our bug and must stop the build
 */
export async function accountingFile(
  database: Database,
  scheme: Scheme,
  read: ReadonlyMap<string, number>,
  { forOfficer = false }: { forOfficer?: boolean } = {},
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
    squares_by_reason: await database.rows("SELECT resolution_m, reason, records FROM squares_by_reason ORDER BY ALL"),
    tetrads_at_half_overlap: counts?.records_at_half ?? 0,
    findings: (await database.rows<FindingCount>(forOfficer ? ALL_FINDINGS : PUBLIC_FINDINGS)).map((finding) => ({
      ...finding,
      title: findingTitle(finding.check),
    })),
  };
}
