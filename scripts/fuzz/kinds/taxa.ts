import type { CasteVocabulary } from "../../../src/names/caste.ts";
import type { ChecklistTaxon } from "../../../src/names/checklist.ts";

function taxon(taxonId: string, scientificName: string, more: Partial<ChecklistTaxon> = {}): ChecklistTaxon {
  const plain = { authorship: "", rank: "species", synonyms: [], vernacular: {}, within: [], castes: [] };
  return { taxonId, scientificName, ...plain, ...more };
}

/** A small checklist with what makes matching hard: aggregates, synonyms, an open pair, two genera of one letter. */
export const TAXA: readonly ChecklistTaxon[] = [
  taxon("pair", "Bombus terrestris/lucorum", { rank: "aggregate" }),
  taxon("lucorum-agg", "Bombus lucorum agg.", { rank: "aggregate", within: ["pair"] }),
  taxon("lucorum", "Bombus lucorum", { within: ["lucorum-agg"] }),
  taxon("magnus", "Bombus magnus", { within: ["lucorum-agg"] }),
  taxon("terrestris", "Bombus terrestris", { within: ["pair"], vernacular: { en: "Buff-tailed bumblebee" } }),
  taxon("pascuorum", "Bombus pascuorum", { synonyms: ["Bombus agrorum"], vernacular: { en: "Common carder bee" } }),
  taxon("pratorum", "Bombus pratorum", { vernacular: { en: ["Early bumblebee", "Early-nesting bumblebee"] } }),
  taxon("vestalis", "Bombus vestalis", { synonyms: ["Psithyrus vestalis"] }),
  taxon("bee-fly", "Bombylius major", { vernacular: { en: "Dark-edged bee-fly" } }),
];

/** Castes with a class that lies within another. */
export const CASTES: CasteVocabulary = {
  classes: [
    { id: "queen", label: "Queen", words: ["queen", "queens", "q"] },
    { id: "worker", label: "Worker", words: ["worker", "workers", "w"] },
    { id: "male", label: "Male", words: ["male", "males", "m", "♂"] },
    { id: "female", label: "Female", words: ["female", "females", "f", "♀"] },
  ],
  ignored: ["adult", "imago"],
};
