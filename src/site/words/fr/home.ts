import type { WordsOf } from "../catalogue.ts";
import type en from "../en/home.ts";

export default {
  "home.ways": "Entrées",
  "home.narrow": "Où, quand et ce que vous avez vu, dans n’importe quel ordre. Votre lieu reste sur votre appareil.",
  "home.tell-apart": "Deux à quatre espèces côte à côte, avec ce qui les sépare.",
  "home.first-seen": "Selon ce que l’on voit d’abord",
  "home.first-seen-note": "La queue, puis le pelage : des groupes, chacun avec ce qu’il faut regarder ensuite.",
  "home.species-note": "Saison, nombre de carrés et répartition dans un seul tableau.",
  "home.squares": "Qui vit dans mon carré",
  "home.squares-note": "Première et dernière année, et ce qui reste à trouver.",
  "home.wanted-note": "Là où une bonne journée en apprendrait le plus.",
  "home.take-part-note": "Quoi chercher ce mois-ci, quoi photographier, quoi noter.",
  "home.groups-note":
    "Le nom de chaque groupe ouvre ses membres côte à côte, avec les parties qui décident. En gris, les groupes à noter quand la partie décisive n’a pas été vue.",
  "home.groups-note-plain":
    "Choisissez le groupe qui ressemble, puis ses membres un par un. En gris, les groupes à noter quand la partie décisive n’a pas été vue.",
  "home.species": "Espèces",
} satisfies WordsOf<typeof en>;
