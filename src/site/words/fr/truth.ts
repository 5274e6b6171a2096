import type { WordsOf } from "../catalogue.ts";
import type en from "../en/truth.ts";

export default {
  "truth.title": "Vérité connue",
  "truth.about":
    "Des espèces inventées, dont on sait comment elles ont évolué, notées par des personnes inventées dont l’effort a changé. Quand aucune n’évolue, une méthode peut en déclarer changées 5 % au plus ; quand elles évoluent, 92 à 97 % de ses intervalles de confiance à 95 % doivent contenir la vérité ; sinon sa prétention est retirée sur toutes les pages.",
  "truth.claim-of": "<b>{method}</b> : {claim}",
  "truth.raw-counts": "Carrés comptés, rien d’autre",
  "truth.calls-too-many": "en déclare trop changées",
  "truth.too-narrow": "intervalles trop étroits",
  "truth.too-wide": "intervalles trop larges",
  "truth.few-of": "{called} sur {judged}",
  "truth.claim-none": "ne prétend à aucune correction de l’effort d’observation",
  "truth.claim-rank":
    "classe les espèces d’un groupe, dont une sur vingt au plus peut se détacher ; ne prétend à aucune correction de l’effort d’observation",
  "truth.claim-untested": "non éprouvée, elle ne prétend donc à aucune correction de l’effort d’observation",
  "truth.claim-kept": "corrige de l’effort d’observation",
  "truth.claim-withdrawn": "sa prétention à corriger de l’effort d’observation est retirée : {reason}",
  "truth.untested":
    "Aucune méthode n’a été éprouvée là où la vérité est connue, et **aucune ne prétend corriger de l’effort d’observation**.",
  "truth.raw":
    "Quand aucune espèce n’évolue et que l’effort change, compter les seuls carrés en déclare changées jusqu’à **{share} %**.",
  "truth.methods": "Les méthodes en déclarent changées : {methods}.",
  "truth.methods-alone": "Parmi des espèces qui n’évoluent pas, déclarées changées : {methods}.",
  "truth.method-up-to": "{method} jusqu’à {share} %",
  "truth.still": "Aucune espèce n’évolue. <b>{how}.</b>",
  "truth.still-more": "<b>{how}.</b>",
  "truth.changing":
    "<b>{how}.</b> Part des espèces déclarées telles qu’elles ont évolué, en %, selon leur évolution vraie en % ; sous 0, déclarées changées dans un sens ou dans l’autre.",
  "truth.method": "Méthode",
  "truth.judged": "Espèces jugées",
  "truth.called": "Déclarées changées",
  "truth.bias": "Biais",
  "truth.coverage": "Vérité dans l’intervalle",
  "truth.of": "sur {n, number}",
  "truth.bias-and-coverage": "biais {bias} ; vérité dans {share} des intervalles",
  "truth.note":
    "± : erreur type sur les tirages. Biais : estimation médiane moins la vérité. Par rapport au groupe, une espèce stable parmi d’autres qui évoluent est déclarée changée à juste titre.",
} satisfies WordsOf<typeof en>;
