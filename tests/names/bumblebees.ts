import type { CasteVocabulary } from "../../src/names/caste.ts";
import { buildChecklist, type ChecklistTaxon } from "../../src/names/checklist.ts";

/** A taxon with what a test needs of it. */
export function taxon(taxonId: string, scientificName: string, more: Partial<ChecklistTaxon> = {}): ChecklistTaxon {
  return {
    taxonId,
    scientificName,
    authorship: "",
    rank: "species",
    synonyms: [],
    vernacular: {},
    within: [],
    castes: ["queen", "worker", "male"],
    ...more,
  };
}

/**
 * British bumblebees with the groups that cannot be told apart in the field: lucorum agg. of three species, and above
 * it the terrestris/lucorum group. Synonyms are names met in old data. Names and castes are common knowledge.
 */
export const BUMBLEBEES: readonly ChecklistTaxon[] = [
  taxon("bombus", "Bombus", { rank: "genus", authorship: "Latreille, 1802" }),
  taxon("terrestris-lucorum", "Bombus terrestris/lucorum", { rank: "aggregate" }),
  taxon("lucorum-agg", "Bombus lucorum agg.", {
    rank: "aggregate",
    within: ["terrestris-lucorum"],
    vernacular: { en: "White-tailed bumblebee" },
  }),
  taxon("lucorum", "Bombus lucorum", { within: ["lucorum-agg"], authorship: "(Linnaeus, 1761)" }),
  taxon("cryptarum", "Bombus cryptarum", { within: ["lucorum-agg"] }),
  taxon("magnus", "Bombus magnus", { within: ["lucorum-agg"], authorship: "Vogt, 1911" }),
  taxon("terrestris", "Bombus terrestris", {
    within: ["terrestris-lucorum"],
    authorship: "(Linnaeus, 1758)",
    vernacular: { en: "Buff-tailed bumblebee", fr: "bourdon terrestre" },
  }),
  taxon("pascuorum", "Bombus pascuorum", {
    synonyms: ["Bombus agrorum (Fabricius, 1787)"],
    authorship: "(Scopoli, 1763)",
  }),
  taxon("brown-carders", "brown carder group", { rank: "aggregate" }),
  taxon("muscorum", "Bombus muscorum", { within: ["brown-carders"] }),
  taxon("humilis", "Bombus humilis", { within: ["brown-carders"] }),
  taxon("pratorum", "Bombus pratorum", { authorship: "(Linnaeus, 1761)", vernacular: { en: "Early bumblebee" } }),
  taxon("vestalis", "Bombus vestalis", { synonyms: ["Psithyrus vestalis"], castes: ["female", "male"] }),
  taxon("bee-fly", "Bombylius major", { vernacular: { en: "Dark-edged bee-fly" }, castes: [] }),
];

export const CHECKLIST = buildChecklist(BUMBLEBEES);

export const CASTES: CasteVocabulary = {
  classes: [
    { id: "queen", label: "Queen", words: ["queen", "queens", "q", "gyne"] },
    { id: "worker", label: "Worker", words: ["worker", "workers", "w"] },
    { id: "male", label: "Male", words: ["male", "males", "m", "♂", "drone"] },
    { id: "female", label: "Female", words: ["female", "females", "f", "♀"] },
  ],
  ignored: ["adult", "imago"],
};
