/** `sensitive.csv`: which taxa are shown coarser than they are known, where, why, and until when that stands. */
import { z } from "zod";
import { Mistake } from "../mistake.ts";
import { checkCastes, unknownTaxon } from "./checklist-file.ts";
import { contentPath } from "./content-path.ts";
import { type ChecklistRow, listOfValues } from "./content-tables.ts";
import { readContent } from "./read-content.ts";
import type { Settings } from "./settings.ts";
import { parseTable } from "./table-file.ts";

/** Name of the file in the scheme's folder. */
export const SENSITIVE_FILE = "sensitive.csv";

/** How coarse a record is shown, each coarser than the one before. */
export const LEVELS = ["2 km", "10 km", "withheld"] as const;
export type Level = (typeof LEVELS)[number];

/** A caste of the table that stands for records without one. */
const NOT_STATED = "not_stated";

const months = listOfValues
  .refine((all) => all.every((month) => /^(?:[1-9]|1[0-2])$/.test(month)), "write months as numbers, such as 5 | 6 | 7")
  .transform((all) => all.map(Number));

/** One row of `sensitive.csv`: a taxon, and the records of it that are shown no finer than the level. */
export const SensitiveRow = z.object({
  taxonID: z.string().min(1, "name a taxon of the checklist").describe("a group stands for all its members"),
  level: z.enum(LEVELS, { error: `write one of ${LEVELS.join(", ")}` }),
  territories: listOfValues.describe("territories it holds in; empty for all"),
  castes: listOfValues.describe("castes or stages it holds for, not_stated too; empty for all"),
  months: months.describe("months it holds in, as numbers; empty for all"),
  reason: z.string().min(1, "say why: it is published").describe("published; name no place in it"),
  responsible: z
    .string()
    .min(1, "name a role, such as county recorder")
    .describe("a role, never a person; not published"),
  reviewDate: z.iso.date({ error: "write the day it is looked at again, such as 2027-03-31" }),
});
export type SensitiveRow = z.infer<typeof SensitiveRow> & { row: number };

/**
 * Reads `sensitive.csv`; none where the scheme has no such file.
 *
 * @returns the entries in the file's order, each with its row
 * @throws {Mistake} on a taxon, territory or caste that is not known, or a cell that cannot be read, with row and field
 */
export function readSensitive(folder: string, settings: Settings, taxa: readonly ChecklistRow[]): SensitiveRow[] {
  if (contentPath(folder, SENSITIVE_FILE) === undefined) return [];
  const known = new Set(taxa.map(({ taxonID }) => taxonID));
  const territories = settings.territories.map(({ id }) => id);
  const rows = parseTable(readContent(folder, SENSITIVE_FILE), SENSITIVE_FILE, SensitiveRow);
  for (const { taxonID, territories: own, castes, row, ...entry } of rows) {
    const where = { file: SENSITIVE_FILE, row };
    if (!known.has(taxonID)) throw unknownTaxon(taxonID, { ...where, field: "taxonID" });
    const stray = own.find((id) => !territories.includes(id));
    if (stray !== undefined)
      throw new Mistake(`“${stray}”`, "is no territory of atlas.yaml", `write one of ${territories.join(", ")}`, {
        ...where,
        field: "territories",
      });
    const other = rows.find(
      (one) => one.row < row && sameRecords(one, { taxonID, territories: own, castes, ...entry }),
    );
    if (other !== undefined)
      throw new Mistake(taxonID, `has an entry for the same records in row ${other.row}`, "keep one of the two", where);
    checkCastes(
      castes.filter((caste) => caste !== NOT_STATED),
      settings,
      where,
    );
  }
  return rows;
}

/**
 * Entries whose day of review has come before the edition: a list nobody looks at hides what needs no hiding, and
 * trusts what is out of date.
 *
 * @param editionDate of the settings, ISO 8601; never the clock
 * @example overdueReviews([{ …, reviewDate: "2024-12-31" }], "2025-01-01").length // => 1
 */
export function overdueReviews(entries: readonly SensitiveRow[], editionDate: string): SensitiveRow[] {
  return entries.filter(({ reviewDate }) => reviewDate < editionDate);
}

function sameRecords(one: Scope, other: Scope): boolean {
  const scope = ({ taxonID, territories, castes, months: own }: Scope) =>
    JSON.stringify([taxonID, territories.toSorted(), castes.toSorted(), own.toSorted()]);
  return scope(one) === scope(other);
}

type Scope = Pick<SensitiveRow, "taxonID" | "territories" | "castes" | "months">;
