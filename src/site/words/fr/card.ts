import type { WordsOf } from "../catalogue.ts";
import type en from "../en/card.ts";

export default {
  "card.title": "Fiche de terrain",
  "card.of": "Fiche de terrain : {place}",
  "card.print": "Imprimez cette page : la fiche sort sur une feuille à part.",
  "card.open": "Fiche de terrain, {n, plural, one {# ligne} other {# lignes}}",
  "card.place": "Lieu, aussi précis que possible",
  "card.reference": "Référence de carroyage",
  "card.date": "Date et heures",
  "card.recorder": "Observateur, et vos propres notes",
  "card.caption":
    "Cochez ce que vous avez vu, par caste si vous l’avez reconnue. D’abord ce qui a été signalé ici, puis ce qui est attendu, puis le reste de la liste.",
  "card.seen": "Vu",
  "card.species": "Espèce",
  "card.season": "De janvier à décembre",
  "card.needs": "Ce qu’il faut pour une donnée",
  "card.group-recorded": "Signalées ici",
  "card.group-expected": "Attendues ici",
  "card.group-rest": "Reste de la liste",
  "card.rest":
    "{n, plural, one {Une autre espèce est} other {# autres espèces sont}} sur la liste de l’atlas : ajoutez-la à la main.",
  "card.others": "Autres",
  "card.caution":
    "<b>Avant de partir.</b> Demandez avant de quitter les chemins ; pas seul près de l’eau ni sur les falaises ; laissez les nids en paix. Une espèce que vous n’avez pas trouvée n’est pas absente : notez combien de temps vous avez cherché.",
  "card.unsure": "Un doute ? Notez le groupe, et photographiez ce que demande la dernière colonne.",
  "card.send": "À envoyer à {address}.",
  "card.edition": "{title}, édition {edition}.",
  "card.invented": "{title}, édition {edition}. Données inventées.",
  "card.evidence-note": "Texte écrit pour cette démonstration : à vérifier dans un guide de détermination récent.",
} satisfies WordsOf<typeof en>;
