import { Mistake, type Whereabouts } from "../mistake.ts";
import { buildChecklist, type Checklist } from "../names/checklist.ts";
import { ChecklistRow } from "./content-tables.ts";
import { readContent } from "./read-content.ts";
import type { Settings } from "./settings.ts";
import { parseTable } from "./table-file.ts";

/**
 * Reads `checklist.csv` and makes the checklist of it.
 *
 * @throws {Mistake} on a caste or group the settings do not have, or a checklist that does not agree with itself
 */
export function readChecklist(folder: string, settings: Settings): { taxa: ChecklistRow[]; checklist: Checklist } {
  const taxa = parseTable(readContent(folder, "checklist.csv"), "checklist.csv", ChecklistRow);
  return { taxa, checklist: checklistOf(taxa, settings) };
}

function checklistOf(taxa: (ChecklistRow & { row: number })[], settings: Settings): Checklist {
  const groups = new Set(settings.first_seen.map((group) => group.id));
  for (const taxon of taxa) {
    const where = { file: "checklist.csv", row: taxon.row };
    checkCastes(taxon.castes, settings, where);
    if (taxon.firstSeen !== "" && !groups.has(taxon.firstSeen))
      throw new Mistake(
        `“${taxon.firstSeen}”`,
        "is no first_seen group of atlas.yaml",
        `write one of ${[...groups].join(", ")}`,
        { ...where, field: "firstSeen" },
      );
  }
  const checklist = buildChecklist(
    taxa.map((taxon) => ({
      taxonId: taxon.taxonID,
      scientificName: taxon.scientificName,
      authorship: taxon.scientificNameAuthorship,
      rank: taxon.taxonRank,
      synonyms: taxon.synonyms,
      vernacular: namesByLanguage(taxon),
      within: taxon.within,
      castes: taxon.castes,
    })),
  );
  const [problem] = checklist.problems;
  if (problem !== undefined) {
    const row = taxa.find((taxon) => taxon.taxonID === problem.taxonIds.at(-1))?.row;
    throw new Mistake("the checklist", `does not agree with itself: ${problem.found}`, problem.wayOut, {
      file: "checklist.csv",
      ...(row === undefined ? {} : { row }),
    });
  }
  return checklist;
}

/** All names of each language, for a taxon may have several in one. */
function namesByLanguage({ vernacularNames }: ChecklistRow): Record<string, string[]> {
  const names: Record<string, string[]> = {};
  for (const { language, name } of vernacularNames) names[language] = [...(names[language] ?? []), name];
  return names;
}

/**
 * Checks castes of a table against the settings.
 *
 * @throws {Mistake} on the first that is none
 */
export function checkCastes(castes: readonly string[], settings: Settings, where: Whereabouts): void {
  const known = settings.castes.map((caste) => caste.id);
  const stray = castes.find((caste) => !known.includes(caste));
  if (stray !== undefined)
    throw new Mistake(`“${stray}”`, "is no caste of atlas.yaml", `write one of ${known.join(", ")}`, {
      ...where,
      field: "castes",
    });
}

/** A taxon that something names and the checklist does not have. */
export function unknownTaxon(id: string, where: { file: string; row?: number; field?: string }): Mistake {
  return new Mistake(
    `taxonID “${id}”`,
    "is not in checklist.csv",
    "correct it, or add the taxon to the checklist",
    where,
  );
}
