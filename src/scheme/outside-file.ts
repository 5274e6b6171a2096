import { Mistake } from "../mistake.ts";
import { checkCastes } from "./checklist-file.ts";
import { contentPath } from "./content-path.ts";
import { type ChecklistRow, OutsideRow } from "./content-tables.ts";
import { readContent } from "./read-content.ts";
import type { Settings } from "./settings.ts";
import { parseTable } from "./table-file.ts";

/** How ids of taxa outside the group begin, so that none is taken for a taxon of the checklist. */
export const OUTSIDE = "outside-";

/** A row of `characters.csv` with this taxonID describes every taxon of the checklist. */
export const EVERY_TAXON = "*";

/**
 * Reads `outside.csv`: what is taken for the group and is not of it; none where the scheme has no such file.
 *
 * @throws {Mistake} on an id that does not begin with outside-, is there twice, or a caste the settings do not have
 */
export function readOutside(folder: string, settings: Settings, taxa: readonly ChecklistRow[]): OutsideRow[] {
  if (contentPath(folder, "outside.csv") === undefined) return [];
  const rows = parseTable(readContent(folder, "outside.csv"), "outside.csv", OutsideRow);
  const known = new Set(taxa.map(({ taxonID }) => taxonID));
  for (const { taxonID, castes, row } of rows) {
    const where = { file: "outside.csv", row };
    if (!taxonID.startsWith(OUTSIDE))
      throw new Mistake(`taxonID “${taxonID}”`, `does not begin with ${OUTSIDE}`, `write ${OUTSIDE}${taxonID}`, {
        ...where,
        field: "taxonID",
      });
    if (known.has(taxonID))
      throw new Mistake(`taxonID “${taxonID}”`, "is there already", "give each taxon an id of its own", {
        ...where,
        field: "taxonID",
      });
    known.add(taxonID);
    checkCastes(castes, settings, where);
  }
  return rows;
}

/**
 * The taxon outside the group that an account's look-alike names by id; undefined where it is free text.
 *
 * @throws {Mistake} on an id that outside.csv does not have
 * @example outsideNamed("Norwegian cuckoo bumblebee", [], "species/sylvestris.md") // => undefined
 */
export function outsideNamed(text: string, outside: readonly OutsideRow[], file: string): OutsideRow | undefined {
  if (!text.startsWith(OUTSIDE)) return undefined;
  const row = outside.find(({ taxonID }) => taxonID === text);
  if (row === undefined)
    throw new Mistake(`look_alikes: outside “${text}”`, "is not in outside.csv", "correct it, or add it there", {
      file,
    });
  return row;
}
