import type { Character, OutsideTaxon } from "../../../src/publishing/contracts.ts";

const character = (part: string, state: string, reliability: Character["reliability"] = "supports"): Character => ({
  castes: [],
  form: "",
  part,
  state,
  note: "",
  reliability,
  evidence: "photograph",
});

/** What every bee of the fixture has. */
export const BEE_CHARACTERS: Character[] = [character("antennae", "long", "settles"), character("eyes", "narrow")];

/** A fly that is taken for the first bee of the fixture. */
export const MIMIC_HOVERFLY: OutsideTaxon = {
  taxon_id: "outside-mimic",
  slug: "mimic-hoverfly",
  scientific_name: "Volucella bombylans",
  vernacular_name: "Mimic hoverfly",
  short_name: "Mimic hoverfly",
  vernacular_names: [{ name: "Mimic hoverfly", language: "en" }],
  kind: "hoverfly",
  body_plan: "hoverfly",
  lead: "A fly in the coat of a bee.",
  castes: [],
  characters: [
    character("antennae", "stub", "settles"),
    character("eyes", "large", "settles"),
    ...["collar", "mid-thorax", "rear-thorax", "T1", "T2", "T3"].map((part) => character(part, "black")),
    ...["T4", "T5"].map((part) => character(part, "red")),
    character("wings", "clear"),
    character("hind-leg", "none"),
    character("size", "11–17 mm"),
  ],
};
