import type { Database } from "../../src/engine/database.ts";
import { review } from "./reviewing.ts";

/** Columns of the lists these tests write. */
export const LIST_HEADER = "occurrenceID,scientificName,eventDate,gridReference,recordedBy,locality";

/** A row of a list; what is not given is a record of one walk. */
export function listed({
  id,
  place = "SP5006",
  day = "2011-07-12",
  recorder = "Ann",
  locality = "",
}: {
  id: string;
  place?: string;
  day?: string;
  recorder?: string;
  locality?: string;
}): string {
  return `${id},Bombus pratorum,${day},${place},${recorder},${locality}`;
}

/** What some checks ask about the rows of one source: row, check, and what they propose. */
export async function asked(
  database: Database,
  rows: readonly string[],
  checks: readonly string[],
  { header = LIST_HEADER, ...settings }: { header?: string } & Parameters<typeof review>[2] = {},
): Promise<string[]> {
  const { findings } = await review(database, { walks: [header, ...rows].join("\n") }, settings);
  return findings
    .filter(({ check_name }) => checks.includes(check_name))
    .map(({ row, check_name, proposal }) => `${row}: ${check_name} ${proposal}`.trim());
}
