import type { WordsOf } from "../catalogue.ts";
import type en from "../en/squares.ts";

export default {
  "squares.title": "Carrés",
  "squares.about": "Chaque carré de 10 km de l’atlas, avec les espèces qui y ont été signalées ({many}).",
  "squares.lead":
    "{squares, plural, one {# carré} other {# carrés}} de 10 km, chacun avec sa liste d’espèces ; {visited, plural, one {# a été visité} other {# ont été visités}}.",
  "squares.key":
    "Chaque bloc est un carré de 100 km, le nord en haut ; ses lettres et les deux chiffres désignent un carré de 10 km. En gras : {least, plural, one {# visite} other {# visites}} ou plus{when, select, none {} other { {when}}}. Fond pâle : moins. Sans fond : aucune visite, ce qui ne dit rien de ce qui y vit.",
  "squares.choose": "Choisissez son carré de 100 km, puis les chiffres.",
  "squares.wanted": "<a>Carrés à visiter</a> : là où une sortie apporterait le plus.",
  "squares.of-grid": "{squares, plural, one {# carré} other {# carrés}} du quadrillage {grid}.",
  "squares.blocks": "Carrés de 100 km : {territory}",
  "squares.about-one": "Les espèces signalées dans le carré de 10 km {square} ({many}).",
  "squares.running": "Carré de 10 km",
  "squares.centre": "Centre",
  "squares.north": "{degrees}° N",
  "squares.south": "{degrees}° S",
  "squares.east": "{degrees}° E",
  "squares.west": "{degrees}° O",
  "squares.visits": "Visites",
  "squares.visits-none": "aucune {when}",
  "squares.visits-some": "{n, number} {when}",
  "squares.between": "D’une période à l’autre",
  "squares.regions": "{n, plural, one {Région} other {Régions}}",
  "squares.next": "Prochaine visite",
  "squares.next-rank":
    "{rank, plural, =1 {1er} other {#e}} sur {all, number} <a>carrés à visiter</a> : gain possible en espèces après {visits, plural, one {# visite} other {# visites}}, environ {gain}",
  "squares.next-when": "de préférence les {third}",
  "squares.recorded": "Signalées ici",
  "squares.recorded-note":
    "Une espèce absente de la liste n’a pas été signalée. Cela ne veut pas dire qu’elle n’y est pas.",
  "squares.recorded-covered":
    "Un carré est couvert pour une espèce lorsque d’autres y ont été signalées lors de {least, plural, one {# visite} other {# visites}} au moins.",
  "squares.by-records": "Par nombre de données.",
  "squares.spine": "Par nombre de données. Dos du livre : {from} ; page : {to}.",
  "squares.species": "Espèce",
  "squares.first": "De",
  "squares.last": "À",
  "squares.records": "Données",
  "squares.where": "Où dans le carré",
  "squares.tetrads":
    "{visited, plural, one {# carré de 2 km sur {all, number} a} other {# carrés de 2 km sur {all, number} ont}} des données. **{letter}** a la liste la plus longue : {taxa, plural, one {# espèce} other {# espèces}}.",
  "squares.tetrads-none": "Aucune donnée d’ici n’est précise à 2 km.",
  "squares.tetrads-unvisited": "Aucune donnée à 2 km ne vient de {letters}.",
  "squares.tetrads-key":
    "La lettre désigne le carré de 2 km, le chiffre est son nombre d’espèces ; plus le carré noir est grand, plus il y en a. Hachuré : aucune donnée à 2 km.{sea, select, yes { Sans fond : pas de terre.} other {}}",
  "squares.tetrads-title": "Espèces signalées dans chaque carré de 2 km de {square}",
  "squares.tetrads-text": "{list}.",
  "squares.tetrads-empty": "Aucune.",
  "squares.years": "Au fil des ans",
  "squares.years-caption":
    "Barres : données par an. Marche derrière : visites, à leur propre échelle.{invented, select, yes { Données inventées.} other {}}",
  "squares.around": "Alentour",
  "squares.side": "{side, select, north {nord} east {est} south {sud} other {ouest}}",
  "squares.all": "Tous les carrés",
  "squares.caution":
    "<b>Avant de partir.</b> {visited, select, yes {Une donnée ne donne aucun droit de passage : demandez} other {Demandez}} avant de quitter les chemins, n’allez pas seul près de l’eau ou des falaises, dites à quelqu’un où vous êtes et laissez les nids en paix.",
} satisfies WordsOf<typeof en>;
