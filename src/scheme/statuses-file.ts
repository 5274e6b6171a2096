/** `statuses.csv`: what others have assessed, list by list. Nothing here is computed from records. */
import { z } from "zod";
import { unknownTaxon } from "./checklist-file.ts";
import { contentPath } from "./content-path.ts";
import type { ChecklistRow } from "./content-tables.ts";
import { readContent } from "./read-content.ts";
import { parseTable } from "./table-file.ts";

/** Name of the file in the scheme's folder. */
export const STATUSES_FILE = "statuses.csv";

const text = z.string().default("");

/** One row of `statuses.csv`: one taxon in one list. */
export const StatusRow = z.object({
  taxonID: z.string().min(1, "name a taxon of the checklist"),
  list: z.string().min(1, "give the list's own name"),
  category: z.string().min(1, "give the category as the list words it"),
  year: z
    .string()
    .regex(/^\d{4}$/, "write the year in which the list was published, such as 2016")
    .transform(Number),
  jurisdiction: z.string().min(1, "say for which country or area the list speaks"),
  citation: z.string().min(1, "say where the list was published, so that a reader can look it up"),
  url: text.refine((url) => url === "" || /^https?:\/\/\S+$/.test(url), "write an address that begins with https://"),
});
export type StatusRow = z.infer<typeof StatusRow>;

/**
 * Reads `statuses.csv`; none where the scheme has no such file.
 *
 * @returns rows in the file's order
 * @throws {Mistake} on a taxon the checklist does not have, or a cell that cannot be read, with row and field
 * @example readStatuses("content", taxa)[0]?.list // => "Invented red list of the demonstration"
 */
export function readStatuses(folder: string, taxa: readonly ChecklistRow[]): StatusRow[] {
  if (contentPath(folder, STATUSES_FILE) === undefined) return [];
  const known = new Set(taxa.map(({ taxonID }) => taxonID));
  const rows = parseTable(readContent(folder, STATUSES_FILE), STATUSES_FILE, StatusRow);
  const stray = rows.find(({ taxonID }) => !known.has(taxonID));
  if (stray !== undefined) throw unknownTaxon(stray.taxonID, { file: STATUSES_FILE, row: stray.row, field: "taxonID" });
  return rows;
}
