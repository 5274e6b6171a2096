import type { Account } from "../account.ts";
import type { CharacterRow, ChecklistRow, OutsideRow } from "../content-tables.ts";
import { EVERY_TAXON } from "../outside-file.ts";
import type { Settings } from "../settings.ts";

/** What the findings are made from: what a scheme says of its taxa, and the settings they agree with. */
export interface Content {
  settings: Pick<Settings, "body_plan" | "castes">;
  taxa: readonly ChecklistRow[];
  outside: readonly OutsideRow[];
  /** Each with its row in the file. */
  characters: readonly (CharacterRow & { row: number })[];
  accounts: ReadonlyMap<string, Account>;
}

/** A taxon of the checklist or outside, as its characters need it. */
export interface DescribedTaxon {
  name: string;
  castes: readonly string[];
  /** Id of its body plan; empty for none. */
  plan: string;
}

/** Everything that has characters, by id; `*` has all castes of the settings. */
export function describedTaxa({ settings, taxa, outside }: Content): Map<string, DescribedTaxon> {
  const all = { name: "every taxon", castes: settings.castes.map(({ id }) => id), plan: settings.body_plan };
  return new Map<string, DescribedTaxon>([
    [EVERY_TAXON, all],
    ...taxa.map(({ taxonID, scientificName: name, castes }): [string, DescribedTaxon] => [
      taxonID,
      { name, castes, plan: settings.body_plan },
    ]),
    ...outside.map(({ taxonID, scientificName: name, castes, bodyPlan: plan }): [string, DescribedTaxon] => [
      taxonID,
      { name, castes, plan },
    ]),
  ]);
}

/** Whether a character holds for a caste. @example holdsFor([], "queen") // true */
export function holdsFor(castes: readonly string[], caste: string): boolean {
  return castes.length === 0 || caste === "" || castes.includes(caste);
}
