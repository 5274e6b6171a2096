/** `sites.csv`: how uncertain the records of a named site are that carry its label point. */
import { z } from "zod";
import { Mistake } from "../mistake.ts";
import { contentPath } from "./content-path.ts";
import { readContent } from "./read-content.ts";
import { parseTable } from "./table-file.ts";

/** Name of the file in the scheme's folder. */
export const SITES_FILE = "sites.csv";

const text = z.string().default("");

/** One row of `sites.csv`: a site by its name, its label point, or both. */
export const SiteRow = z.object({
  name: text.describe("as the column locality has it, in any case; records of it are as uncertain as the site"),
  gridReference: text.describe("of the label point, as records give it"),
  decimalLatitude: text.describe("of the label point in WGS84, with decimalLongitude, where records give coordinates"),
  decimalLongitude: text,
  uncertainty_m: z
    .string()
    .regex(/^\d+(?:\.\d+)?$/, "write metres, such as 800")
    .transform(Number)
    .refine((metres) => metres > 0, "write metres, such as 800")
    .describe("from the label point to the site's furthest end"),
  note: text,
});
export type SiteRow = z.infer<typeof SiteRow> & { row: number };

/**
 * Reads `sites.csv`; none where the scheme has no such file.
 *
 * @returns the sites in the file's order, each with its row
 * @throws {Mistake} on a site without a name and a point, or a cell that cannot be read, with row and field
 */
export function readSites(folder: string): SiteRow[] {
  if (contentPath(folder, SITES_FILE) === undefined) return [];
  const rows = parseTable(readContent(folder, SITES_FILE), SITES_FILE, SiteRow);
  const nowhere = rows.find(
    ({ name, gridReference, decimalLatitude, decimalLongitude }) =>
      name === "" && gridReference === "" && (decimalLatitude === "" || decimalLongitude === ""),
  );
  if (nowhere !== undefined)
    throw new Mistake("the site", "has neither a name nor a point", "give its name, a grid reference or coordinates", {
      file: SITES_FILE,
      row: nowhere.row,
    });
  return rows;
}
