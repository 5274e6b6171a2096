import type { AccountingFile } from "../../../publishing/contracts.ts";
import { say } from "../../words/say.ts";

type Row = AccountingFile["rows"][number];
/** One status with one reason, over all sources. */
export type Fate = Pick<Row, "status" | "reason" | "records">;

const STATUSES: readonly Row["status"][] = ["used", "held", "not used"];

/**
 * The accounting over all sources: used, held, not used, the most frequent reason first.
 *
 * @param rows by source
 * @example fates(rows).map(({ status }) => status) // ["used", "held", "not used"]
 */
export function fates(rows: readonly Row[]): Fate[] {
  return STATUSES.flatMap((status) => {
    const reasons = Map.groupBy(
      rows.filter((row) => row.status === status),
      ({ reason }) => reason,
    );
    return [...reasons]
      .map(([reason, same]) => ({ status, reason, records: same.reduce((sum, { records }) => sum + records, 0) }))
      .sort((one, other) => other.records - one.records || one.reason.localeCompare(other.reason, "en"));
  });
}

/** What a status is called, as a heading. @example statusWords("not used") // => "Not used" */
export function statusWords(status: Row["status"]): string {
  return say(status === "not used" ? "downloads.status-not-used" : `downloads.status-${status}`);
}

/**
 * Records of one status.
 *
 * @example recordsOf(rows, "held") // 60
 */
export function recordsOf(rows: readonly Row[], status: Row["status"]): number {
  return rows.filter((row) => row.status === status).reduce((sum, { records }) => sum + records, 0);
}
