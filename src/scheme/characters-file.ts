import { checkCastes, unknownTaxon } from "./checklist-file.ts";
import { contentPath } from "./content-path.ts";
import { CharacterRow, type ChecklistRow, type OutsideRow } from "./content-tables.ts";
import { EVERY_TAXON } from "./outside-file.ts";
import { readContent } from "./read-content.ts";
import type { Settings } from "./settings.ts";
import { parseTable } from "./table-file.ts";

/**
 * Reads `characters.csv`; none where the scheme has no such file. The taxonID of a row is one of the checklist or of
 * `outside.csv`, or `*` for what is so in every taxon of the checklist.
 *
 * @throws {Mistake} on a taxon neither has, or a caste the settings do not have
 */
export function readCharacters(
  folder: string,
  settings: Settings,
  taxa: readonly ChecklistRow[],
  outside: readonly OutsideRow[],
): (CharacterRow & { row: number })[] {
  if (contentPath(folder, "characters.csv") === undefined) return [];
  const known = new Set([EVERY_TAXON, ...[...taxa, ...outside].map((taxon) => taxon.taxonID)]);
  const rows = parseTable(readContent(folder, "characters.csv"), "characters.csv", CharacterRow);
  for (const { taxonID, castes, row } of rows) {
    const where = { file: "characters.csv", row };
    if (!known.has(taxonID)) throw unknownTaxon(taxonID, { ...where, field: "taxonID" });
    checkCastes(castes, settings, where);
  }
  return rows;
}
