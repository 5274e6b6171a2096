import { Mistake } from "../mistake.ts";
import { checkCastes } from "./checklist-file.ts";
import type { ChecklistRow } from "./content-tables.ts";
import type { Settings } from "./settings.ts";
import type { readYaml } from "./yaml-file.ts";

/**
 * Checks what the settings of the checks name against the checklist, the castes and the territories.
 *
 * @throws {Mistake} on the first taxon, caste or territory that is not there
 */
export function checkTaxaOfChecks(
  settings: Settings,
  taxa: readonly ChecklistRow[],
  at: ReturnType<typeof readYaml>["at"],
): void {
  const known = new Set(taxa.map(({ taxonID }) => taxonID));
  const territories = new Set(settings.territories.map(({ id }) => id));
  const refuse = (value: string, problem: string, path: (string | number)[]) => {
    throw new Mistake(`“${value}”`, problem, "correct it, or take it out", at(["checks", ...path]));
  };
  const { unexpected, evidence } = settings.checks;
  for (const [index, taxon] of unexpected.all_year.entries())
    if (!known.has(taxon)) refuse(taxon, "is not in checklist.csv", ["unexpected", "all_year", index]);
  for (const [index, { taxa: asked, castes, territories: where }] of evidence.needed.entries()) {
    const stray = asked.find((taxon) => !known.has(taxon));
    if (stray !== undefined) refuse(stray, "is not in checklist.csv", ["evidence", "needed", index, "taxa"]);
    const nowhere = where.find((territory) => !territories.has(territory));
    if (nowhere !== undefined) refuse(nowhere, "is no territory", ["evidence", "needed", index, "territories"]);
    checkCastes(castes, settings, at(["checks", "evidence", "needed", index, "castes"]));
  }
}
