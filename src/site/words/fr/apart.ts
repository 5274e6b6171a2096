import type { WordsOf } from "../catalogue.ts";
import type en from "../en/apart.ts";

export default {
  "apart.title": "Distinguer",
  "apart.index-lead":
    "De deux à quatre côte à côte, partie par partie. Ce qui diffère ressort, ce qui concorde s’efface, et ce qu’on ne peut pas trancher est dit.",
  "apart.practise": "S’exercer sur des insectes dessinés",
  "apart.or": "{names} ?",
  "apart.with-alike": "{name} et les espèces qui lui ressemblent",
  "apart.with-group": "{name} et les espèces de même aspect au premier regard",
  "apart.description":
    "{names} côte à côte : ce qui tranche, ce qui aide, ce qui trompe, et quoi noter quand l’espèce ne peut pas être déterminée.",
  "apart.showing": "Comparaison : {castes}.",
  "apart.show": "Montrer : {castes}",
  "apart.settles":
    "{n, plural, =1 {Un caractère tranche} =2 {Deux caractères tranchent} =3 {Trois caractères tranchent} other {# caractères tranchent}} : {list}.",
  "apart.settles-first":
    "{n, plural, =4 {Quatre} =5 {Cinq} =6 {Six} =7 {Sept} =8 {Huit} =9 {Neuf} other {#}} caractères tranchent, dont {list}.",
  "apart.character": "**{part}** ({one} contre {other})",
  "apart.hints":
    "Aucun caractère ne tranche à lui seul. {n, plural, =1 {Un seul aide} =2 {Deux aident} =3 {Trois aident} =4 {Quatre aident} =5 {Cinq aident} other {# aident}} : {list}.",
  "apart.hints-record":
    "Rien de ce qui est décrit ne tranche entre les deux ; regarder aide un peu : {list}. Sans certitude, notez : {group}.",
  "apart.nothing-record": "Rien de ce qui est décrit ne les distingue. Notez : {group}.",
  "apart.nothing": "Rien de ce qui est décrit ici ne les distingue.",
  "apart.nested": "{part} fait partie de : {group}. Notez le groupe partout où l’espèce ne peut pas être déterminée.",
  "apart.look":
    "Regardez d’abord {first}{n, plural, =1 {.} =2 {, puis {second}.} other {, puis {second}, puis {third}.}}",
  "apart.the": "« **{part}** »",
  "apart.code": "**{part}**",
  "apart.pair-record": "{one} et {other} : aucun de ces caractères ne tranche ; notez : {group}.",
  "apart.pair-open": "{one} et {other} : aucun caractère ne tranche à lui seul ; pesez-les ensemble.",
  "apart.caption":
    "Chaque ligne est une partie du corps ou autre chose à regarder, chaque colonne une sorte d’insecte.",
  "apart.not-described": "non décrit",
  "apart.varies": "variable",
  "apart.size": "Longueur",
  "apart.season": "Saison",
  "apart.habitat": "Surtout dans",
  "apart.needs": "Une donnée demande",
  "apart.no-record": "hors de cet atlas",
  "apart.millimetres": "{from, number}–{to, number} mm",
  "apart.of": "{name} : {text}",
  "apart.what-settles": "Ce qui tranche",
  "apart.what-misleads": "Ce qui trompe",
  "apart.state-of": "{name} : {state}",
  "apart.shown-by-sight": "Se voit bien sur place.",
  "apart.shown-by-photograph": "Une photographie peut le montrer.",
  "apart.shown-by-specimen": "Il faut un spécimen, ou l’œil d’un spécialiste.",
  "apart.stop":
    "**Vous pouvez vous arrêter là.** Si la partie qui décide n’a pas été vue, « {group} » est une bonne donnée.",
  "apart.not-of-group": "**{name}** ({kind}) n’appartient pas au groupe de cet atlas, qui n’en prend pas de données.",
  "apart.reading":
    "Chaque colonne est un insecte déployé de la face au bout de l’abdomen. Un trait précède la valeur qui n’est pas celle des autres ; un nom de ligne en gras tranche entre deux colonnes ; un anneau vide est une marque cherchée et absente. Longueur, saison et milieu sont des indices et ne portent pas de trait. Saison et milieu viennent des données.",
  "apart.text-note": "Texte écrit pour cette démonstration : à vérifier dans un guide de détermination récent.",
  "apart.more": "Pour continuer",
  "apart.another": "Comparer d’autres espèces",
  "apart.account": "Page de {name}",
  "apart.choose": "Choisir librement, de deux à quatre",
  "apart.choose-lead": "La comparaison se dessine sur cette page ; son adresse peut être gardée ou envoyée.",
  "apart.choose-first": "Première",
  "apart.choose-second": "Deuxième",
  "apart.choose-third": "Troisième, au besoin",
  "apart.choose-fourth": "Quatrième, au besoin",
  "apart.choose-none": "aucune",
  "apart.choose-atlas": "Dans l’atlas",
  "apart.choose-outside": "Hors du groupe",
  "apart.choose-button": "Comparer",
  "apart.choose-two": "Choisissez-en au moins deux différentes.",
  "apart.choose-done": "Comparaison ci-dessous : {names}.",
  "apart.choose-failed":
    "Les caractères n’ont pas pu être chargés. Les comparaisons listées sur cette page s’en passent.",
  "apart.noscript":
    "Le libre choix demande des scripts, qui sont désactivés. Les comparaisons listées ci-dessous s’en passent.",
  "apart.by-group": "Selon ce qu’on voit d’abord",
  "apart.group-lead":
    "Un nom ouvre l’espèce à côté de celles avec lesquelles on la confond. Les noms en gris sont des groupes, à noter quand la partie qui décide n’a pas été vue.",
  "apart.confused": "Souvent confondus",
  "apart.across": "Confondus d’un groupe à l’autre",
  "apart.outside-title": "Hors du groupe",
  "apart.outside-lead":
    "Des mouches et d’autres abeilles au pelage fourni. À dix pas, on s’y trompe ; à un pas, antennes, yeux et ailes les trahissent.",
  "apart.outside-link": "Ce qui n’est pas du groupe",
  "apart.outside-taken": "Côte à côte avec",
} satisfies WordsOf<typeof en>;
