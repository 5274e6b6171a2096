import type { TranslationFile } from "../../../src/publishing/contracts.ts";

/** French words for invented tables: labels and one account, with gaps, so that both own words and fallbacks are shown. */
export const FRENCH: TranslationFile = {
  language: "fr",
  title: "",
  heading: "Les bourdons d’un comté inventé",
  summary: "Où vit chacun, quand il vole et comment le distinguer des autres. D’après des données inventées.",
  invented_notice: "",
  citation: "",
  sending: "",
  group: { one: "bourdon", many: "bourdons" },
  castes: {
    queen: { label: "Reine", many: "Reines" },
    worker: { label: "Ouvrière", many: "Ouvrières" },
    male: { label: "Mâle", many: "Mâles" },
    female: { label: "Femelle", many: "Femelles" },
  },
  first_seen: {
    "red-tail": { title: "Extrémité rouge ou orange", look_at: "Regarder les poils de la patte arrière." },
  },
  surroundings: {},
  territories: { britain: "Grande-Bretagne" },
  regions: {},
  outside: {},
  accounts: {
    "red-tailed": {
      lead: "Un bourdon noir à l’extrémité rouge : d’une notice inventée.",
      evidence: "vue pour les reines et les ouvrières, photographie pour les mâles",
      size_notes: ["", "", "Antennes plus longues."],
      differences: [],
      sections: [
        {
          id: "know",
          title: "Comment le reconnaître",
          html: "<p>Reines et ouvrières ont un pelage court et régulier.</p>",
        },
        { id: "habitat", title: "Milieu", html: "<p>Prairies fleuries et jardins.</p>" },
        { id: "biology", title: "Vie", html: "<p>Niche sous les pierres.</p>" },
      ],
    },
  },
  pages: {},
};
