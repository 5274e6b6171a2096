import type { Database } from "../engine/database.ts";
import type { AccountingFile } from "../publishing/contracts.ts";
import { periodLabel } from "../publishing/period-label.ts";
import type { Scheme } from "../scheme/scheme.ts";
import { counted } from "./counted.ts";

/**
 * What `--json` prints, one object:
 *
 * - `title`, `edition`: of the atlas
 * - `records`: how many were `read`, `used`, `held` and `not_used`; the last three add up to the first
 * - `accounting`: rows of `source`, `status`, `reason` in words, and `records`
 * - `squares`: for each `resolution_m` (10000 or 2000), `territory` (or all) and `period` (its years, outside, or ever) the
 *   `squares` with a record of any taxon, and the `visits` there
 * - `off_map`: used records that support no square, by `resolution_m` and `reason`: how many `records`
 * - `tetrads_at_half_overlap`: further records that an overlap of 0.5 would place in a 2 km square
 * - `findings`: by `check` and `severity` (blocks, ask or note), with the check's `title`: how many `records`
 * - `content_findings`: what does not agree in the scheme's tables, texts and pictures, a line each; absent where nothing is
 * - `out`: the folder of the atlas, after `build`
 * - `findings_file`, `worklist_file`: the files with every finding and with what wants a ruling, after `check`;
 *   `questions`: how many rows the latter has; `proposed_settings`: YAML to paste, for columns that are not used yet
 */
export interface Answer {
  title: string;
  edition: string;
  records: { read: number; used: number; held: number; not_used: number };
  accounting: AccountingFile["rows"];
  squares: { resolution_m: number; territory: string; period: string; squares: number; visits: number }[];
  off_map: AccountingFile["squares_by_reason"];
  tetrads_at_half_overlap: number;
  findings: AccountingFile["findings"];
  content_findings?: string[];
  out?: string;
}

/** Makes the answer from the accounting and the measures. */
export async function answerOf(database: Database, { settings }: Scheme, accounting: AccountingFile): Promise<Answer> {
  const withStatus = (status: string) =>
    accounting.rows.filter((row) => row.status === status).reduce((sum, row) => sum + row.records, 0);
  const counts = await database.rows<{
    resolution_m: number;
    territory: string;
    period: number | null;
    squares: number;
    visits: number;
    ever: boolean;
  }>(
    `WITH present AS (SELECT DISTINCT territory, grid, resolution_m, square, period FROM taxon_squares),
     effort AS (SELECT territory, grid, resolution_m, square, period, visits FROM square_effort)
     SELECT resolution_m, coalesce(territory, 'all') AS territory, period, grouping(period) = 1 AS ever,
       count(DISTINCT grid || square) FILTER (found) AS squares, sum(visits)::BIGINT AS visits
     FROM (
       SELECT territory, grid, resolution_m, square, period, true AS found, 0 AS visits FROM present
       UNION ALL SELECT territory, grid, resolution_m, square, period, false, visits FROM effort
     )
     GROUP BY GROUPING SETS ((resolution_m, territory, period), (resolution_m, period), (resolution_m, territory), (resolution_m))
     ORDER BY resolution_m DESC, territory, ever, period NULLS LAST`,
  );
  const nameOf = ({ period, ever }: { period: number | null; ever: boolean }) => {
    if (ever) return "ever";
    const setting = period === null ? undefined : settings.periods[period];
    return setting === undefined ? "outside" : periodLabel(setting);
  };
  return {
    title: settings.title,
    edition: settings.edition.id,
    records: {
      read: accounting.read,
      used: withStatus("used"),
      held: withStatus("held"),
      not_used: withStatus("not used"),
    },
    accounting: accounting.rows,
    squares: counts.map((row) => ({
      resolution_m: row.resolution_m,
      territory: row.territory,
      period: nameOf(row),
      squares: row.squares,
      visits: row.visits,
    })),
    off_map: accounting.squares_by_reason,
    tetrads_at_half_overlap: accounting.tetrads_at_half_overlap,
    findings: accounting.findings,
  };
}

/** Findings that no look at a record settles, with what to set for their source in atlas.yaml. */
const SET_FOR_SOURCE: Readonly<Record<string, string>> = Object.freeze({
  datum_not_stated: "set datum for the source, for example EPSG:4326, which is WGS84",
  crs_not_stated: "set crs for the source, for example EPSG:27700",
});

/** The answer in words for a terminal: what became of the records, squares by period, findings by reason. */
export function answerInWords(answer: Answer): string {
  const number = (value: number) => value.toLocaleString("en-GB");
  const lines = [`${answer.title}, edition ${answer.edition}`, ""];
  const reasons = new Map<string, number>();
  for (const { status, reason, records } of answer.accounting)
    reasons.set(`${status}: ${reason}`, (reasons.get(`${status}: ${reason}`) ?? 0) + records);
  const parts = [...reasons].sort((one, other) => rank(one[0]) - rank(other[0]) || other[1] - one[1]);
  lines.push(
    `${number(answer.records.read)} records read = ${number(answer.records.used)} used + ${number(answer.records.held)} held + ${number(answer.records.not_used)} not used`,
  );
  for (const [reason, records] of parts) lines.push(`${number(records).padStart(12)}  ${reason}`);
  lines.push("", "Squares with a record");
  for (const { resolution_m, period, squares, visits } of answer.squares.filter(
    ({ territory, period: name }) => territory === "all" && name !== "outside",
  ))
    lines.push(
      `${number(squares).padStart(12)}  of ${resolution_m / 1000} km, ${period} (${counted(visits, "visit")})`,
    );
  lines.push(
    "",
    `An overlap of 0.5 would place ${number(answer.tetrads_at_half_overlap)} more records in a 2 km square.`,
  );
  if (answer.findings.length > 0) {
    lines.push("", "Findings");
    for (const { check, severity, title, records } of answer.findings) {
      const wayOut = SET_FOR_SOURCE[check] === undefined ? "" : `: ${SET_FOR_SOURCE[check]}`;
      lines.push(`${number(records).padStart(12)}  ${severity.padEnd(6)}  ${title}${wayOut}`);
    }
  }
  if (answer.content_findings !== undefined)
    lines.push("", "In tables, texts and pictures", ...answer.content_findings.map((line) => `  ${line}`));
  return lines.join("\n");
}

function rank(reason: string): number {
  return ["used", "held", "not used"].findIndex((status) => reason.startsWith(`${status}:`));
}
