import { checkCastes, unknownTaxon } from "./checklist-file.ts";
import { contentPath } from "./content-path.ts";
import { CharacterRow, type ChecklistRow } from "./content-tables.ts";
import { readContent } from "./read-content.ts";
import type { Settings } from "./settings.ts";
import { parseTable } from "./table-file.ts";

/**
 * Reads `characters.csv`; none where the scheme has no such file.
 *
 * @throws {Mistake} on a taxon the checklist does not have, or a caste the settings do not have
 */
export function readCharacters(folder: string, settings: Settings, taxa: readonly ChecklistRow[]): CharacterRow[] {
  if (contentPath(folder, "characters.csv") === undefined) return [];
  const known = new Set(taxa.map((taxon) => taxon.taxonID));
  const rows = parseTable(readContent(folder, "characters.csv"), "characters.csv", CharacterRow);
  for (const { taxonID, castes, row } of rows) {
    const where = { file: "characters.csv", row };
    if (!known.has(taxonID)) throw unknownTaxon(taxonID, { ...where, field: "taxonID" });
    checkCastes(castes, settings, where);
  }
  return rows;
}
